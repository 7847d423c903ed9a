// SPDX-License-Identifier: MIT

#include "app/desk/plot/build_pictures.h"

#include "app/desk/plot/pressure/pressure_plot.h"
#include "app/desk/plot/pump/pump_plot.h"
#include "app/workshop/flow/flow_words.h"

namespace flarestock {

struct BuildPictures::Worked {
    WorkedOut worked; ///< Keeps alive what the flow is of.
    SystemFlow flow;
    std::vector<PressureLine> lines; ///< They point into the flow, and so do the curves.
    std::vector<PumpCurves> curves;

    /// The words by which several lines or pumps are told apart; none of one.
    [[nodiscard]] QStringList views(const std::vector<std::string> &stations, Units units) const
    {
        QStringList words;
        for (const std::string &id : stations)
            words.append(FlowShown{worked, flow, units}.station(id));
        return words.size() > 1 ? words : QStringList();
    }
};

BuildPictures::BuildPictures(BuildDesk &build, QObject *parent) : QObject(parent), m_build(build)
{
    connect(&build, &BuildDesk::changed, this, &BuildPictures::follow);
    connect(&m_cost, &CostPicture::summed, this, &BuildPictures::workingChanged);
}

void BuildPictures::setShown(int shown)
{
    if (shown == m_shown)
        return;
    m_shown = shown;
    Q_EMIT shownChanged();
    follow();
}

void BuildPictures::follow()
{
    if (m_shown == Line)
        return;
    if (!m_build.isOpen()) {
        m_worked.reset();
        m_asked = {};
        m_pressure.clear();
        m_pump.clear();
        return m_cost.clear();
    }
    if (m_shown == Cost) // Adding up a bill takes less than a frame.
        return m_cost.show(m_build.worked(), m_build.plan());
    if (m_asked.expansion != m_build.worked().expansion)
        return workOut();
    draw(); // In other units or another language, it may be.
}

void BuildPictures::workOut()
{
    if (m_errand.isUnderWay())
        return; // Once it is back it looks whether the build is another by then.
    m_asked = m_build.worked();
    m_errand.run([this, worked = m_asked]() -> Errand::Back {
        auto done = std::make_shared<Worked>(Worked{worked, drawnFlow(*worked.expansion), {}, {}});
        done->lines = pressureLines(*worked.expansion, done->flow);
        done->curves = pumpCurves(done->flow);
        return [this, done] {
            m_worked = done;
            Q_EMIT workingChanged();
            follow();
        };
    });
    Q_EMIT workingChanged();
}

void BuildPictures::draw()
{
    if (m_worked && m_shown == Pressure)
        drawPressure();
    else if (m_worked && m_shown == Pump)
        drawPump();
}

void BuildPictures::drawPressure()
{
    const Units units = m_build.units();
    std::vector<std::string> ends;
    for (const PressureLine &line : m_worked->lines)
        ends.push_back(line.to);
    m_pressure.show(m_worked->views(ends, units),
                    [done = m_worked, units](int view, const PlotSpace &space) {
                        const auto at = static_cast<std::size_t>(view);
                        const bool isThere = at < done->lines.size();
                        return pressurePlot({done->worked, done->flow, units},
                                            isThere ? &done->lines[at] : nullptr, space);
                    });
}

void BuildPictures::drawPump()
{
    const Units units = m_build.units();
    std::vector<std::string> pumps;
    for (const PumpCurves &curves : m_worked->curves)
        pumps.push_back(curves.delivery->pumps.front().station);
    m_pump.show(m_worked->views(pumps, units),
                [done = m_worked, units](int view, const PlotSpace &space) {
                    const auto at = static_cast<std::size_t>(view);
                    const bool isThere = at < done->curves.size();
                    return pumpPlot({done->worked, done->flow, units},
                                    isThere ? &done->curves[at] : nullptr, space);
                });
}

} // namespace flarestock
