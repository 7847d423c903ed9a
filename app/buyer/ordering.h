// SPDX-License-Identifier: MIT
//
// Ordering: an order's steps: which comes next, and how it is written into the journal. A new order
// draws the next number of its year, and draws again where another seat was given that one
// meanwhile.

#pragma once

#include "app/buyer/order_words.h"
#include "app/stockroom/deed.h"
#include "model/buying/order_book.h"

namespace flarestock {

/// The next step of an order, with the step named that it goes on from, and not yet signed. Of the
/// words the days count: when it goes out (empty: on the day of `at`), and when it is to be
/// here (empty: as it says, else each line by its lead). Problem: it is no draft; a day that is
/// none.
[[nodiscard]] Result<Order> orderPlaced(const Order &now, const OrderWords &words,
                                        const Workshop &workshop, std::int64_t at);
/// Problem: it is placed, and more than its days and its note were to change; it is over; as
/// changed().
[[nodiscard]] Result<Order> orderChanged(const Order &now, const OrderWords &words,
                                         const Workshop &workshop);
/// `state`: closed or cancelled. Problem: it does not stand so that it can be.
[[nodiscard]] Result<Order> orderEnded(const Order &now, OrderState state);

struct WrittenOrder {
    BookedOrder order; ///< As it stands from then on.
    MovementId record;
    bool already = false; ///< This id was in the journal before; nothing has changed.
};

/// The action that opens them, each with the next number of its year: at least one, without numbers
/// and ids. Problem: one that no shop would write; the journal cannot be read.
[[nodiscard]] Result<Action> openingOf(const std::vector<Order> &drafts, const ShopFile &file,
                                       const By &by);
/// The action that writes the next step of an order. Problem: as the order's fault() says.
[[nodiscard]] Result<Action> stepOf(const Order &next, const By &by);

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
