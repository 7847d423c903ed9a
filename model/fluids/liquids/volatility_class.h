// SPDX-License-Identifier: MIT
//
// Volatility classes: within what Reid vapour pressure (at 100 °F, 37.8 °C) a fuel is sold, by
// season and place. A check takes the high end: it is the fuel that boils first.
//
//   volatilityClass(Fluid::Gasoline, "D")->highPa; // 13.5 psi

#pragma once

#include "model/fluids/fluid.h"

#include <optional>
#include <span>

namespace flarestock {

struct VolatilityClass {
    Fluid fuel = Fluid::Gasoline;
    std::string_view name;       ///< "AA" … "E" for gasoline, "1" … "4" for E85.
    std::optional<double> lowPa; ///< Reid; absent where the class has no least pressure.
    double highPa = 0;           ///< Reid.
    std::string_view status;     ///< As in Liquid.
    std::string_view source;     ///< Never empty.
};

/// All classes, of gasoline and E85 (model/fluids/data/volatility.csv).
[[nodiscard]] std::span<const VolatilityClass> volatilityClasses();

/// The class of that name, case forgiven; nothing where the fuel has none of that name.
[[nodiscard]] std::optional<VolatilityClass> volatilityClass(Fluid fuel, std::string_view name);

} // namespace flarestock
