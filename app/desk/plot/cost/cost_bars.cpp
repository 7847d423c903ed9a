// SPDX-License-Identifier: MIT

#include "app/desk/plot/cost/cost_bars.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

namespace flarestock {

namespace {

struct CostBarWords {
    Q_DECLARE_TR_FUNCTIONS(CostBySystem)
};

using BarOf = std::function<QString(const BillLine &line, const BillLine::Use &use)>;

/// The bars of one grouping, in the order of what comes first into each.
class Gathering {
public:
    Gathering(const WorkedOut &worked, QString by, BarOf barOf)
        : m_worked(worked), m_by(std::move(by)), m_barOf(std::move(barOf))
    {
    }

    std::vector<CostBar> bars()
    {
        for (const PricedLine &line : m_worked.bill->lines)
            share(line);
        return std::move(m_bars);
    }

private:
    /// Each place that a part serves bears as much of its line as it takes of it.
    void share(const PricedLine &line)
    {
        std::vector<std::size_t> bars;
        std::vector<Decimal> weights;
        for (const BillLine::Use &use : line.line->uses) {
            const std::size_t at = barFor(m_barOf(*line.line, use), line);
            const auto same = std::find(bars.begin(), bars.end(), at);
            if (same == bars.end()) {
                bars.push_back(at);
                weights.push_back(use.amount);
            } else {
                weights[static_cast<std::size_t>(same - bars.begin())] += use.amount;
            }
        }
        const CostOfLine cost = costOf(line);
        const Currency &currency = m_worked.bill->total.currency;
        const auto here = shares({cost.here, currency}, weights);
        const auto toBuy = shares({cost.toBuy, currency}, weights);
        for (std::size_t i = 0; i < bars.size(); ++i) {
            m_bars[bars[i]].here += here[i].amount;
            m_bars[bars[i]].toBuy += toBuy[i].amount;
            ++m_bars[bars[i]].lines;
        }
        m_bars[bars.front()].unpriced += line.cost ? 0 : 1;
    }

    std::size_t barFor(const QString &name, const PricedLine &line)
    {
        auto bar = std::find_if(m_bars.begin(), m_bars.end(),
                                [&name](const CostBar &one) { return one.name == name; });
        if (bar == m_bars.end()) {
            bar = m_bars.insert(m_bars.end(), CostBar());
            bar->name = name;
            bar->opens = QString(m_by + u'|' + said(line.line->part->number));
        }
        return static_cast<std::size_t>(bar - m_bars.begin());
    }

    const WorkedOut &m_worked;
    QString m_by;
    BarOf m_barOf;
    std::vector<CostBar> m_bars;
};

/// A line, and the joints at its ends, lie where their run does; what stands at a station, there.
QString sideOf(const WorkedOut &worked, const BillLine::Use &use)
{
    const PlacedRun *run = worked.expansion->run(use.run);
    if (run != nullptr && run->run != nullptr)
        return inWords(text(run->run->level));
    const PlacedStation *station = worked.expansion->station(use.station);
    return station == nullptr || station->station == nullptr
               ? CostBarWords::tr("the whole build")
               : inWords(text(station->station->level));
}

QString stationOf(const WorkedOut &worked, const BillLine::Use &use)
{
    if (use.station.empty())
        return CostBarWords::tr("the whole build");
    const PlacedStation *station = worked.expansion->station(use.station);
    return said(station != nullptr && station->station != nullptr ? station->station->title
                                                                  : use.station);
}

} // namespace

CostOfLine costOf(const PricedLine &line)
{
    if (!line.cost)
        return {};
    const Decimal &all = line.cost->amount;
    if (line.offer == nullptr || line.shortBy.sign() <= 0)
        return {all, {}};
    // Rounded by itself it could be more than the rounded whole.
    const Decimal bought = (line.offer->priceEach(line.shortBy) * line.shortBy)
                               .rescaled(all.scale(), Rounding::HalfEven);
    const Decimal toBuy = std::min(bought, all);
    return {all - toBuy, toBuy};
}

std::vector<CostBar> costBySide(const WorkedOut &worked)
{
    auto bars = Gathering(worked, QStringLiteral("side"),
                          [&worked](const BillLine &, const BillLine::Use &use) {
                              return sideOf(worked, use);
                          })
                    .bars();
    QStringList order;
    for (const Level level : {Level::Suction, Level::Pressure, Level::Return})
        order.append(inWords(text(level)));
    const auto rank = [&order](const CostBar &bar) {
        const auto at = order.indexOf(bar.name);
        return at < 0 ? order.size() : at;
    };
    std::stable_sort(bars.begin(), bars.end(),
                     [&rank](const CostBar &a, const CostBar &b) { return rank(a) < rank(b); });
    return bars;
}

std::vector<CostBar> costBy(const WorkedOut &worked, Grouping grouping)
{
    const bool isByKind = grouping == Grouping::Kind;
    auto bars =
        Gathering(worked, isByKind ? QStringLiteral("kind") : QStringLiteral("station"),
                  [&](const BillLine &line, const BillLine::Use &use) {
                      return isByKind ? billGroup(worked, line, grouping) : stationOf(worked, use);
                  })
            .bars();
    std::stable_sort(bars.begin(), bars.end(),
                     [](const CostBar &a, const CostBar &b) { return a.all() > b.all(); });
    return bars;
}

} // namespace flarestock
