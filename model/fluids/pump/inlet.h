// SPDX-License-Identifier: MIT
//
// Inlet: how far the fuel at a pump's inlet is from boiling. Below nothing it boils whatever the
// pump; well above it the pump's own need decides.
//
//   PumpInlet inlet;
//   inlet.vapourPa = vapourPressure(Fluid::Gasoline, 40, 9 * psi)->pascal;
//   inlet.densityKgM3 = 728;
//   inlet.headM = 0.20;
//   inlet.lossPa = 2520;
//   inletMargin(inlet)->marginPa; // 29.6 kPa

#pragma once

#include "model/exact/problem.h"

namespace flarestock {

struct PumpInlet {
    double tankPa = 0;      ///< In the tank over the air around; negative where its vent is tight.
    double altitudeM = 0;   ///< Above the sea, -500 to 11,000.
    double vapourPa = 0;    ///< Of the fuel at its temperature, absolute; 0 or more.
    double densityKgM3 = 0; ///< Above 0.
    double headM = 0;       ///< Surface above the inlet, at the lowest fill; negative below it.
    double lossPa = 0;      ///< From tank to inlet at the pump's flow, filter and acceleration
                            ///< with it. Where it has the level in it, headM is 0.
};

struct InletMargin {
    double atmospherePa = 0;
    double inletPa = 0;  ///< Absolute.
    double marginPa = 0; ///< Over the vapour pressure; below nothing the fuel boils.
    double npshM = 0;    ///< The same as a height of fuel: net positive suction head available.
};

/// (p_tank + p_atmosphere - p_vapour) / ρ g + head - loss / ρ g (textbook, and Technical Paper
/// 410). Problem: a figure outside the range named at its field.
[[nodiscard]] Result<InletMargin> inletMargin(const PumpInlet &inlet);

} // namespace flarestock
