// SPDX-License-Identifier: MIT
//
// Narrow fields: by what the stock can be narrowed, as fields with their choices; the first of each
// is any.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/stock/sieve.h"

namespace flarestock {

/// title choices answer
[[nodiscard]] QStringList narrowCells();
[[nodiscard]] std::vector<Row> narrowRows(const StockBook &book, const Narrowing &asked);
/// The same narrowing with that choice of that field.
[[nodiscard]] Narrowing narrowed(const StockBook &book, Narrowing asked,
                                 const std::pair<QString, int> &choice);
/// "adapter, -10, in the trailer, below what we keep"; empty where nothing is asked.
[[nodiscard]] QString saidNarrowing(const StockBook &book, const Narrowing &asked);

} // namespace flarestock
