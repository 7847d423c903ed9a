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

using BarOf = std::function<QString(const BillLine &line)>;

/// In the order of their first lines.
std::vector<CostBar> gathered(const WorkedOut &worked, const QString &by, const BarOf &barOf)
{
    std::vector<CostBar> bars;
    for (const PricedLine &line : worked.bill->lines) {
        const QString name = barOf(*line.line);
        auto bar = std::find_if(bars.begin(), bars.end(),
                                [&name](const CostBar &one) { return one.name == name; });
        if (bar == bars.end()) {
            bars.emplace_back();
            bar = std::prev(bars.end());
            bar->name = name;
            bar->opens = QString(by + u'|' + said(line.line->part->number));
        }
        const CostOfLine cost = costOf(line);
        bar->here += cost.here;
        bar->toBuy += cost.toBuy;
        ++bar->lines;
        bar->unpriced += line.cost ? 0 : 1;
    }
    return bars;
}

QString sideOfLine(const WorkedOut &worked, const BillLine &line)
{
    const PlacedStation *station =
        line.stations.empty() ? nullptr : worked.expansion->station(line.stations.front());
    return station == nullptr || station->station == nullptr
               ? CostBarWords::tr("the whole build")
               : inWords(text(station->station->level));
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
    auto bars = gathered(worked, QStringLiteral("side"),
                         [&worked](const BillLine &line) { return sideOfLine(worked, line); });
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
    auto bars = gathered(
        worked, grouping == Grouping::Kind ? QStringLiteral("kind") : QStringLiteral("station"),
        [&](const BillLine &line) { return billGroup(worked, line, grouping); });
    std::stable_sort(bars.begin(), bars.end(),
                     [](const CostBar &a, const CostBar &b) { return a.all() > b.all(); });
    return bars;
}

} // namespace flarestock
