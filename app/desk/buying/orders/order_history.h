// SPDX-License-Identifier: MIT
//
// Order history: what happened to an order, in words, each thing once a day, and whether anybody
// outside the shop has heard of it.
//
//   drafted, Sat 28 Nov 2026   changed, Sat 28 Nov 2026   placed, Mon 30 Nov 2026

#pragma once

#include "app/desk/rows/rows.h"
#include "model/buying/order_book.h"

namespace flarestock {

/// Whether it went out to its supplier at some time.
[[nodiscard]] bool wentOut(const BookedOrder &order);
/// A draft that was given up or taken back before it went out: nothing is left of it but its
/// number.
[[nodiscard]] bool isGivenUpDraft(const BookedOrder &order);
/// Its steps, the oldest first, as orderFactCells().
[[nodiscard]] std::vector<Row> orderHistory(const BookedOrder &order, const std::string &today);

} // namespace flarestock
