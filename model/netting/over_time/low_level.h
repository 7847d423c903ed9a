// SPDX-License-Identifier: MIT
//
// Low-level code: how deep an item stands below what nothing is made of, by its longest way. An
// item is netted when all that take it have been: in order of the codes.
//
//   A of B and C, B of D, C of B  →  A 0, C 1, B 2, D 3

#pragma once

#include "model/exact/problem.h"
#include "model/netting/over_time/wanted_over_time.h"

#include <map>

namespace flarestock {

/// By item. Problem: an item that stands twice, one that is made of an unknown item, or of itself
/// by whatever way, which is named: "A > B > C > A".
[[nodiscard]] Result<std::map<std::string, int, std::less<>>>
lowLevelCodes(const std::vector<NettedItem> &items);

} // namespace flarestock
