// SPDX-License-Identifier: MIT
//
// The line map's plates, marks and labels as rows: what the screen shows at which pixel, and the
// sentence by which a screen reader says it.

#pragma once

#include "app/desk/map/map_layout.h"
#include "app/desk/rows/rows.h"
#include "model/parts/free_stock.h"

namespace flarestock {

/// atX atY wide high role part fact picked echo lacks says station; a lacking part is drawn dashed.
[[nodiscard]] QStringList plateCells();
[[nodiscard]] std::vector<Row> plateRows(const MapLayout &map, const Expansion &expansion,
                                         const Shelf &shelf);

/// atX atY mark toBuy picked says
[[nodiscard]] QStringList markCells();
[[nodiscard]] std::vector<Row> markRows(const MapLayout &map, const Expansion &expansion);

/// atX atY room dash length thickness says; atX and atY are the middle of its longest level piece.
[[nodiscard]] QStringList runCells();
[[nodiscard]] std::vector<Row> runRows(const MapLayout &map, const Expansion &expansion);

/// atY atX title
[[nodiscard]] QStringList bandCells();
[[nodiscard]] std::vector<Row> bandRows(const MapLayout &map);

/// What a part is known for in a few letters: "100 µm", "8.7 mm bore", "-8 / -6".
[[nodiscard]] QString keyFact(const Part &part);

} // namespace flarestock
