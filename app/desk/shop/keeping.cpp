// SPDX-License-Identifier: MIT
//
// How a changed plan gets into the shop: a while after the last change and away from the window, or
// at once where the desk goes. What could not be kept is tried again.

#include "app/desk/shop/desk.h"
#include "app/desk/words/spoken.h"

#include <QTime>

namespace flarestock {

void Desk::keepLater()
{
    say(tr("writing to the file"));
    m_kept.isWaiting = true;
    m_kept.soon.start();
}

/// Takes what waits to be kept; in the list of builds it is from now on.
ChangedPlan Desk::takeToKeep()
{
    m_kept.soon.stop();
    m_kept.isWaiting = false;
    ChangedPlan changed{m_build.plan(), m_kept.before};
    for (BuildPlan &plan : m_shop.builds) {
        if (plan.id == changed.plan.id)
            plan = changed.plan;
    }
    return changed;
}

void Desk::keepAside()
{
    m_templates.keepNow();
    if (!m_kept.isWaiting)
        return;
    m_kept.errand.finish(); // Seldom: there are a thousand milliseconds between two.
    m_kept.errand.run([this, changed = takeToKeep(), keep = m_shop.keep]() -> Errand::Back {
        const auto kept = std::make_shared<const Result<void>>(keep(changed));
        return [this, changed, kept] { takeKept(changed, *kept); };
    });
}

void Desk::keepNow()
{
    m_templates.keepNow();
    m_kept.errand.finish();
    if (!m_kept.isWaiting)
        return;
    const ChangedPlan changed = takeToKeep();
    takeKept(changed, m_shop.keep(changed));
}

/// Meanwhile the plan may have been changed again, or another one may be on the desk.
void Desk::takeKept(const ChangedPlan &changed, const Result<void> &kept)
{
    if (!kept) {
        m_kept.whyNot = saidProblem(kept.error());
        say(tr("not kept: %1").arg(m_kept.whyNot));
        return m_readSoon.start(); // Another seat may have changed it.
    }
    if (m_build.plan().id == changed.plan.id)
        m_kept.before = changed.plan;
    m_kept.whyNot.clear();
    ++m_written;
    if (m_pen.isBusy()) // What is read meanwhile may not have it yet.
        m_kept.since.push_back(changed.plan);
    sayKept();
}

void Desk::sayKept()
{
    if (!m_kept.isWaiting)
        say(tr("kept, %1").arg(QLocale().toString(QTime::currentTime(), QLocale::ShortFormat)));
}

} // namespace flarestock
