// SPDX-License-Identifier: MIT
//
// A kit as a table of one's own: `part`, `rate` (uses per event, run or hour of one piece), `price`
// (of one piece), and how many each car has of it, `each` (1 where it is not said).

#pragma once

#include "model/exact/decimal.h"

namespace flarestock {

struct KitRow {
    std::string part;
    Decimal rate;          ///< Zero or more.
    Decimal price;         ///< More than zero; at most six decimals.
    std::int64_t each = 1; ///< 1 or more.
};

/// Problem: no such table, a part that stands twice or is not named, a rate below zero, a price
/// that is not above it or has more than six decimals; no row at all.
[[nodiscard]] Result<std::vector<KitRow>> readKit(std::string_view text, std::string name);

} // namespace flarestock
