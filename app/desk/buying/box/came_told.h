// SPDX-License-Identifier: MIT
//
// Came told: what a box has brought once it is booked in: each piece with its place and what it
// costs now, held against the time before; what lacks and is claimed.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// title detail flagged
[[nodiscard]] QStringList cameCells();
/// What the action has brought, in the shop as it is with it; `history` tells of a part's movements
/// and may be empty: then nothing is said of the time before. Takes as long as the journal is read.
[[nodiscard]] std::vector<Row>
cameRows(const Wrote &wrote,
         const std::function<Result<std::vector<Movement>>(const std::string &)> &history,
         Units units);
/// Whether the action has received something of an order, or claims something of it.
[[nodiscard]] bool isOfOrder(const Action &action, const std::string &order);
/// "Received of order 2026-0007: 7 pieces, 1 claim."
[[nodiscard]] QString saidCame(const Wrote &wrote);

} // namespace flarestock
