// SPDX-License-Identifier: MIT
//
// The bill as rows of a ledger: every figure as text in the person's locale, exact.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"

namespace flarestock {

enum class Grouping : std::uint8_t { Station, Kind };

/// part what why need free shortBy isShort each cost head tool at says; the key is the part
/// number, "at" the id of the first station that it serves.
[[nodiscard]] QStringList billCells();

/// Lines of one group stand together, groups in the order of their first line.
[[nodiscard]] std::vector<Row> billRows(const WorkedOut &worked, Grouping grouping);

[[nodiscard]] int shortLines(const PricedBill &bill);
/// Parts whose need, free part or cost differs between two bills, and parts that only one has.
[[nodiscard]] int changedLines(const PricedBill &before, const PricedBill &after);

} // namespace flarestock
