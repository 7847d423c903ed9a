// SPDX-License-Identifier: MIT
//
// Joints by date: the builds take from the stock by their days, and their joints are chosen
// together over all of them, so that an earlier build takes, of ways that are as good for it, one
// that spares a later one a piece.

#pragma once

#include "app/buyer/by_date/taking_by_date.h"

namespace flarestock {

struct JointsByDate {
    std::shared_ptr<const TakingByDate> taking;
    NeedsTogether together;
};

/// The plans stand by their days. Each build has what is best for it with what those before it
/// leave; of ways that are as good for it those that are the best by date for all
/// (model/joints/sharing/dated/by_date.h). Problem: a plan that cannot be worked out.
[[nodiscard]] Result<JointsByDate> jointsByDate(const Workshop &workshop, const Bars &bars,
                                                const std::vector<BuildPlan> &plans);

} // namespace flarestock
