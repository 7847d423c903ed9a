// SPDX-License-Identifier: MIT
//
// Kept plan: what of the plan on the desk is in the shop's file, what waits, and what is owed: it
// is on its way there, or could not be kept and is tried again, also once another build is on the
// desk. The next start has it where the desk ends before.

#pragma once

#include "app/desk/form/unwritten.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QTimer>

namespace flarestock {

/// A change each of builds that the shop has not acknowledged yet.
class OwedPlans {
public:
    /// Has those that wait for the next start. Before all else; it must outlive the last change.
    void rememberBy(Unwritten &unwritten) { m_unwritten = &unwritten; }

    [[nodiscard]] bool isEmpty() const { return m_plans.empty(); }
    [[nodiscard]] const std::vector<ChangedPlan> &all() const { return m_plans; }
    /// Null where nothing of that build is owed.
    [[nodiscard]] const ChangedPlan *find(const std::string &id) const;
    /// Of a build that is owed already it is what is to be kept now; it still began as it did.
    void add(const ChangedPlan &changed);
    /// The shop has that change. One that was made after it begins with it and stays owed.
    void settle(const ChangedPlan &kept);
    void drop(const std::string &id); ///< It can be kept no more.
    /// Those builds as they were changed here, but for this one.
    void showIn(std::vector<BuildPlan> &builds, const std::string &butNot) const;
    /// What a desk has left that ended. Whether there is any.
    [[nodiscard]] bool takeUp();
    void goElsewhere() { m_plans.clear(); } ///< With another shop; they wait for this one.

private:
    void remember() const;

    Unwritten *m_unwritten = nullptr;
    std::vector<ChangedPlan> m_plans;
};

struct KeptPlan {
    /// A server that went away, or a disk that is full, is asked again after so long.
    static constexpr int TryAgainMs = 5000;

    QString said;     ///< How it stands: "kept, 14:02".
    BuildPlan before; ///< The build on the desk as it was in the shop when its changes began.
    QTimer soon;
    Errand errand;
    bool isWaiting = false; ///< The plan on the desk is not in the file yet.
    OwedPlans owed;
    QString whyNot;               ///< Why the last of it could not be kept; empty where it could.
    std::vector<BuildPlan> since; ///< Kept while something was being written.
};

} // namespace flarestock
