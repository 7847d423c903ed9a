// SPDX-License-Identifier: MIT
//
// Other ways: joints that are counted on in another way than the bill of their build by itself has
// them, so that a builder can take that as a pick.

#pragma once

#include "app/buyer/by_date/joints_by_date.h"

namespace flarestock {

/// Of these builds; of all where none is named. The bills are those of the days that they have in
/// the shop.
[[nodiscard]] std::vector<OtherWay> otherWays(const Workshop &workshop, const TakingByDate &taking,
                                              const std::vector<std::string> &builds);

} // namespace flarestock
