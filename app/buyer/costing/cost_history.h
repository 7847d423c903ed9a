// SPDX-License-Identifier: MIT
//
// Cost history: what a part has cost, receipt by receipt: what the order said, and what a piece
// came to when freight, discount, tax and what was charged late had landed on it.

#pragma once

#include "app/workshop/workshop.h"
#include "model/buying/bought.h"

namespace flarestock {

struct CostStep {
    std::string day;      ///< When it came in (UTC).
    std::string order;    ///< Its number; empty where it came without one.
    std::string supplier; ///< Id; without an order the place that it came from.
    std::int64_t quantity = 0;
    std::optional<Money> priceEach; ///< Of the order, of one unit.
    Decimal rate = 1;               ///< So much of the shop's currency for one of the order's.
    std::int64_t value = 0;         ///< 10^-6 of the shop's currency that it came in with.
    std::int64_t late = 0;          ///< What was charged (or credited) on it afterwards.
    std::string lot;
    /// What one unit has cost in the end, half-even to six decimals.
    [[nodiscard]] Decimal landedEach(const Part &part) const;
};

/// Oldest first; what was taken back is left out. `ofPart` are the movements of the part.
[[nodiscard]] std::vector<CostStep> costHistory(const Part &part,
                                                const std::vector<Movement> &ofPart,
                                                const Bought &bought, const Workshop &workshop);

} // namespace flarestock
