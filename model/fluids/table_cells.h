// SPDX-License-Identifier: MIT
//
// The rows of the tables that are built into the program (data/*.csv): cells between commas, or in
// quotation marks with none inside. What people write is read by model/exchange, which forgives
// nothing; here a slip is ours and asserted.

#pragma once

#include <string_view>
#include <vector>

namespace flarestock {

using TableRow = std::vector<std::string_view>;

/// All rows, the header first; each has as many cells as the header (asserted).
[[nodiscard]] std::vector<TableRow> rowsOfTable(std::string_view csv);
/// The bare number in a cell of our own tables; throws where it is none, which is a bug of the
/// table.
[[nodiscard]] double numberIn(std::string_view cell);

} // namespace flarestock
