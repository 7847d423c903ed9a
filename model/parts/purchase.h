// SPDX-License-Identifier: MIT
//
// Purchase: what must be bought of one offer to have at least so much, at the least money.
//
// Whole packs and multiples of them, not less than the minimum; and where a price break makes more
// cost less, the larger quantity. The cost rises between two breaks, so the only candidates are the
// need rounded up to packs and every break above it, rounded up to packs.
//
//   "1: 4.20; 10: 3.85; 50: 3.30; 100: 3.10", need 43  →  50 at 3.30 = 165.00 (43 × 3.85 = 165.55)

#pragma once

#include "model/parts/part.h"

namespace flarestock {

struct Purchase {
    const Offer *offer = nullptr;
    Decimal quantity; ///< In the part's unit; at least what is needed.
    Decimal cost;     ///< Exact: quantity × price each, in the offer's currency.
};

/// The cheapest purchase of this offer; of two that cost the same the smaller. A need of zero or
/// less asks for the least that can be bought.
[[nodiscard]] Purchase cheapestPurchase(const Offer &offer, const Decimal &need);

} // namespace flarestock
