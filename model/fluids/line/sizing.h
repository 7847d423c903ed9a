// SPDX-License-Identifier: MIT
//
// Sizing: what velocity a line should keep to, what bore that asks for, what length of line a loss
// is worth. Velocity alone sizes no line: its loss and the inlet's margin count too.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class LineRole : std::uint8_t { Suction, Pressure, Return };

/// Whose practice counts: no limit for fuel lines is published, of oil's hydraulics has some.
enum class LineLiquid : std::uint8_t { Fuel, Oil };

struct VelocityLimit {
    double cautionMS = 0;
    double stopMS = 0;
    std::string_view status; ///< "judgement" for fuel, "published" for oil.
    std::string_view source; ///< Never empty.
};

/// model/fluids/data/velocity_limits.csv.
[[nodiscard]] const VelocityLimit &velocityLimit(LineRole role,
                                                 LineLiquid liquid = LineLiquid::Fuel);

/// Velocity up to which a liquid that keeps charge is loaded through a bore: v² d at most
/// 0.64 m³/s² (AS 1020-1984, as quoted; written for tanks, so advice). boreM above 0 (asserted).
[[nodiscard]] double staticChargeVelocityMS(double boreM);

/// The bore in which the flow has that velocity: √(4 Q / π v). Problem: a figure not above 0.
[[nodiscard]] Result<double> boreForVelocityM(double flowM3S, double velocityMS);

/// Length of line of that bore that loses as much as k: K D / f (textbook). Problem: boreM or
/// frictionFactor (Darcy) not above 0, or k below 0.
[[nodiscard]] Result<double> equivalentLengthM(double k, double boreM, double frictionFactor);

} // namespace flarestock
