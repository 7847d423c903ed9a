// SPDX-License-Identifier: MIT
//
// Cost bars: what the money of a build goes into, out of the lines of its bill. Each place that a
// line serves bears as much of its cost as it takes of it, in whole minor units (largest
// remainder). So the bars add up to the bill's total to the last digit, whichever way they are
// grouped. What is priced in another currency, or not at all, is in neither.
//
//   HE-6, 4 for 54.34: 3 of them at the rail 40.76, 1 at the tank's return 13.58

#pragma once

#include "app/desk/build/bill_rows.h"

namespace flarestock {

struct CostBar {
    QString name;
    Decimal here;  ///< What is on a shelf, in the trailer or in the car already, as it is carried.
    Decimal toBuy; ///< What has to be bought, by the offer that the bill took.
    int lines = 0; ///< Of which something is in it.
    int unpriced = 0; ///< Of those that begin here; they are not in it.
    QString opens;    ///< "kind|HE-10": how the bill is to be grouped, and the first part in it.

    [[nodiscard]] Decimal all() const { return here + toBuy; }
};

/// What one line comes to: both together are its cost on the bill; nothing where it has none.
struct CostOfLine {
    Decimal here;
    Decimal toBuy;
};
[[nodiscard]] CostOfLine costOf(const PricedLine &line);

/// Suction, pressure and return, as the line map has them, and what is of no station.
[[nodiscard]] std::vector<CostBar> costBySide(const WorkedOut &worked);
/// By station or by kind, the dearest first.
[[nodiscard]] std::vector<CostBar> costBy(const WorkedOut &worked, Grouping grouping);

} // namespace flarestock
