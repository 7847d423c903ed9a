// SPDX-License-Identifier: MIT
//
// Drawer rows: the trailer's drawers, and what lies in the one that is pulled out, in words.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/trailer/copies/trips_seen.h"
#include "app/desk/trailer/drawers/trailer_book.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// title count stands mark there lack over away says; the key is the drawer's id. `there`, `lack`
/// and `over` are pieces, for the picture of the drawer; `away` who has it, empty where it is here.
[[nodiscard]] QStringList drawerCells();
[[nodiscard]] std::vector<Row> drawerRows(const TrailerBook &book, const TripsSeen &trips);
/// "all is there", "2 short, 1 to take out"
[[nodiscard]] QString saidPieces(const Drawer::Pieces &pieces);

/// part what keep there note isShort says; the key is the part's number, `note` what is wrong.
[[nodiscard]] QStringList inDrawerCells();
[[nodiscard]] std::vector<Row> inDrawerRows(const Drawer &drawer, Units units);

/// Why something does not belong where it lies, on the desk.
[[nodiscard]] QString saidMisplaced(Misplaced why);

} // namespace flarestock
