// SPDX-License-Identifier: MIT
//
// Order steps: which step an order may take from how it stands, and what takes a step back. Whoever
// writes asks this of the shop as it is at that moment, so that two seats at once neither give one
// number twice nor change an order past each other.
//
//   draft    ─▶ draft, placed, cancelled
//   placed   ─▶ placed (its days and its note), closed, cancelled where nothing came
//   any      ─▶ what it was before its last step; to a draft or cancelled where nothing came

#pragma once

#include "model/buying/order_book.h"

namespace flarestock {

/// Why `next` may not be written down, as a sentence without its full stop; empty where it may.
/// `standing`: the order of its number; nullptr where there is none yet.
[[nodiscard]] std::string notWrittenBecause(const BookedOrder *standing, const Order &next);

/// The order as it was before that step, as a further step; without an id, a name and a time. It is
/// the newest, or the newest that holds, as those behind it were taken back. An order that was only
/// opened is cancelled. Problem: the order has gone on since; something has come of it, so that it
/// cannot be a draft again, nor cancelled.
[[nodiscard]] Result<Order> stepBack(const BookedOrder &standing, const MovementId &step);

} // namespace flarestock
