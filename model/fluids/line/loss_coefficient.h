// SPDX-License-Identifier: MIT
//
// Loss coefficients: what an end, an opening or a change of bore takes of ρv²/2. Real fittings
// stray by half either way; a maker's own figure comes first.
//
//   endCoefficient(EndForm::Swept, 90)->k; // 0.3, on the velocity in the end's own bore

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

struct LossCoefficient {
    double k = 0;
    std::string_view status; ///< As in Liquid; between two angles that of the larger.
    std::string_view source; ///< Never empty.
};

enum class EndForm : std::uint8_t {
    Swept,   ///< A bent tube.
    Drilled, ///< Two bores that meet at an angle, as in a forged end.
};

/// A hose end of that angle, 0 to 180 degrees, straight lines between the angles of
/// model/fluids/data/loss_coefficients.csv. Problem: another angle.
[[nodiscard]] Result<LossCoefficient> endCoefficient(EndForm form, double degrees);

enum class Opening : std::uint8_t { SharpEntrance, RoundedEntrance, ReentrantEntrance, Exit };

[[nodiscard]] const LossCoefficient &openingCoefficient(Opening opening);

/// Sudden change from one bore to another, on the velocity in the smaller: widening
/// (1 - d²/D²)² (Borda and Carnot), narrowing 0.5 (1 - d²/D²) (Technical Paper 410). 0 where they
/// are equal. Both are above 0 (asserted).
[[nodiscard]] double boreChangeCoefficient(double fromM, double toM);

} // namespace flarestock
