// SPDX-License-Identifier: MIT
//
// Box rows: the ticks of a box as a list for QML, and in words what is ticked and what lacks.

#pragma once

#include "app/desk/buying/box/ticks.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// part what amount came length mark markHint to content full lacks says typed; the key is the
/// number of the tick, `typed` is the amount as one can type it back.
[[nodiscard]] QStringList boxCells();
[[nodiscard]] std::vector<Row> boxRows(const Ticks &ticks, Units units);
/// What boxes lack, and so becomes a claim, and what is there and was not ordered; empty: neither.
[[nodiscard]] QString saidLacking(const Ticks &ticks, Units units);

} // namespace flarestock
