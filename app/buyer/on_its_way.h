// SPDX-License-Identifier: MIT
//
// On its way: what a build may count on that is not here yet: what open orders still bring, and
// what suppliers have promised for what they owe. What a supplier owes of an order is not awaited
// twice: it comes when the claim says, and as long as nothing was promised nobody counts on it.
//
//   4 ordered for Tuesday, 3 came, 1 claimed as short and promised by Friday: 1 on Friday

#pragma once

#include "app/buyer/needs.h"

namespace flarestock {

/// Orders by number, then claims as they were raised.
[[nodiscard]] std::vector<OnOrder> onItsWay(const Workshop &workshop);

/// What of it is not what it seems: an order that should have come, or says no day, a sentence
/// each.
[[nodiscard]] std::vector<std::string> unsureOnItsWay(const Workshop &workshop,
                                                      const std::string &today);

} // namespace flarestock
