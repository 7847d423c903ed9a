// SPDX-License-Identifier: MIT
//
// Buying book: the fold of the records of what is bought: each order as it stands, the steps that
// it took and what has come of it.
//
//   const auto book = BuyingBook::of(records, ledger);
//   book->order("2026-0007")->standing();      // OrderStanding::PartlyReceived

#pragma once

#include "model/buying/order.h"
#include "model/buying/receipt.h"
#include "model/journal/ledger.h"

#include <functional>

namespace flarestock {

/// How an order stands by its steps and by what has come.
enum class OrderStanding : std::uint8_t { Draft, Placed, PartlyReceived, Closed, Cancelled };
[[nodiscard]] std::string_view text(OrderStanding standing) noexcept; ///< "partly received" …

struct BookedOrder {
    std::vector<Order> steps;      ///< Oldest first; at least one. Each is the order as it stood.
    std::vector<Receipt> receipts; ///< Oldest first, those that count.

    /// By part, what does not come any more: it was short or another part came, and the supplier
    /// has paid it back, or the claim was dropped. Smallest units; Bought::of() fills it in.
    std::map<std::string, std::int64_t, std::less<>> notComing;

    [[nodiscard]] const Order &now() const { return steps.back(); }
    /// What has come of a part for the order; smallest units, zero where it has no such line.
    [[nodiscard]] std::int64_t received(std::string_view part) const;
    /// What is still to come of a line, in its unit, what does not come any more left out: none of
    /// a draft, nor where the order is closed or cancelled; never below zero.
    [[nodiscard]] Decimal awaited(const OrderLine &line) const;
    [[nodiscard]] bool hasCome() const noexcept { return !receipts.empty(); }
    /// A placed order of which all has come is closed without anybody's word.
    [[nodiscard]] OrderStanding standing() const;
    /// Whether something of it is still to come.
    [[nodiscard]] bool isOnItsWay() const;
    /// The day on which the first of what is still to come is due; of an order of which nothing is,
    /// the whole order's. Empty: nobody has said.
    [[nodiscard]] std::string nextDue() const;
    /// The order as it stood before its last step; nullptr where that opened it.
    [[nodiscard]] const Order *former() const noexcept;
};

struct BuyingBook {
    std::map<std::string, BookedOrder, std::less<>> orders; ///< By number.

    /// In the order of the fold. What was written down of an action that was taken back does not
    /// count (`isTakenBack`, asked for the action's id); nor does a receipt of an order that stands
    /// nowhere. Problem: a record that is not what its kind says.
    [[nodiscard]] static Result<BuyingBook>
    of(const std::vector<Record> &records,
       const std::function<bool(const MovementId &)> &isTakenBack);
    [[nodiscard]] static Result<BuyingBook> of(const std::vector<Record> &records,
                                               const Ledger &ledger);

    [[nodiscard]] const BookedOrder *order(std::string_view number) const noexcept;
    /// The number behind the greatest of the year: "2026-0008"; the first is "2026-0001". `year` in
    /// four digits.
    [[nodiscard]] std::string nextNumber(std::string_view year) const;
};

} // namespace flarestock
