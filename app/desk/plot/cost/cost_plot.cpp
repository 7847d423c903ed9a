// SPDX-License-Identifier: MIT

#include "app/desk/plot/cost/cost_plot.h"

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/label_places.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct CostWords {
    Q_DECLARE_TR_FUNCTIONS(CostBySystem)
};

constexpr double RowHigh = 40; ///< For a finger.
constexpr double BarHigh = 16;
constexpr double KeyHigh = 24; ///< What full and hatched mean.
constexpr double Gap = 8;
constexpr double NameMost = 0.34; ///< Of the width.

QString saidSum(const Decimal &amount)
{
    return saidNumber(amount);
}

QString barSays(const CostBar &bar, const QString &currency)
{
    QStringList says{CostWords::tr("%1: %2 %3").arg(bar.name, saidSum(bar.all()), currency)};
    if (bar.toBuy.sign() > 0)
        says.append(CostWords::tr("%1 here, %2 to buy").arg(saidSum(bar.here), saidSum(bar.toBuy)));
    else
        says.append(CostWords::tr("all of it here"));
    says.append(bar.lines == 1 ? CostWords::tr("1 line")
                               : CostWords::tr("%1 lines").arg(bar.lines));
    if (bar.unpriced > 0)
        says.append(CostWords::tr("without a price and not in it: %1").arg(bar.unpriced));
    return says.join(QStringLiteral(", "));
}

class CostDrawn {
public:
    CostDrawn(const CostShown &shown, const PlotSpace &space)
        : m_shown(shown), m_width(space.width),
          m_height(
              std::max(space.height, KeyHigh + RowHigh * static_cast<double>(shown.bars.size()))),
          m_places(QRectF(0, 0, m_width, m_height))
    {
        m_plot.space = {m_width, m_height};
        m_plot.title = shown.title;
        m_plot.says = shown.says;
        for (const CostBar &bar : shown.bars) {
            m_most = std::max(m_most, bar.all().approximate());
            m_names = std::max(m_names, sizeOfWords(bar.name, false).width());
            m_sums = std::max(m_sums, sizeOfWords(saidSum(bar.all()), true).width());
            m_bought = std::max(
                m_bought, bar.toBuy.sign() > 0 ? sizeOfWords(boughtWords(bar), false).width() : 0);
        }
        m_names = std::min(m_names, NameMost * m_width);
    }

    PlotLayout draw()
    {
        addKey();
        double top = KeyHigh;
        for (const CostBar &bar : m_shown.bars) {
            addBar(bar, top);
            top += RowHigh;
        }
        stroke({{left(), KeyHigh}, {left(), top}}, PlotInk::Edge);
        m_plot.labels = m_places.all();
        return std::move(m_plot);
    }

private:
    [[nodiscard]] double left() const { return m_names + m_sums + 3 * Gap; }
    [[nodiscard]] double room() const { return m_width - left() - m_bought - 2 * Gap; }
    [[nodiscard]] double wide(const Decimal &amount) const
    {
        return m_most > 0 ? amount.approximate() / m_most * room() : 0;
    }
    static QString boughtWords(const CostBar &bar)
    {
        return CostWords::tr("%1 to buy").arg(saidSum(bar.toBuy));
    }
    void stroke(const QPolygonF &line, PlotInk ink)
    {
        m_plot.strokes.push_back({line, ink, 1, PlotStroke::Dash::Whole});
    }
    void fill(const QRectF &box, PlotInk ink, PlotArea::Fill fill)
    {
        if (box.width() > 0)
            m_plot.areas.push_back({QPolygonF(box), ink, fill});
        m_places.keepClear(box);
    }

    void addKey()
    {
        fill({left(), 5, 22, 12}, PlotInk::Pipe, PlotArea::Fill::Full);
        m_places.putSomewhere({CostWords::tr("here already"), {}, PlotInk::Quiet, false},
                              {{{left() + 26, 11}, LabelSide::Right}});
        const double next = left() + 40 + m_places.all().back().box.width();
        fill({next, 5, 22, 12}, PlotInk::Caution, PlotArea::Fill::Hatched);
        m_places.putSomewhere({CostWords::tr("to buy"), {}, PlotInk::Quiet, false},
                              {{{next + 26, 11}, LabelSide::Right}});
        m_places.putSomewhere({m_shown.currency, {}, PlotInk::Quiet, false},
                              {{{left() - Gap, 11}, LabelSide::Left}});
    }

    void addBar(const CostBar &bar, double top)
    {
        const double middle = top + RowHigh / 2;
        const double here = wide(bar.here);
        const double toBuy = wide(bar.toBuy);
        stroke({{0, top + RowHigh}, {m_width, top + RowHigh}}, PlotInk::Rule);
        fill({left(), middle - BarHigh / 2, here, BarHigh}, PlotInk::Pipe, PlotArea::Fill::Full);
        fill({left() + here, middle - BarHigh / 2, toBuy, BarHigh}, PlotInk::Caution,
             PlotArea::Fill::Hatched);
        m_places.put({wordsWithin(bar.name, false, m_names), {}, PlotInk::Ink, false},
                     {{{m_names + Gap, middle}, LabelSide::Left}});
        m_places.put({saidSum(bar.all()), {}, PlotInk::Ink, true},
                     {{{left() - Gap, middle}, LabelSide::Left}});
        if (bar.toBuy.sign() > 0)
            m_places.put({boughtWords(bar), {}, PlotInk::Caution, false},
                         {{{left() + here + toBuy + 3, middle}, LabelSide::Right}});
        PlotPoint point;
        point.key = QString::number(m_plot.points.size());
        point.at = {left() + here + toBuy, middle};
        point.box = {0, top, m_width, RowHigh};
        point.says = barSays(bar, m_shown.currency);
        point.opens = bar.opens;
        point.isDot = false;
        m_plot.points.push_back(std::move(point));
    }

    const CostShown &m_shown;
    double m_width;
    double m_height;
    LabelPlaces m_places;
    double m_most = 0;
    double m_names = 0;
    double m_sums = 0;
    double m_bought = 0;
    PlotLayout m_plot;
};

} // namespace

QString costSays(const std::vector<CostBar> &bars, const QString &currency)
{
    CostBar sum;
    const CostBar *most = nullptr;
    for (const CostBar &bar : bars) {
        sum.here += bar.here;
        sum.toBuy += bar.toBuy;
        sum.unpriced += bar.unpriced;
        if (most == nullptr || bar.all() > most->all())
            most = &bar;
    }
    QStringList says{CostWords::tr("%1 %2: %3 here, %4 to buy")
                         .arg(saidSum(sum.all()), currency, saidSum(sum.here), saidSum(sum.toBuy))};
    if (most != nullptr && bars.size() > 1)
        says.append(CostWords::tr("the most for %1: %2").arg(most->name, saidSum(most->all())));
    if (sum.unpriced > 0)
        says.append(CostWords::tr("lines without a price, not in it: %1").arg(sum.unpriced));
    return asSentences(says);
}

PlotLayout costPlot(const CostShown &shown, const PlotSpace &space)
{
    if (!shown.bars.empty())
        return CostDrawn(shown, space).draw();
    PlotLayout plot;
    plot.space = space;
    plot.title = shown.title;
    plot.whyNone = CostWords::tr("The bill has no line yet.");
    return plot;
}

} // namespace flarestock
