// SPDX-License-Identifier: MIT
//
// Flow conditions of a build: those of its answers (systems/sizing), by which its sizes were worked
// out too.

#pragma once

#include "model/systems/expansion.h"
#include "model/systems/sizing/flow_conditions.h"

namespace flarestock {

[[nodiscard]] inline FlowConditions conditionsOf(const Expansion &expansion)
{
    return conditionsOf(expansion.answers);
}

/// What its engine burns at full power; nothing where no power is asked, or the fluid is no fuel.
[[nodiscard]] inline std::optional<double> engineFlowM3S(const Expansion &expansion,
                                                         const FlowConditions &conditions)
{
    return engineFlowM3S(expansion.answers, expansion.fluid, conditions);
}

} // namespace flarestock
