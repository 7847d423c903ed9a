// SPDX-License-Identifier: MIT
//
// Shared ways: how the joints of an expansion are closed when they are chosen together, with what
// its stations leave of the shelf. What the builder has picked takes its share and stays.

#pragma once

#include "model/systems/expand.h"

namespace flarestock {

struct SharedWays {
    /// By joint, as a pick says it. Empty where the joints stand at their best already.
    Picks ways;
    JointsTogether together;
};

/// Each joint chooses among the ways that it has alone, the best first, and that which it has in
/// `made`; among more of them where that could be better (joint_choices.h).
[[nodiscard]] SharedWays sharedWays(const ExpandRequest &request, const Expansion &made);

} // namespace flarestock
