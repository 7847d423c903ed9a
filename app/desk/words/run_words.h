// SPDX-License-Identifier: MIT
//
// Run words: a run in few letters, as it stands beside its stroke on the map and under the pressure
// along the line.

#pragma once

#include "app/desk/words/units.h"
#include "model/systems/expansion.h"

namespace flarestock {

/// "-8" of hose, "3/16" of tubing, as the line that makes the run has it; else what is asked for.
/// Empty where nobody says.
[[nodiscard]] QString saidRunSize(const PlacedRun &run);

/// A length in few letters: "5 ft 6 in", "1.68 m", "356 mm". Metric ones are rounded; the bill has
/// them to the tenth of a millimetre.
[[nodiscard]] QString saidRunLength(const Quantity &length, Units units);

} // namespace flarestock
