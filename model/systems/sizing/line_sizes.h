// SPDX-License-Identifier: MIT
//
// Line sizes: what some dash sizes would take of the pressure on one line, and the smallest that
// keeps to its bounds. Arithmetic over a handful of bores; which parts there are is not asked here.
//
//   const auto sizes = triedSizes(asked, {{6, 7.94e-3}, {8, 10.32e-3}});
//   smallestThatKeeps(sizes); // -8

#pragma once

#include <limits>
#include <optional>
#include <vector>

namespace flarestock {

struct LineAsked {
    double flowM3S = 0;      ///< 0 or more.
    double densityKgM3 = 0;  ///< Above 0.
    double viscosityPaS = 0; ///< Above 0.
    double lengthM = 0;      ///< 0 or more.
    double minorK = 0;       ///< Of ends and openings, on the velocity in the bore; 0 or more.
    double otherPa = 0;      ///< What filters and valves in it take, whatever the bore.
    double riseM = 0;        ///< Its end above its beginning.
    /// What it may take in all; nothing where that is not known or not to be kept by any size.
    std::optional<double> mostPa;
    double mostMS = std::numeric_limits<double>::infinity(); ///< How fast it may flow.
};

struct DashBore {
    int dash = 0;
    double boreM = 0;     ///< Above 0.
    bool offered = true;  ///< The catalogue has such hose.
    bool assumed = false; ///< The bore is that of a tube of the dash size.
};

struct SizeTried {
    DashBore size;
    double dropPa = 0; ///< All of it, level too.
    double velocityMS = 0;
    bool keeps = false; ///< To both bounds.
};

/// Friction by Darcy-Weisbach and Colebrook-White (fluids/line_flow.h), roughness of drawn tube.
/// One for each bore, in their order. The figures are within the ranges named at them (asserted).
[[nodiscard]] std::vector<SizeTried> triedSizes(const LineAsked &asked,
                                                const std::vector<DashBore> &bores);

/// The first that keeps, of those that the catalogue offers; nullptr where none does.
[[nodiscard]] const SizeTried *smallestThatKeeps(const std::vector<SizeTried> &sizes) noexcept;

} // namespace flarestock
