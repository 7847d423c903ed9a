// SPDX-License-Identifier: MIT
//
// Order: what is bought of one supplier at once, as it stands on its paper. What has come of it is
// not written here: receipts say it (an order of which something has come is partly received).
//
//   draft ─▶ placed ─▶ closed        a draft or a placed order of which nothing came: cancelled
//
// In the journal an order is a record; each step writes it whole again, and the newest counts. Each
// but the first names the one that it goes on from, so that of two who change it at once only one
// does (order_steps.h).

#pragma once

#include "model/exact/money.h"
#include "model/exact/quantity.h"
#include "model/journal/record.h"
#include "model/parts/part.h"

namespace flarestock {

enum class OrderState : std::uint8_t { Draft, Placed, Closed, Cancelled };
[[nodiscard]] std::string_view text(OrderState state) noexcept; ///< "draft", "placed" …
[[nodiscard]] Result<OrderState> parseOrderState(std::string_view text);
/// "2026-0007": a year and a number of four digits or more, not 0000.
[[nodiscard]] bool isOrderNumber(std::string_view text) noexcept;

/// One line of an order; a part stands in one line.
struct OrderLine {
    std::string part;           ///< As the catalogue spells it.
    std::string supplierNumber; ///< What the supplier calls it; may be empty.
    std::string description;    ///< As it was when it was ordered, for the paper.
    Decimal quantity;           ///< In the part's unit; more than zero.
    Decimal pack = 1;           ///< So many of the unit in a pack.
    Decimal priceEach;          ///< Of one unit, in the order's currency; not below zero.
    Unit unit = Unit::Each;     ///< The part's, as it was when it was ordered.
    std::string due = {};       ///< When it is to be here; empty: as the whole order.
    /// Quantity times price, rounded once, half even, to so many decimals.
    [[nodiscard]] Decimal cost(std::int32_t minorDigits) const;
    friend bool operator==(const OrderLine &, const OrderLine &) = default;
};

struct Order {
    MovementId id;
    std::string number;   ///< "2026-0007"; no two orders of a shop have the same.
    std::string supplier; ///< Id.
    Currency currency;
    OrderState state = OrderState::Draft;
    std::vector<OrderLine> lines;
    Decimal discount; ///< Off the goods; not below zero, whole in minor digits, as is `freight`.
    Decimal freight;
    TaxRule tax;
    Decimal rate = 1; ///< So much of the shop's currency for one of the order's.
    std::string day;  ///< When it was placed; while it is a draft, when it was made.
    std::string due;  ///< When it is to be here; of lines with days of their own the last.
    std::string note; ///< For the supplier.
    std::string who;
    std::int64_t at = 0;
    /// The record that it goes on from; nothing: it opens its number.
    std::optional<MovementId> before = std::nullopt;

    [[nodiscard]] Record asRecord() const;
    /// Problem: not one, or one that no shop would write: no line, a part in two lines, nothing
    /// ordered, a discount of more than the goods, a day that is none.
    [[nodiscard]] static Result<Order> read(const Record &record);
    /// What is wrong with it, as a sentence without its full stop; empty where nothing is.
    [[nodiscard]] std::string fault() const;
    /// Whether both say the same on paper and stand the same, whoever wrote them and when.
    [[nodiscard]] bool saysAs(const Order &other) const;
    [[nodiscard]] Decimal goods() const; ///< The sum of its lines as they stand on paper.
    [[nodiscard]] const OrderLine *line(std::string_view part) const noexcept;
    [[nodiscard]] const std::string &dueOf(const OrderLine &line) const noexcept;
    [[nodiscard]] bool hasDaysByLine() const noexcept; ///< Some line comes on another day.
};

} // namespace flarestock
