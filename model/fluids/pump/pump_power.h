// SPDX-License-Identifier: MIT
//
// Pump power: what a pump puts into the liquid and what it draws for it. A part's own measured
// current comes first.

#pragma once

#include "model/exact/problem.h"

namespace flarestock {

struct PumpDuty {
    double pressurePa = 0; ///< Across the pump; 0 or more.
    double flowM3S = 0;    ///< 0 or more.
};

/// Δp Q, in W (textbook). Problem: a figure below nothing.
[[nodiscard]] Result<double> hydraulicPowerW(const PumpDuty &duty);

/// Δp Q / efficiency: at the shaft, or at the wires where the efficiency is that of pump and motor
/// together. Electric fuel pumps: 0.2 to 0.4 (common practice, no source). Problem: as above, or an
/// efficiency not above 0 or above 1.
[[nodiscard]] Result<double> drivingPowerW(const PumpDuty &duty, double efficiency);

/// drivingPowerW / volts. Problem: as above, or no voltage.
[[nodiscard]] Result<double> pumpCurrentA(const PumpDuty &duty, double efficiency, double volts);

} // namespace flarestock
