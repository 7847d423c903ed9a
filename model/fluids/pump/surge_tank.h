// SPDX-License-Identifier: MIT
//
// Surge tank: what a lift pump brings into it against what the pressure pump takes out, and how
// long it lasts when the pick-up in the main tank draws air.
//
//   // 255 L/h taken, 120 burnt, the rest comes back here; 100 L/h lifted: 20 L/h too little.
//   surgeTankBalance({100 * litreH, 255 * litreH, 120 * litreH, 1.5e-3, true})->emptyAfterS; // 270

#pragma once

#include "model/exact/problem.h"

#include <optional>

namespace flarestock {

struct SurgeTank {
    double liftM3S = 0;  ///< Of the lift pump at its pressure; 0 or more.
    double takenM3S = 0; ///< By the pressure pump; at least what the engine burns.
    double burntM3S = 0; ///< By the engine; 0 or more.
    double volumeM3 = 0; ///< Above 0.
    bool returnsHere =
        true; ///< What the engine does not burn comes back here, not to the main tank.
};

struct SurgeTankBalance {
    double leastLiftM3S = 0; ///< What the lift pump must bring to keep it full.
    double surplusM3S = 0;   ///< Lift less that; negative: it runs down. Positive goes back over.
    std::optional<double> emptyAfterS;       ///< From full; nothing where it does not run down.
    std::optional<double> lastsWithoutLiftS; ///< From full; nothing where nothing is taken.
};

/// Volumes in a second in and out (conservation of mass). Problem: a figure outside the range named
/// at its field.
[[nodiscard]] Result<SurgeTankBalance> surgeTankBalance(const SurgeTank &tank);

} // namespace flarestock
