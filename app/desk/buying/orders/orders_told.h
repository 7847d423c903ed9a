// SPDX-License-Identifier: MIT
//
// Orders told: the shop's orders as a list, and one of them with its lines, what has come of each,
// its sums and its steps.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "app/workshop/workshop.h"

namespace flarestock {

/// number supplier stands days total section mark says; the key is the number. Drafts first, then
/// what is on its way by its day, then what is over, the newest first. What never went out and was
/// given up or taken back is none of them.
[[nodiscard]] QStringList orderListCells();
[[nodiscard]] std::vector<Row> orderListRows(const Workshop &shop, const std::string &today);

/// part what quantity came each cost open says; the key is the part. `open`: something of it is
/// still to come.
[[nodiscard]] QStringList orderLineCells();
[[nodiscard]] std::vector<Row> orderLineRows(const BookedOrder &order, const Workshop &shop,
                                             Units units, const std::string &today);
/// title figure strong
[[nodiscard]] QStringList orderSumCells();
[[nodiscard]] std::vector<Row> orderSumRows(const BookedOrder &order, const Workshop &shop);
/// title detail flagged: when it went out, when it is due, its note, its steps, what was charged
/// late.
[[nodiscard]] QStringList orderFactCells();
[[nodiscard]] std::vector<Row> orderFactRows(const BookedOrder &order, const Workshop &shop,
                                             const std::string &today);
/// "draft", "placed", "partly received" …
[[nodiscard]] QString saidOrderState(OrderStanding standing);

} // namespace flarestock
