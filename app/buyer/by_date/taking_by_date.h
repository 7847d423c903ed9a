// SPDX-License-Identifier: MIT
//
// Taking by date: each build takes from the stock as if it were promised what it takes, one after
// the other, so that no piece is counted on twice.

#pragma once

#include "app/buyer/by_date/shelf_in_turn.h"
#include "app/buyer/needs.h"
#include "app/workshop/worked_build.h"

namespace flarestock {

class TakingByDate {
public:
    /// The workshop outlives it; the bars are of the days that the builds have then.
    TakingByDate(const Workshop &workshop, const Bars &bars);

    struct Taken {
        BuildPlan plan;
        WorkedBuild worked; ///< With what the builds before it left.
    };
    /// The build comes behind those that took theirs before. Problem: a plan that cannot be worked
    /// out.
    [[nodiscard]] Result<void> take(const BuildPlan &plan, const JointSearch &search);

    [[nodiscard]] const std::vector<std::unique_ptr<Taken>> &builds() const noexcept
    {
        return m_builds;
    }
    [[nodiscard]] const std::vector<NeedLine> &lines() const noexcept { return m_lines; }
    /// As if each were promised what it took.
    [[nodiscard]] const Ledger &ledger() const noexcept { return m_ledger; }

private:
    void addLine(const BuildPlan &plan, const PricedLine &priced, const Shelf &shelf);

    const Workshop &m_workshop;
    Ledger m_ledger;
    ShelfInTurn m_shelf;
    std::vector<std::unique_ptr<Taken>> m_builds;
    std::vector<NeedLine> m_lines;
};

} // namespace flarestock
