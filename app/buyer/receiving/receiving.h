// SPDX-License-Identifier: MIT
//
// Receiving: what came of an order, into stock with what it cost, in one action: the movements, a
// receipt for each, and a claim for all that lacks, is damaged or is not what was ordered.
//
// What came of a line carries its share of the line's landed cost; a wrong part carries nothing
// until somebody has paid for it, and so does what is more than was ordered.

#pragma once

#include "app/buyer/receiving/receiving_words.h"
#include "app/stockroom/deed.h"
#include "model/buying/landed_cost.h"

namespace flarestock {

struct ReceivedAction {
    Action action;
    std::vector<BoxCheck> looks; ///< To be written first: they say nothing of what is not there.
    std::vector<ComingPiece> pieces; ///< As the first movements of the action.
    std::vector<Receipt> receipts;   ///< One for each of them.
    std::vector<SupplierClaim> claims;
    std::vector<OrderLine> awaited; ///< What is still to come, with its quantity.
};

/// Problem: more came than is awaited and nobody said so; the order's cost is beyond a journal; the
/// shop has no place for that supplier.
[[nodiscard]] Result<ReceivedAction> received(const Coming &coming, const Bought &bought,
                                              const Workshop &workshop, const By &by);

/// The place that what a supplier sends comes from: "supplier-OXS" of OXS. Problem: there is none.
[[nodiscard]] Result<const Place *> placeOfSupplier(const std::string &supplier,
                                                    const Ledger &ledger);

/// What each line of an order costs in all, with its share of freight and the like: 10^-6 of the
/// shop's currency. Problem: a line below zero, or beyond what 64 bits hold.
[[nodiscard]] Result<std::vector<std::int64_t>> valuesOfLines(const Order &order);

/// What so many more of an order's line carry, of all that it cost. Smallest units, 10^-6.
/// Problem: as above.
[[nodiscard]] Result<std::int64_t> valueOfComing(const BookedOrder &order, const Part &part,
                                                 const CameOfLine &before, std::int64_t coming);
[[nodiscard]] CameOfLine cameBefore(const BookedOrder &order, std::string_view part);

} // namespace flarestock
