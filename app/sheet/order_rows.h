// SPDX-License-Identifier: MIT
//
// Order rows: an order as a sheet, a row a line, whose sums are those of its paper.

#pragma once

#include "app/sheet/workbook.h"
#include "model/buying/order.h"

namespace flarestock {

[[nodiscard]] Workbook orderRows(const Order &order);

} // namespace flarestock
