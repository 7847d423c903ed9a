// SPDX-License-Identifier: MIT
//
// Build cost: what a build was to cost by its bill, and what it has taken out of stock: line by
// line, by the station that a part serves first, and by kind.

#pragma once

#include "app/workshop/worked_build.h"

namespace flarestock {

struct CostLine {
    const Part *part = nullptr;
    std::string station;            ///< The first that it serves; empty of what is not on the bill.
    Decimal need;                   ///< Of the bill, in the part's unit.
    std::optional<Decimal> planned; ///< To the cent; nothing where there is no price.
    std::int64_t issued = 0;        ///< Smallest units, less what came back.
    Decimal actual;                 ///< What that cost, to the cent.
};

struct CostSum {
    std::string name;
    Decimal planned;
    Decimal actual;
    [[nodiscard]] Decimal difference() const { return actual - planned; }
};

struct BuildCost {
    std::vector<CostLine> lines;       ///< As the bill has them, then what was taken besides.
    std::vector<CostSum> byStation;    ///< In flow order; what is not on the bill last.
    std::vector<CostSum> byKind;       ///< In order of the lines.
    CostSum total;                     ///< The sums of the lines; named as the build's system.
    std::vector<std::string> unpriced; ///< Part numbers.
};

/// Sums are sums of lines to the cent, so that each column adds up. Problem: the build does not
/// work out; the journal cannot be read.
[[nodiscard]] Result<BuildCost> costOf(const BuildPlan &plan, const ShopFile &file,
                                       const Workshop &workshop);

} // namespace flarestock
