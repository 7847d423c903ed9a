// SPDX-License-Identifier: MIT
//
// A sheet's rows as CSV (RFC 4180), without its sums: a column each, numbers as they are, and texts
// guarded as csvCell() says.

#pragma once

#include "app/sheet/workbook.h"

namespace flarestock {

/// UTF-8, lines ended by CR LF; a heading of the columns' titles.
[[nodiscard]] std::string csvOf(const Workbook &sheet);

} // namespace flarestock
