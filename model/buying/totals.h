// SPDX-License-Identifier: MIT
//
// Totals: what an order comes to, line by line and on the whole, so that it adds up on paper.
//
// A line is rounded once, half even, to the minor digits of the currency; its discount and freight
// are its shares of the whole by largest remainder. The tax is of goods less discount and freight:
// per item, rounded line by line, or per document, rounded once and shared. Every sum is a sum of
// what is printed.
//
//   4 lines of 1.07 at 5 %: 0.20 of tax per item, 0.21 per document

#pragma once

#include "model/buying/order.h"

namespace flarestock {

/// Of a line, or of all of them; in the order's currency, whole in its minor digits.
struct Amounts {
    Decimal goods;
    Decimal discount; ///< Not below zero; it goes off.
    Decimal freight;
    Decimal tax;

    [[nodiscard]] Decimal total() const { return goods - discount + freight + tax; }
    /// What the pieces cost the shop: without the tax where it gets that back.
    [[nodiscard]] Decimal landed(const TaxRule &rule) const;
    friend bool operator==(const Amounts &, const Amounts &) = default;
};

struct OrderTotals {
    std::vector<Amounts> lines; ///< As the order has them.
    Amounts all;                ///< The sums of the lines.
};

/// The order has at least one line (asserted). Where no line is worth anything, discount and
/// freight are shared equally.
[[nodiscard]] OrderTotals totalsOf(const Order &order);

} // namespace flarestock
