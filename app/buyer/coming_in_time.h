// SPDX-License-Identifier: MIT
//
// Coming in time: lines that their stock leaves short are met by open orders, by day; what then
// lacks gets the day by which it must be ordered.

#pragma once

#include "app/buyer/needs.h"

namespace flarestock {

/// Fills coming, late, shortBy, orderBy and isPastDue of the lines, which stand in the order in
/// which they are served: `shortBy` is what stock leaves short before, and what lacks after.
/// Problem: a day of the request that is none.
[[nodiscard]] Result<void> meetByOrders(std::vector<NeedLine> &lines, const Workshop &workshop,
                                        const NeedsAsked &asked);

/// What of it is to be ordered, by day and part as shortagesIn(): what comes already, though late,
/// is not ordered a second time where no offer brings it sooner, ordered today.
[[nodiscard]] std::vector<Shortage> shortagesToOrder(ShopNeeds needs, const Catalogue &catalogue,
                                                     const std::string &today);

} // namespace flarestock
