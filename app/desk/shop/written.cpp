// SPDX-License-Identifier: MIT
//
// What the desk does with what was written into the shop, here or by another seat.

#include "app/desk/rows/pace.h"
#include "app/desk/shop/desk.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// In the shop as it is now a build may be as it was to become, where only the answer was lost; or
/// another seat has changed it. Whether all is there that was to be kept.
bool seeOwed(KeptPlan &kept, BuildDesk &build, const std::vector<BuildPlan> &now)
{
    bool allThere = !kept.owed.isEmpty();
    const std::vector<ChangedPlan> all = kept.owed.all();
    for (const ChangedPlan &owed : all) {
        const auto there = std::find_if(now.begin(), now.end(), [&owed](const BuildPlan &plan) {
            return plan.id == owed.plan.id;
        });
        const bool isThere = there != now.end() && *there == owed.plan;
        const bool isOnDesk = build.plan().id == owed.plan.id;
        allThere = allThere && isThere;
        if (there != now.end() && *there == owed.before)
            continue;
        kept.owed.drop(owed.plan.id);
        if (isThere && isOnDesk)
            kept.before = owed.plan;
        else if (!isThere && !isOnDesk) // On the desk it is shown as it is now.
            build.tell(Desk::tr("%1 was changed at another seat, so that what was changed here is "
                                "not in it. Look at it, then change it again.")
                           .arg(said(owed.plan.title)));
    }
    return allThere;
}

} // namespace

/// The shop with what was written into it; the build on the desk stays there.
void Desk::takeIn(const Wrote &wrote, const QString &sentence, bool isBack)
{
    m_kept.errand.finish(); // What was read may have it, so that it is known to be from here.
    ++m_written;
    become(wrote.shop);
    Pace::instance().later(this, [this] {
        if (m_kept.whyNot.isEmpty()) // What was not kept meanwhile stays said.
            sayKept();
    });
    const auto last = std::find(m_order.rbegin(), m_order.rend(), Step::Shop);
    if (isBack && last != m_order.rend())
        m_order.erase(std::next(last).base());
    else if (!isBack && canBeTakenBack(wrote))
        m_order.push_back(Step::Shop);
    const QString planned = m_planning.takeWritten();
    const QString other = isBack || planned.isEmpty() ? otherThanOnDesk() : planned;
    if (!other.isEmpty())
        openBuild(other, sentence);
    else if (m_build.isOpen())
        return workAnew(sentence, isBack);
    m_build.tell(sentence);
}

/// The build on the desk in the shop as it is now.
void Desk::workAnew(const QString &sentence, bool isBack)
{
    m_build.workAnew(m_shop.workOut, [this, sentence, isBack](const Result<void> &shown) {
        if (!shown && isBack && m_build.plan().id.empty()) // Its template was taken back.
            openBuild(m_builds.cell(0, QStringLiteral("key")).toString());
        else if (!shown)
            return refuse(shown.error());
        m_build.tell(sentence);
    });
}

QString Desk::otherThanOnDesk()
{
    const std::string id = m_build.plan().id;
    if (!m_build.isOpen() || id.empty())
        return {};
    const auto planned = std::find_if(m_shop.builds.begin(), m_shop.builds.end(),
                                      [&id](const BuildPlan &one) { return one.id == id; });
    if (planned == m_shop.builds.end())
        return m_builds.cell(0, QStringLiteral("key")).toString();
    return *planned != m_kept.before ? said(id) : QString();
}

void Desk::watch()
{
    m_readSoon.stop();
    m_watching = m_shop.watch ? m_shop.watch([this] { readAgain(); }) : nullptr;
}

bool Desk::isWriting() const
{
    return m_pen.isBusy() || m_kept.isWaiting || m_kept.errand.isUnderWay();
}

/// Away from the window. What was written here meanwhile may not be in what was read, so that it is
/// read once more.
void Desk::readAgain()
{
    if (!m_deeds.open || !m_hasShop)
        return;
    if (isWriting() || m_reading.isUnderWay())
        return m_readSoon.start();
    m_reading.run(
        [this, open = m_deeds.open, file = m_shop.file, written = m_written]() -> Errand::Back {
            const auto read = std::make_shared<Result<ShopOnDesk>>(open(file));
            return [this, read, file, written] {
                if (file != m_shop.file)
                    return; // Another shop was opened meanwhile.
                if (isWriting() || written != m_written)
                    m_readSoon.start();
                else
                    takeRead(std::move(*read));
            };
        });
}

void Desk::takeRead(Result<ShopOnDesk> read)
{
    if (!read) {
        refuse(read.error());
        if (!m_kept.whyNot.isEmpty())
            QTimer::singleShot(KeptPlan::TryAgainMs, this, &Desk::readAgain);
        return;
    }
    const bool allThere = seeOwed(m_kept, m_build, read->builds);
    // Where the state is that of the desk it was written from here, and stands there already.
    if (m_shop.state.empty() || read->state != m_shop.state)
        takeInOthers(std::move(*read));
    if (allThere) {
        m_kept.whyNot.clear();
        sayKept();
    } else if (!m_kept.isWaiting) {
        keepOwed();
    }
}

/// A plan that another seat has changed is put on the desk as it is now; otherwise the build stays
/// there, with what can be taken back and what could not be kept.
void Desk::takeInOthers(ShopOnDesk shop)
{
    const QString notKept = m_kept.whyNot;
    const QString id = said(m_build.plan().id);
    become(std::move(shop));
    if (!m_build.isOpen())
        return;
    if (const QString other = otherThanOnDesk(); !other.isEmpty()) {
        const QString others = other == id ? tr("This build was changed at another seat.")
                                           : tr("%1 was taken out at another seat.").arg(id);
        openBuild(other, notKept.isEmpty() ? others : notKept);
        return;
    }
    m_build.workAnew(m_shop.workOut, [this](const Result<void> &shown) {
        if (!shown)
            refuse(shown.error());
    });
}

} // namespace flarestock
