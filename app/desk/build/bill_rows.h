// SPDX-License-Identifier: MIT
//
// The bill as rows of a ledger: every figure as text in the person's locale, exact.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

enum class Grouping : std::uint8_t { Station, Kind };

/// part what why need here trailer way got shortBy isShort each cost head tool at says; the key is
/// the part number, "at" the id of the first station that it serves. `here` is in the bins and on
/// the shelves, `got` in the car already; of these four what is nothing is empty, but not `here`.
[[nodiscard]] QStringList billCells();

/// The group of a line, as the bill heads it: its first station's title, or its kind.
[[nodiscard]] QString billGroup(const WorkedOut &worked, const BillLine &line, Grouping grouping);

/// Lines of one group stand together, groups in the order of their first line.
[[nodiscard]] std::vector<Row> billRows(const WorkedOut &worked, Grouping grouping, Units units);

/// Which of the columns that may fold away have a figure on any line.
struct BillColumns {
    bool got = false;
    bool inTrailer = false;
    bool onTheWay = false;
};
[[nodiscard]] BillColumns billColumns(const WorkedOut &worked);

[[nodiscard]] int shortLines(const PricedBill &bill);
/// Parts whose need, free part or cost differs between two bills, and parts that only one has.
[[nodiscard]] int changedLines(const PricedBill &before, const PricedBill &after);

} // namespace flarestock
