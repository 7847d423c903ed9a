// SPDX-License-Identifier: MIT
//
// Credit asked: what a supplier pays back for a claim, as it is typed: in the shop's currency, or
// in that of the order at the order's rate. More than what was claimed has cost is a slip of the
// pen.

#pragma once

#include "app/buyer/receiving/claim_ends.h"

namespace flarestock {

/// 10^-6 of the shop's currency. Problem: no amount, another currency, more than what was claimed
/// has cost with its share of freight and the like.
[[nodiscard]] Result<std::int64_t> creditAsked(const Settling &settling);

} // namespace flarestock
