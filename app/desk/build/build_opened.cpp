// SPDX-License-Identifier: MIT
//
// How a build comes onto the desk, goes, and is worked out in another state of its shop.

#include "app/desk/build/build_desk.h"
#include "app/desk/rows/pace.h"

namespace flarestock {

void BuildDesk::open(const BuildPlan &plan, const QString &carTitle, const WorkOut &workOut,
                     Told told)
{
    m_isOpening = true;
    m_wanted = plan;
    const auto done = [this, plan, carTitle, workOut, told = std::move(told)](auto worked) {
        m_isOpening = false;
        if (!worked)
            return told(tl::unexpected(worked.error()));
        Q_EMIT leaving();
        m_workOut = workOut;
        m_plan = plan;
        m_carTitle = carTitle;
        m_worked = std::move(*worked);
        m_steps.clear();
        m_refused.clear();
        m_lastStep = tr("%1 is open.").arg(title());
        find({});
        m_weighing.stop();
        m_opened.show({}, {});
        show();
        Pace::instance().later(this, [this] { openSpot(worstSpot()); });
        told({});
    };
    m_working.begin([workOut] { return workOut; }, plan, done);
    sayWorking();
}

void BuildDesk::close()
{
    m_working.forget();
    m_isOpening = false;
    m_worked = {};
    m_weighing.stop();
    m_steps.clear();
    m_refused.clear();
    m_lastStep.clear();
    for (Rows *rows : {&m_answers, &m_bill, &m_findings, &m_found})
        rows->become({});
    m_opened.show({}, {});
    Q_EMIT told();
    Q_EMIT changed();
}

void BuildDesk::workAnew(const WorkOut &workOut, Told told)
{
    const auto done = [this, workOut, told = std::move(told)](auto worked) {
        if (!worked)
            return told(tl::unexpected(worked.error()));
        m_workOut = workOut;
        m_worked = std::move(*worked);
        show();
        told({});
    };
    m_wanted = wanted();
    m_working.begin([workOut] { return workOut; }, m_wanted, done);
}

/// Where it takes longer than a frame.
void BuildDesk::sayWorking()
{
    if (isWorking())
        tell(tr("Being worked out …"));
}

void BuildDesk::sayAgain()
{
    m_lastStep.clear();
    if (isOpen())
        return show();
    Q_EMIT told();
    Q_EMIT changed();
}

} // namespace flarestock
