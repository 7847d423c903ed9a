// SPDX-License-Identifier: MIT
//
// The cells that only some kinds of parts have: what the maker publishes about a pump, a filter …

#pragma once

#include "model/exchange/sheet.h"
#include "model/parts/part.h"

namespace flarestock {

/// The facts of a row whose part is of this kind; adds a problem for each cell that is wrong, for
/// one that this kind needs and that is empty, and for one that belongs to other kinds.
[[nodiscard]] Facts readFacts(const SheetRow &row, Kind kind);

/// A pump's curve: "3 bar @ 13.5 V = 255 L/h; …", by voltage, then rising pressure. The voltage may
/// be left out for a pump that is not electric.
[[nodiscard]] std::vector<PumpFacts::Point> readCurve(const SheetRow &row, bool electric);

/// Amperes, with or without the unit; nothing where the cell is empty or wrong.
[[nodiscard]] std::optional<double> readAmps(const SheetRow &row);
/// The gauge of a wire, AWG: 12, or 1/0 for 0. A problem where it is none.
[[nodiscard]] Facts readWire(const SheetRow &row);

} // namespace flarestock
