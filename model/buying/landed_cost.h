// SPDX-License-Identifier: MIT
//
// Landed cost: what the lines of an order are worth in stock: price and freight, less discount, and
// the tax that the shop does not get back, in the shop's currency. Lines and receipts share it to
// the last millionth, so that what was booked of an order adds up to what it cost.
//
//   X 400 and Y 100, freight 40, discount 80, at 5 of ours for one of theirs: 1840 and 460
//
// IAS 2.10 to 2.11: price, duty, tax that is not recovered, transport; discounts are deducted.

#pragma once

#include "model/buying/order.h"

namespace flarestock {

/// `total` in proportion to the weights, whole, with `total` as their sum: largest remainder, ties
/// to the earlier; of a total below zero by its absolute value. Weights are not below zero
/// (asserted); where none is above it they weigh the same. At least one weight (asserted).
[[nodiscard]] std::vector<std::int64_t> sharedOut(std::int64_t total,
                                                  const std::vector<Decimal> &weights);

/// What each line is worth when all of it has come: 10^-6 of the shop's currency. `landed` is what
/// it comes to on paper, in the order's currency; `rate` so much of the shop's for one of it. The
/// sum is the whole, converted exactly and rounded half-even once. Problem: a line below zero, or
/// beyond what 64 bits hold.
[[nodiscard]] Result<std::vector<std::int64_t>> landedValues(const std::vector<Decimal> &landed,
                                                             const Decimal &rate);

/// What has come of a line, or comes: smallest units, and 10^-6 of the shop's currency.
struct CameOfLine {
    std::int64_t quantity = 0;
    std::int64_t value = 0;
};
/// The value of `coming` more of a line of which `ordered` are worth `whole`: what all that is
/// there then should carry, half-even, less what came before. What completes the line takes all
/// that is left; what is more than ordered takes nothing. ordered > 0, coming > 0 (asserted).
[[nodiscard]] std::int64_t valueComing(const CameOfLine &ordered, const CameOfLine &before,
                                       std::int64_t coming);

} // namespace flarestock
