// SPDX-License-Identifier: MIT
//
// Carry wanted: which parts of a shop, for which events, at what certainty, as it is typed.

#pragma once

#include "app/command/trailer/carry_shop.h"
#include "app/trailer/carrying.h"

namespace flarestock {

/// Problem: an event, a day or a number that is none; more events than are to come.
[[nodiscard]] Result<CarryWanted> wantedOf(const CarryShopAsked &asked, const CarryNumbers &numbers,
                                           const OpenShop &shop);
/// Each once; those of spares.csv where none is named. Problem: one that the shop does not have, or
/// that is cut from the length; none at all.
[[nodiscard]] Result<std::vector<const Part *>>
partsAsked(const CarryShopAsked &asked, const OpenShop &shop, const SpareBook &book);

} // namespace flarestock
