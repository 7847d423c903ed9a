// SPDX-License-Identifier: MIT
//
// Tees: what a tee of three equal bores takes, on the velocity in the leg that carries all of the
// flow. Technical Paper 410 (Flow of Fluids Through Valves, Fittings and Pipe), as re-typed in
// public copies; the printed paper was not seen.
//
//   // A quarter of the flow comes in through the branch, at 90 degrees:
//   teeCoefficient({TeeWay::Converging, TeeLeg::Branch, 0.25, 90}); // -0.042
//
// A negative figure is meant: a fast run drags a slow branch along. For a square branch that takes
// flow away the copies differ, (1 + 0.3 q²)² or 1 + 0.3 q²: the larger is taken.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>

namespace flarestock {

enum class TeeWay : std::uint8_t { Converging, Diverging };
enum class TeeLeg : std::uint8_t { Run, Branch };

struct TeeFlow {
    TeeWay way = TeeWay::Diverging;
    TeeLeg leg = TeeLeg::Run;  ///< Which leg the line follows, beside the one that carries all.
    double branchShare = 0;    ///< Flow through the branch against all of it, 0 to 1.
    double branchDegrees = 90; ///< Between branch and run: 30, 45, 60 or 90.
};

/// Problem: a share or an angle outside the range named at its field.
[[nodiscard]] Result<double> teeCoefficient(const TeeFlow &flow);

} // namespace flarestock
