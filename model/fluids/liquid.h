// SPDX-License-Identifier: MIT
//
// Liquids: density and viscosity of each fluid over temperature, for line flow where the shop has
// no figure of its own. Points out of model/fluids/data/liquids.csv; every row says where it comes
// from and how much it is worth, and whoever shows a figure computed from it shows that too.
//
//   const auto hot = liquidAt(Fluid::Gasoline, 45);
//   hot->densityKgM3; hot->status; // "estimate": the weaker of the two points beside it

#pragma once

#include "model/fluids/fluid.h"

namespace flarestock {

struct Liquid {
    double densityKgM3 = 0;
    double viscosityPaS = 0; ///< Dynamic.
    std::string_view status; ///< "published", "published band", "estimate", "from memory"
    std::string_view source; ///< Never empty.

    [[nodiscard]] double kinematicM2S() const noexcept { return viscosityPaS / densityKgM3; }
};

[[nodiscard]] const Liquid &liquidAt20C(Fluid fluid);

struct TemperatureRange {
    double lowC = 0;
    double highC = 0;
};

/// From the coldest to the hottest point of the table.
[[nodiscard]] TemperatureRange liquidRange(Fluid fluid);

/// Between two points the density is linear over temperature. The viscosity of oils, diesel and
/// brake fluids follows Walther's equation in the form of ASTM D341, log10 log10 (ν + 0.7) linear
/// over log10 T with ν in mm²/s; that of thin liquids Andrade's, ln µ linear over 1/T (textbook).
/// Status and source are those of the weaker point. Problem: outside liquidRange.
[[nodiscard]] Result<Liquid> liquidAt(Fluid fluid, double temperatureC);

} // namespace flarestock
