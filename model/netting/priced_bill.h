// SPDX-License-Identifier: MIT
//
// Priced bill: each line of an expansion met by the free stock and by the best offer for the rest,
// exact to the cent. cost = half-even to the currency's minor digits of
// free × carried unit cost + short × the best offer's price for the short quantity; the total is
// the sum of the lines as printed.

#pragma once

#include "model/exact/money.h"
#include "model/parts/free_stock.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct PricedLine {
    const BillLine *line = nullptr;
    Decimal free;    ///< Allotted to this line, never the same piece twice; ≤ need.
    Decimal shortBy; ///< need − free
    std::optional<Rational> unitCost; ///< Exact cost over need; nothing where there is no price.
    std::optional<Money> cost;        ///< To the cent.
    const Offer *offer = nullptr;     ///< The one that `shortBy` was priced by.
    bool otherCurrency = false; ///< Its offers are all in another currency, so it is unpriced.

    /// At least 4 decimals, more (up to 10) where the exact cost ends there: "12.3400", "0.57375".
    [[nodiscard]] std::string unitCostText() const;
};

struct PricedBill {
    std::vector<PricedLine> lines;     ///< As in the expansion.
    Money total;                       ///< Sum of the priced lines.
    std::vector<std::string> unpriced; ///< Part numbers without a price.
    bool complete = false;             ///< Nothing short.
};

/// The expansion and the catalogue must outlive the bill.
[[nodiscard]] PricedBill price(const Expansion &expansion, const Catalogue &catalogue,
                               const Shelf &shelf, const Currency &currency);

} // namespace flarestock
