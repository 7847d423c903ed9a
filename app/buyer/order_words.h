// SPDX-License-Identifier: MIT
//
// Order words: what a buyer says of an order, looked up in the shop: its lines with the supplier's
// price where none is said, the freight by his steps, his tax.
//
//   "AD-8-10 12"    "PT-6 40 ft"    "AD-8-10 12 at 4.15"

#pragma once

#include "app/stockroom/asked.h"
#include "model/buying/order_book.h"
#include "model/buying/plan/rates.h"

namespace flarestock {

/// What is left empty stays as it is; of a new order it is what the supplier's offers say.
struct OrderWords {
    std::vector<std::string> lines;
    std::vector<std::string> without; ///< Parts whose lines go.
    std::string freight;
    std::string discount;
    std::string rate; ///< So much of the shop's currency for one of the order's; empty: by …
    std::optional<Rates> written; ///< … what the shop wrote down, where it is given.
    std::string due;              ///< Of all its lines; empty: each by its lead.
    std::string day;
    std::optional<std::string> note;
};

/// Problem: none of that id; names the nearest.
[[nodiscard]] Result<const Supplier *> supplierAsked(const std::string &typed,
                                                     const Catalogue &catalogue);
/// Problem: not there; names the nearest.
[[nodiscard]] Result<const BookedOrder *> orderAsked(const std::string &typed,
                                                     const BuyingBook &book);

/// A new order of that supplier, a draft of that day, without its number. Its freight is by his
/// steps, where he says any. Problem: no line; a part that he does not offer, and no price said;
/// less than he sends, or no whole packs; offers in several currencies; no rate.
[[nodiscard]] Result<Order> newOrder(const std::string &supplier, const OrderWords &words,
                                     const Workshop &workshop, std::int64_t now);
/// The order with what was said of it; a line of a part that it has stands in its place. The
/// freight follows the goods as long as it was the supplier's own, and the days its lines as long
/// as they go by his leads. Problem: as above; or nothing that was said changes it.
[[nodiscard]] Result<Order> changed(const Order &order, const OrderWords &words,
                                    const Workshop &workshop);
/// The days on which it can be here, ordered that day: each line by the lead of its supplier's
/// offer, the order when the last of them is. "2026-12-10"
[[nodiscard]] Order withDaysOf(Order order, const std::string &day, const Catalogue &catalogue);

/// What a supplier takes for freight; nothing where he says none.
[[nodiscard]] std::optional<Decimal> freightOf(const Supplier &supplier, const Decimal &goods);

} // namespace flarestock
