// SPDX-License-Identifier: MIT
//
// Box rows: the ticks of a box as a list for QML, and in words what is ticked and what lacks.

#pragma once

#include "app/desk/buying/box/ticks.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// part what amount came length mark markHint to content full lacks says; the key is the number of
/// the tick.
[[nodiscard]] QStringList boxCells();
[[nodiscard]] std::vector<Row> boxRows(const Ticks &ticks, Units units);
/// "bracket BK-60 is not in its box: it becomes a claim."; empty where nothing lacks.
[[nodiscard]] QString saidLacking(const Ticks &ticks, Units units);

} // namespace flarestock
