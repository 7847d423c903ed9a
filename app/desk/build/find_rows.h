// SPDX-License-Identifier: MIT
//
// Finding within one build: its stations, joints, bill lines and runs, in this order, by words,
// ports and part numbers. All the words that were typed must occur, in any order: "-8 orb",
// "pump in", "10 micron". Last come the joints that could be made with what was typed: whoever
// holds a piece finds where it goes.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// kind title detail target; kind is "station", "joint", "run" or "line" (of the bill), target its
/// id or part number.
[[nodiscard]] QStringList foundCells();
/// In flow order, at most `most`; nothing for a blank text.
[[nodiscard]] std::vector<Row> foundRows(const WorkedOut &worked, const QString &typed, int most,
                                         Units units);

} // namespace flarestock
