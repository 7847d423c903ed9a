// SPDX-License-Identifier: MIT
//
// Liquids: density and viscosity of each fluid at 20 °C, for line flow where the shop has no figure
// of its own. Single points out of model/fluids/data/liquids.csv; every row says where it comes
// from and how much it is worth, and whoever shows a figure computed from it shows that too.

#pragma once

#include "model/fluids/fluid.h"

namespace flarestock {

struct Liquid {
    double densityKgM3 = 0;
    double viscosityPaS = 0; ///< Dynamic.
    std::string_view status; ///< "published", "published band", "estimate", "from memory"
    std::string_view source; ///< Never empty.
};

[[nodiscard]] const Liquid &liquidAt20C(Fluid fluid);

} // namespace flarestock
