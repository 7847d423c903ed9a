// SPDX-License-Identifier: MIT
//
// Clean loss: what pressure a clean filter takes, out of the curve or the rated point that its
// maker publishes. Dirt comes on top of it.
//
//   CleanLoss filter;
//   filter.points = {{400 * litreH, 10e3}};
//   cleanLossAt(filter, 200 * litreH, 0.41e-3)->pascal; // 5 kPa, and fromRatedPoint

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace flarestock {

struct CleanLoss {
    struct Point {
        double flowM3S = 0; ///< Above 0.
        double lossPa = 0;  ///< Above 0.
    };
    std::vector<Point> points; ///< By rising flow and loss; a single one is a rated point.
    std::optional<double> viscosityPaS = std::nullopt; ///< Of the liquid that it was measured with.
};

struct CleanLossAt {
    double pascal = 0;
    bool fromRatedPoint = false;  ///< Straight through one point; the housing's part is guessed.
    bool viscosityScaled = false; ///< False also where nobody says what it was measured with.
};

/// Between nothing at rest and the points straight lines; never beyond the last point. By Darcy's
/// law for flow through a porous medium (textbook) the loss goes with the viscosity: it is scaled
/// as a whole, which says too much where the housing takes much of it. flowM3S is 0 or more,
/// viscosityPaS that of the liquid in the line, above 0. Problem: a figure outside its range, no
/// points, points that do not rise, or a flow above the last.
[[nodiscard]] Result<CleanLossAt> cleanLossAt(const CleanLoss &filter, double flowM3S,
                                              double viscosityPaS);

enum class FilterPlace : std::uint8_t { Suction, Pressure };

/// What a clean filter may take before and behind a pump (model/fluids/data/filter_losses.csv).
struct LossBudget {
    double pascal = 0;
    std::string_view status; ///< "judgement"
    std::string_view source; ///< Never empty.
};
[[nodiscard]] const LossBudget &cleanLossBudget(FilterPlace place);

} // namespace flarestock
