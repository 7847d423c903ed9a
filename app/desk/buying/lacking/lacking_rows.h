// SPDX-License-Identifier: MIT
//
// Lacking rows: what is short as a list, a row for each part and day; and what is to be said of
// the one that is looked at.

#pragma once

#include "app/desk/buying/buyers_book.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// part what lacks of by whom coming orderBy isPast says
[[nodiscard]] QStringList lackingCells();
[[nodiscard]] std::vector<Row> lackingRows(const BuyersBook &book, Units units);
/// The key of a shortage's row.
[[nodiscard]] QString lackingKey(const Shortage &shortage);

/// title detail flagged; a line for each thing that is known of the shortage.
[[nodiscard]] QStringList lackingFactCells();
[[nodiscard]] std::vector<Row> lackingFacts(const BuyersBook &book, const Shortage &shortage,
                                            Units units);
/// What the shop should know besides: what may cover something, what is unsure, what nobody counts.
[[nodiscard]] QStringList lackingNotes(const BuyersBook &book);

} // namespace flarestock
