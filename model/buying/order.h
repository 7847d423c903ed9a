// SPDX-License-Identifier: MIT
//
// Order: what is bought of one supplier at once, as it stands on its paper. What has come of it is
// not written here: receipts say it (an order of which something has come is partly received).
//
//   draft ─▶ placed ─▶ closed        a draft or a placed order of which nothing came: cancelled
//
// In the journal an order is a record; each step writes it whole again, and the newest counts.

#pragma once

#include "model/exact/money.h"
#include "model/journal/record.h"
#include "model/parts/part.h"

namespace flarestock {

enum class OrderState : std::uint8_t { Draft, Placed, Closed, Cancelled };
[[nodiscard]] std::string_view text(OrderState state) noexcept; ///< "draft", "placed" …
[[nodiscard]] Result<OrderState> parseOrderState(std::string_view text);

/// One line of an order; a part stands in one line.
struct OrderLine {
    std::string part;           ///< As the catalogue spells it.
    std::string supplierNumber; ///< What the supplier calls it; may be empty.
    std::string description;    ///< As it was when it was ordered, for the paper.
    Decimal quantity;           ///< In the part's unit; more than zero.
    Decimal pack = 1;           ///< So many of the unit in a pack.
    Decimal priceEach;          ///< Of one unit, in the order's currency.
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
    std::string due;  ///< When it is to be here.
    std::string note; ///< For the supplier.
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Order> read(const Record &record); ///< Problem: not one.
    [[nodiscard]] const OrderLine *line(std::string_view part) const noexcept;
};

} // namespace flarestock
