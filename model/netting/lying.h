// SPDX-License-Identifier: MIT
//
// Lying: where what is allotted to a bill line lies, and how much of what is short is on its way.
// The trailer is all drawers; here are the bins and shelves; what the build has got already is in
// its car. A part stands in one line of a bill, so no piece is counted in two.
//
//   need 5: 1 got, 2 here, 1 in the trailer, short 1, and that one is on its way

#pragma once

#include "model/journal/ledger.h"
#include "model/netting/priced_bill.h"

namespace flarestock {

/// In the unit of the line's need; none below zero.
struct Lying {
    Decimal got;
    Decimal here; ///< The shop comes before the trailer.
    Decimal inTrailer;
    Decimal onTheWay; ///< Not more than is short.
    friend bool operator==(const Lying &, const Lying &) = default;
};

/// got + here + inTrailer = what is allotted to the line. `whom` is the build whose shelf the line
/// was priced by. Of what is cut, each figure is the length of whole cuts.
[[nodiscard]] Lying lyingOf(const PricedLine &priced, const Ledger &ledger,
                            const Ledger::For &whom);

} // namespace flarestock
