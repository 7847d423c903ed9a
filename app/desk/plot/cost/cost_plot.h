// SPDX-License-Identifier: MIT
//
// Cost plot: bars of money from left to right. What is here already is full, what has to be bought
// is hatched and said beside it; each bar has its sum, to the cent.

#pragma once

#include "app/desk/plot/cost/cost_bars.h"
#include "app/desk/plot/plot_layout.h"

namespace flarestock {

struct CostShown {
    QString title;
    QString says;
    std::vector<CostBar> bars;
    QString currency; ///< "USD"
};

/// "2,318.13 USD: 1,950.02 here, 368.11 to buy. Most of it: pressure, 1,023.10."
[[nodiscard]] QString costSays(const std::vector<CostBar> &bars, const QString &currency);

[[nodiscard]] PlotLayout costPlot(const CostShown &shown, const PlotSpace &space);

} // namespace flarestock
