// SPDX-License-Identifier: MIT
//
// Shelf in turn: what is free to one build after the other, as Workshop::shelfFor() has it. In a
// shop of many parts they differ in few: only those are worked out anew for the next build.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

class ShelfInTurn {
public:
    /// The workshop and the bars outlive it.
    ShelfInTurn(const Workshop &workshop, const Bars &bars);

    /// As Workshop::shelfFor() of the plan, of that ledger and the bars; it stays until the next
    /// is asked for. The ledger is the workshop's, but for what has changed() since.
    [[nodiscard]] const Shelf &of(const BuildPlan &plan, const Ledger &now);
    /// What lies of a part, or is promised of it, is no more as the workshop has it.
    void changed(const Part &part) { m_changed.insert(&part); }

private:
    using Parts = std::set<const Part *>;

    /// What is the build's alone: promised to it, in its car, or kept from it.
    [[nodiscard]] Parts ownOf(const BuildPlan &plan, const Ledger &now) const;

    const Workshop &m_workshop;
    const Bars &m_bars;
    Shelf m_shelf;
    Parts m_changed;
    Parts m_ownBefore; ///< Of the build that m_shelf is worked out for.
};

} // namespace flarestock
