// SPDX-License-Identifier: MIT
//
// Order lines: one line of an order as it is typed, with what the supplier says of the part.

#pragma once

#include "app/stockroom/asked.h"
#include "model/buying/order.h"

namespace flarestock {

/// A line, and the currency of its price where the supplier's offer says it.
struct OrderLineAsked {
    OrderLine line;
    std::optional<Currency> currency;
};

/// "AD-8-10 12 at 4.15". Problem: no such part; no quantity; no price; less than the supplier
/// sends, or no whole packs, where it is his price.
[[nodiscard]] Result<OrderLineAsked> lineAsked(const std::string &typed, const Supplier &supplier,
                                               const Catalogue &catalogue);
/// The supplier's offer for a part; nullptr where he has none.
[[nodiscard]] const Offer *offerOf(const Supplier &supplier, const Part &part,
                                   const Catalogue &catalogue);
/// The largest quantity at a price break that costs no more than so much of the offer does: 10 for
/// 107.10 where 9 come to 107.10. Nothing where more costs more.
[[nodiscard]] std::optional<Decimal> moreForNoMore(const Offer &offer, const Decimal &quantity);

} // namespace flarestock
