// SPDX-License-Identifier: MIT

#include "app/desk/plot/pressure/pressure_points.h"

#include "app/desk/plot/pressure/pressure_words.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

constexpr double FingerSide = 40;

class PressureReached {
public:
    PressureReached(const FlowShown &shown, const PressureLine &line) : m_shown(shown), m_line(line)
    {
    }

    void add(const PressurePanel &panel)
    {
        for (const PressureColumn &column : panel.columns) {
            const PressureStep &step = *column.step;
            if (&column == &panel.columns.front())
                station(panel, {step.from, panel.side, step.beginsPa(), true}, column.left);
            const double y = panel.y((step.beginsPa() + step.endsPa()) / 2);
            PlotPoint &run = reach({column.middle(), y}, stepSays(m_shown, step));
            run.opens = m_shown.spotOf(step.run);
            run.box = QRectF(column.left, panel.top, column.right - column.left,
                             panel.bottom - panel.top);
            run.isDot = false;
            station(panel, {step.to, panel.side, step.endsPa(), false}, column.right);
        }
    }

    [[nodiscard]] std::vector<PlotPoint> all() { return std::move(m_points); }

private:
    PlotPoint &reach(const QPointF &at, const QString &says)
    {
        PlotPoint point;
        point.key = QString::number(m_points.size());
        point.at = at;
        point.box =
            QRectF(at.x() - FingerSide / 2, at.y() - FingerSide / 2, FingerSide, FingerSide);
        point.says = says;
        m_points.push_back(std::move(point));
        return m_points.back();
    }

    void station(const PressurePanel &panel, const StationAt &at, double x)
    {
        reach({x, panel.y(at.pa)}, stationSays(m_shown, m_line, at)).opens =
            QString(QStringLiteral("station|") + said(at.station));
    }

    const FlowShown &m_shown;
    const PressureLine &m_line;
    std::vector<PlotPoint> m_points;
};

} // namespace

std::vector<PlotPoint> pressurePoints(const FlowShown &shown, const PressureLine &line,
                                      const std::vector<PressurePanel> &panels)
{
    PressureReached reached(shown, line);
    for (const PressurePanel &panel : panels)
        reached.add(panel);
    return reached.all();
}

} // namespace flarestock
