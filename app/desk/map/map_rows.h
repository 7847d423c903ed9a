// SPDX-License-Identifier: MIT
//
// The line map's plates, marks and labels as rows: what the screen shows at which pixel, and the
// sentence by which a screen reader says it.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/map/map_layout.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <set>

namespace flarestock {

/// atX atY wide high role part fact picked outdone echo lacks says station; a lacking part is drawn
/// dashed.
[[nodiscard]] QStringList plateCells();
[[nodiscard]] std::vector<Row> plateRows(const MapLayout &map, const WorkedOut &worked,
                                         Units units);

/// atX atY mark toBuy picked outdone found says; `found` are joints by id.
[[nodiscard]] QStringList markCells();
[[nodiscard]] std::vector<Row> markRows(const MapLayout &map, const Expansion &expansion,
                                        const std::set<QString> &found);

/// atX atY room dash length thickness picked outdone says; the words stand above and below atX,
/// atY, clear of a stroke so thick.
[[nodiscard]] QStringList runCells();
[[nodiscard]] std::vector<Row> runRows(const MapLayout &map, const Expansion &expansion,
                                       Units units);

/// atY high title
[[nodiscard]] QStringList bandCells();
[[nodiscard]] std::vector<Row> bandRows(const MapLayout &map);

} // namespace flarestock
