// SPDX-License-Identifier: MIT
//
// Cells of what happened to cars: the car itself, a day.

#pragma once

#include "model/exchange/sheet.h"
#include "model/journal/movement.h"

#include <span>

namespace flarestock {

/// As the shop spells it. Wrong: empty, no car.
[[nodiscard]] std::string carIn(const SheetRow &row, ColumnId column,
                                std::span<const Place> places);
/// "2026-10-18"; may be empty.
[[nodiscard]] std::string dayIn(const SheetRow &row, ColumnId column);

} // namespace flarestock
