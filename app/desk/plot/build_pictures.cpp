// SPDX-License-Identifier: MIT

#include "app/desk/plot/build_pictures.h"

#include "app/desk/plot/pressure/pressure_plot.h"
#include "app/workshop/flow/flow_words.h"

namespace flarestock {

struct BuildPictures::Worked {
    WorkedOut worked; ///< Keeps alive what the flow is of.
    SystemFlow flow;
    std::vector<PressureLine> lines; ///< They point into the flow.
};

BuildPictures::BuildPictures(BuildDesk &build, QObject *parent) : QObject(parent), m_build(build)
{
    connect(&build, &BuildDesk::changed, this, &BuildPictures::follow);
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
        return m_pressure.clear();
    }
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
        auto done = std::make_shared<Worked>(Worked{worked, drawnFlow(*worked.expansion), {}});
        done->lines = pressureLines(*worked.expansion, done->flow);
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
    if (!m_worked)
        return;
    const Units units = m_build.units();
    QStringList views;
    for (const PressureLine &line : m_worked->lines)
        views.append(FlowShown{m_worked->worked, m_worked->flow, units}.station(line.to));
    if (views.size() < 2)
        views.clear();
    m_pressure.show(views, [done = m_worked, units](int view, const PlotSpace &space) {
        const auto at = static_cast<std::size_t>(view);
        const PressureLine *line = at < done->lines.size() ? &done->lines[at] : nullptr;
        return pressurePlot({done->worked, done->flow, units}, line, space);
    });
}

} // namespace flarestock
