// SPDX-License-Identifier: MIT
//
// Standard atmosphere: what the air presses on the fuel in a vented tank, by height above the sea.

#pragma once

#include "model/exact/problem.h"

namespace flarestock {

/// Pressure of ISO 2533 (the ICAO standard atmosphere) in its lowest layer:
/// 101325 Pa (1 - 0.0065 h / 288.15 K)^5.25588. The weather moves it by 3 % either way.
/// Problem: below -500 m or above 11,000 m.
[[nodiscard]] Result<double> atmospherePa(double altitudeM);

} // namespace flarestock
