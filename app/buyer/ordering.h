// SPDX-License-Identifier: MIT
//
// Ordering: an order's steps written into the journal. A new one draws the next number of its year,
// and draws again where another seat was given that one meanwhile.

#pragma once

#include "app/stockroom/deed.h"
#include "model/buying/order_book.h"

namespace flarestock {

struct WrittenOrder {
    BookedOrder order; ///< As it stands from then on.
    MovementId record;
    bool already = false; ///< This id was in the journal before; nothing has changed.
};

/// `draft` without a number and an id. Problem: as ShopFile::append(); the id stands for something
/// else.
[[nodiscard]] Result<WrittenOrder> openOrder(const Order &draft, ShopFile &file, const By &by);
/// Several at once, taken back as one: at least one. The numbers follow each other.
[[nodiscard]] Result<std::vector<WrittenOrder>> openOrders(const std::vector<Order> &drafts,
                                                           ShopFile &file, const By &by);
/// What an action opened that the journal has already, as it stands now; empty where it has none.
/// Problem: the id stands for something else.
[[nodiscard]] Result<std::vector<WrittenOrder>> openedBefore(const MovementId &action,
                                                             const ShopFile &file);
/// The next step of an order as it was read: `next` names in `before` what it goes on from.
/// Problem: as ShopFile::append(); the order cannot take it, or has gone on meanwhile.
[[nodiscard]] Result<WrittenOrder> writeStep(const Order &next, ShopFile &file, const By &by);
/// Where the journal has a step of the action's id already: the order as it stands; else nothing.
/// `state`: what it was to become; nothing: any. Problem: the id stands for something else.
[[nodiscard]] Result<std::optional<WrittenOrder>> repeatedStep(const std::string &number,
                                                               std::optional<OrderState> state,
                                                               const ShopFile &file, const By &by);

/// What is bought, as the journal says it now.
[[nodiscard]] Result<BuyingBook> buyingOf(const ShopFile &file);

} // namespace flarestock
