// SPDX-License-Identifier: MIT
//
// Order rows: an order as a sheet, a row a line, whose sums are those of its paper; and all its
// papers.

#pragma once

#include "app/sheet/paper_files.h"
#include "model/buying/order.h"

namespace flarestock {

[[nodiscard]] Workbook orderRows(const Order &order);
/// What stands on an order's papers; it refers to both, which have to outlive it.
[[nodiscard]] PaperMaking orderPapers(const Order &order, const Catalogue &catalogue);

} // namespace flarestock
