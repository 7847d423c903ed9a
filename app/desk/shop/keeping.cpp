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
    say(tr("writing"));
    m_kept.isWaiting = true;
    m_kept.soon.start();
}

/// Takes what waits to be kept; in the list of builds it is from now on.
ChangedPlan Desk::takeToKeep()
{
    m_kept.soon.stop();
    m_kept.isWaiting = false;
    ChangedPlan changed{m_build.plan(), m_kept.before};
    m_kept.owed.add(changed);
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
    if (m_kept.errand.isUnderWay()) // A server is slow to answer.
        return m_kept.soon.start();
    keepChanged(takeToKeep());
}

void Desk::keepChanged(const ChangedPlan &changed)
{
    m_kept.errand.run([this, changed, keep = m_shop.keep]() -> Errand::Back {
        const auto kept = std::make_shared<const Result<void>>(keep(changed));
        return [this, changed, kept] { takeKept(changed, *kept); };
    });
}

void Desk::keepNow()
{
    m_templates.keepNow();
    while (m_kept.errand.isUnderWay())
        m_kept.errand.finish(); // Where more is owed the next one begins.
    if (!m_kept.isWaiting)
        return;
    const ChangedPlan changed = takeToKeep();
    takeKept(changed, m_shop.keep(changed));
}

/// Meanwhile the plan may have been changed again, or another one may be on the desk.
void Desk::takeKept(const ChangedPlan &changed, const Result<void> &kept)
{
    const bool hadFailed = isOwing();
    if (!kept) {
        m_kept.whyNot = saidProblem(kept.error());
        say(tr("not kept: %1").arg(m_kept.whyNot));
        if (hadFailed)
            return QTimer::singleShot(KeptPlan::TryAgainMs, this, &Desk::readAgain);
        return m_readSoon.start(); // Another seat may have changed it.
    }
    if (m_build.plan().id == changed.plan.id)
        m_kept.before = changed.plan;
    m_kept.owed.settle(changed);
    ++m_written;
    if (m_pen.isBusy()) // What is read meanwhile may not have it yet.
        m_kept.since.push_back(changed.plan);
    if (!m_kept.owed.isEmpty())
        return keepOwed();
    m_kept.whyNot.clear();
    sayKept();
    if (hadFailed)
        m_build.tell(tr("%1: what was changed is kept now.").arg(said(changed.plan.title)));
}

/// One build after the other, each ends in takeKept().
void Desk::keepOwed()
{
    if (!m_kept.owed.isEmpty() && m_shop.keep && !m_kept.errand.isUnderWay())
        keepChanged(m_kept.owed.all().front());
}

/// What could not be kept when the desk ended, in the midst of trying.
void Desk::takeUpOwed()
{
    if (!m_hasShop || !m_shop.keep || !m_kept.owed.takeUp())
        return;
    m_kept.whyNot = tr("the desk ended before");
    say(tr("not kept: %1").arg(m_kept.whyNot));
    m_kept.owed.showIn(m_shop.builds, {});
    become(ShopOnDesk(m_shop));
    if (m_build.isOpen() && m_kept.owed.find(m_build.plan().id) != nullptr)
        openBuild(said(m_build.plan().id));
    keepOwed();
}

bool Desk::isOwing() const
{
    return !m_kept.owed.isEmpty() && !m_kept.whyNot.isEmpty();
}

void Desk::sayKept()
{
    if (!m_kept.isWaiting)
        say(tr("kept, %1").arg(QLocale().toString(QTime::currentTime(), QLocale::ShortFormat)));
}

} // namespace flarestock
