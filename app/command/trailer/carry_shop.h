// SPDX-License-Identifier: MIT
//
// Carry of a shop: how many spares of its parts to take along, from its own history; and what they
// come to together, or kept in a drawer from now on.

#pragma once

#include "app/command/shop_options.h"
#include "app/command/trailer/carry_asked.h"

namespace flarestock {

struct CarryShopAsked : ShopAsked {
    std::vector<std::string> parts; ///< None: those of spares.csv.
    std::string until;
    std::string event;
    std::string on;
    std::string keep; ///< A drawer that is to hold what was found.
    bool together = false;
    bool csv = false;
};

void answerCarryOfShop(const CarryShopAsked &asked, const CarryNumbers &numbers,
                       CommandOutcome &outcome);

} // namespace flarestock
