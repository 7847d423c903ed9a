// SPDX-License-Identifier: MIT
//
// Slip rows: a purchase plan as what a person reads: the three aims side by side, a slip for each
// supplier, and what is to be known besides.

#pragma once

#include "app/desk/buying/slips/slip_book.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// title worth detail proof mark says; the key is the aim's name.
[[nodiscard]] QStringList aimCells();
[[nodiscard]] std::vector<Row> aimRows(const SlipBook &book);

/// name days late lines goods goodsWhy freight freightWhy tax taxWhy total worth draft says.
/// `lines` is a list of maps: part what quantity each cost why; `draft` the number of a draft that
/// is there already, empty where none is.
[[nodiscard]] QStringList slipCells();
[[nodiscard]] std::vector<Row> slipRows(const SlipBook &book, PlanAim aim, Units units);
[[nodiscard]] QString slipKey(const ProposedOrder &order);

/// What comes late, what nobody sells, what is left over, what waiting would save: a sentence each.
[[nodiscard]] QStringList slipNotes(const SlipBook &book, PlanAim aim, Units units);

} // namespace flarestock
