// SPDX-License-Identifier: MIT
//
// Bought: the fold of all that was written down of buying: orders and what came of them, what
// suppliers owe, what was charged or credited afterwards.
//
//   const auto bought = Bought::of(records, ledger);
//   bought->claims.find("C-12");

#pragma once

#include "model/buying/late_cost.h"
#include "model/buying/order_book.h"
#include "model/buying/supplier_claim.h"

namespace flarestock {

struct Bought {
    BuyingBook orders;
    ClaimBook claims;
    std::vector<LateCost> lateCosts; ///< Oldest first.

    /// In the order of the fold; what was written down of an action that was taken back does not
    /// count. Problem: a record that is not what its kind says.
    [[nodiscard]] static Result<Bought> of(const std::vector<Record> &records,
                                           const Ledger &ledger);
};

} // namespace flarestock
