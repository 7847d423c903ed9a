// SPDX-License-Identifier: MIT
//
// Judging: a row of pieces that a builder has decided on, looked at as it is. Its links may leak.

#pragma once

#include "model/joints/closing.h"
#include "model/joints/graph.h"

namespace flarestock {

inline constexpr std::size_t JudgedMost = 8; ///< Two ways to turn each piece: 256 rows.

/// The pieces in their order, each turned so that the worst link is as good as it can be. Each has
/// two ports and there are at most JudgedMost (asserted).
[[nodiscard]] Way bestTurned(const std::vector<const Part *> &parts, const JointRequest &request);

/// The aids of the links that fit: of the parts that answer a need, the one with the most free.
void addAids(const JointGraph &graph, const JointRequest &request, const FreeLeft &left, Way &way);

/// Sets toBuy, priced and cost from the pieces and aids.
void priceUp(const JointGraph &graph, const Shelf &shelf, const FreeLeft &left, Way &way);

} // namespace flarestock
