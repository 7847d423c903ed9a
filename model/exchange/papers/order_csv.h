// SPDX-License-Identifier: MIT
//
// An order as CSV for a spreadsheet (RFC 4180): a row a line, whose sums are those of the paper.
//
// A text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a carriage
// return) gets an apostrophe before it, as OWASP's "CSV Injection" recommends.

#pragma once

#include "model/buying/totals.h"

namespace flarestock {

/// UTF-8, lines ended by CR LF.
[[nodiscard]] std::string orderCsv(const Order &order);

/// A text as a cell: guarded, and between quotes where it has to be.
[[nodiscard]] std::string csvCell(std::string_view text);

} // namespace flarestock
