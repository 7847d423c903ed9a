// SPDX-License-Identifier: MIT
//
// Kit: how many of each of several parts to carry, so that nothing of all of them lacks with one
// certainty, at least money. The parts are used independently of each other.
//
// Marginal allocation (always one more of what covers most for its money) finds kits that nothing
// cheaper covers better, but only some of them: which costs least for a given certainty is searched
// for, with what the best fractions of pieces would cost as a bound of what is left to choose.

#pragma once

#include "model/exact/decimal.h"
#include "model/spares/carry/spare_demand.h"

#include <string>
#include <vector>

namespace flarestock {

struct KitPart {
    std::string part;
    SpareDemand demand;
    std::int64_t priceEach = 0; ///< 10^-6 of the currency; 1 to PriceEachMost.
    static constexpr std::int64_t PriceEachMost = 1'000'000'000'000;
};

struct Kit {
    std::vector<std::int64_t> carried; ///< Of each part, in their order.
    std::int64_t cost = 0;             ///< 10^-6 of the currency.
    double covered = 1;                ///< The product of what each covers.
};

struct KitStep {
    std::size_t part = 0; ///< One more of this.
    Kit then;
};

struct KitPlan {
    Kit best;
    bool isProven = true;     ///< No kit of that certainty costs less.
    std::int64_t noLess = 0;  ///< No kit of that certainty costs less than this.
    std::vector<KitStep> way; ///< Marginal allocation up to that certainty.
};

/// 0 < certainty < 1 (asserted). Of kits that cost the same the one that covers most.
[[nodiscard]] KitPlan planKit(const std::vector<KitPart> &parts, double certainty);

} // namespace flarestock
