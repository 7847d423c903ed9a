// SPDX-License-Identifier: MIT
//
// Fuel pressure: what carburettors and injectors usually want, and what a regulator makes of boost.
//
//   railPressure({300e3, true}, 150e3)->railPa; // 450 kPa: the pump feels the boost
//   railPressure({300e3, true}, 150e3)->acrossPa; // 300 kPa: the injector does not

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class FuelUser : std::uint8_t { Carburettor, ThrottleBodyInjection, PortInjection };

struct PressureBand {
    double lowPa = 0; ///< Gauge.
    double highPa = 0;
    std::string_view status; ///< "common practice"
    std::string_view source; ///< Never empty.
};

/// model/fluids/data/fuel_pressures.csv. A part's own figure comes first.
[[nodiscard]] const PressureBand &usualPressure(FuelUser user);

struct RailRegulator {
    double basePa = 0;               ///< Gauge, at a manifold open to the air; above 0.
    bool manifoldReferenced = false; ///< Its spring side is piped to the manifold.
};

struct RailPressure {
    double railPa = 0;   ///< Over the atmosphere: what the pump has to overcome.
    double acrossPa = 0; ///< Rail over manifold: what drives an injector.
};

/// manifoldPa is the manifold over the atmosphere, negative for vacuum, down to -101325. A piped
/// regulator keeps the rail over the manifold constant (balance of its diaphragm, textbook).
/// Problem: a figure outside its range, or no pressure left across the injector or on the rail.
[[nodiscard]] Result<RailPressure> railPressure(const RailRegulator &regulator, double manifoldPa);

/// An injector's flow at another pressure across it: by the square root (orifice, textbook), within
/// the maker's range. ratedM3S at ratedPa. Problem: a figure that is not above 0.
[[nodiscard]] Result<double> injectorFlowM3S(double ratedM3S, double ratedPa, double acrossPa);

} // namespace flarestock
