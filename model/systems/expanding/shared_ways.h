// SPDX-License-Identifier: MIT
//
// Shared ways: how the joints of an expansion would be closed were they chosen together, with what
// stations, plugs and the builder's own picks leave of the shelf.

#pragma once

#include "model/systems/expand.h"

namespace flarestock {

struct SharedWays {
    Picks
        ways; ///< By joint, as a pick says it. Empty where the joints stand at their best already.
    std::optional<ShareBound> unproven;
};
/// Each joint chooses among the best that it has alone, and the ways that it was given in `made`.
[[nodiscard]] SharedWays sharedWays(const ExpandRequest &request, const Expansion &made);

} // namespace flarestock
