// SPDX-License-Identifier: MIT
//
// Taken in order: who takes which pieces where the builds stand in one order. Other days that leave
// the builds in this order, and bar no other lots, change nothing of it but the days of its lines.

#pragma once

#include "app/buyer/by_date/joints_by_date.h"

namespace flarestock {

struct TakenInOrder {
    const Workshop *workshop = nullptr; ///< It outlives this.
    std::vector<std::string> order;     ///< The ids of the builds.
    Bars bars;
    JointsByDate by;

    /// One of those that are known where there is one, else worked out. Problem: as
    /// jointsByDate().
    [[nodiscard]] static Result<std::shared_ptr<const TakenInOrder>>
    of(const Workshop &workshop, Bars bars, const std::vector<BuildPlan> &plans,
       const std::vector<std::shared_ptr<const TakenInOrder>> &known);

    /// Its lines by the days that the plans have.
    [[nodiscard]] std::vector<NeedLine> lines(const std::vector<BuildPlan> &plans) const;
};

} // namespace flarestock
