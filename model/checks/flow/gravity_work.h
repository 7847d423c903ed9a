// SPDX-License-Identifier: MIT
//
// Gravity work: which carburettors the level in a tank alone feeds, and how much it pushes through
// their lines against half as much again as the engine burns (14 CFR 23.955).

#pragma once

#include "model/checks/flow/section_work.h"

namespace flarestock {

struct GravityPlan {
    const PlacedStation *user = nullptr;
    std::vector<FlowPath> paths; ///< Each from a tank to it, with no pump on the way; one at least.
};

/// In flow order; a user that a pump feeds too is none.
[[nodiscard]] std::vector<GravityPlan> gravityPlans(const Expansion &expansion);

/// The flow's engine is known. Fills in its feeds, has the sections carry their runs, and names
/// what is missing.
void feedByGravity(const std::vector<GravityPlan> &plans, SectionWork &sections, SystemFlow &flow);

} // namespace flarestock
