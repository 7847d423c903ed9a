// SPDX-License-Identifier: MIT
//
// Crossing: where a curve that falls or rises passes through nothing between two ends. The search
// stays within the ends all the time (Alefeld, Potra and Shi, algorithm 748 of the ACM, from
// Boost), so it needs no slope and bears a jump, as friction has where laminar flow ends.

#pragma once

#include "model/exact/problem.h"

#include <functional>
#include <optional>

namespace flarestock {

using Curve = std::function<Result<double>(double)>;

struct SearchEnds {
    double low = 0;
    double high = 0; ///< Above low (asserted).
};

struct Crossing {
    std::optional<double> at; ///< Nothing where the curve is on one side at both ends.
    double atLow = 0;         ///< The curve at the ends, for whoever wants to say on which side.
    double atHigh = 0;
};

/// To about 1e-12 of the figure; in a jump either side of it. Problem: the curve's own, or a curve
/// that is not a number somewhere.
[[nodiscard]] Result<Crossing> crossing(const Curve &curve, SearchEnds ends);

} // namespace flarestock
