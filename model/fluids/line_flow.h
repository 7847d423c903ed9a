// SPDX-License-Identifier: MIT
//
// Line flow: what pressure a full, straight line of one round bore takes from a steady liquid.
//
//   LineFlow line;
//   line.flowM3S = 255e-3 / 3600;
//   line.boreM = 8.71e-3;
//   line.lengthM = 5;
//   line.densityKgM3 = 745;
//   line.viscosityPaS = 0.41e-3;
//   lineLoss(line).value().dropPa;
//
// Friction by Darcy-Weisbach with the Darcy friction factor (four times Fanning's): 64/Re below
// Re 2040, the Colebrook-White equation above. Textbooks let the laminar flow end anywhere between
// 2000 and 2300 and turbulence be sure from 4000; between 2040 and 4000 the larger, turbulent
// figure is given and the regime says that it is uncertain.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

inline constexpr double StandardGravityMS2 = 9.80665; ///< Exact by definition.

struct LineFlow {
    double flowM3S = 0;      ///< 0 or more; at 0 only the level counts.
    double boreM = 0;        ///< More than 0.
    double lengthM = 0;      ///< 0 or more.
    double densityKgM3 = 0;  ///< More than 0.
    double viscosityPaS = 0; ///< Dynamic; more than 0.
    double roughnessM = 0;   ///< Equivalent sand roughness; 0 is smooth; at most 5 % of the bore.
    double minorK = 0;       ///< Sum of the loss coefficients, on the velocity in this bore.
    double riseM = 0;        ///< Outlet above inlet; negative where the line falls.
    double forwardM = 0;     ///< Outlet before inlet, towards the car's nose; may be negative.
    double accelerationMS2 = 0; ///< Of the car, forwards; braking is negative.
};

enum class Regime : std::uint8_t { Laminar, Uncertain, Turbulent };

[[nodiscard]] std::string_view text(Regime regime) noexcept; ///< "laminar" …

struct LineLoss {
    double velocityMS = 0;
    double reynolds = 0;
    Regime regime = Regime::Laminar;
    double frictionFactor = 0; ///< Darcy; 0 where nothing flows.
    double frictionPa = 0;     ///< f · L/D · ρv²/2
    double minorPa = 0;        ///< K · ρv²/2
    double levelPa = 0;        ///< ρ · g · rise, with g = 9.80665 m/s²
    double accelerationPa = 0; ///< ρ · a · forward
    double dropPa = 0;         ///< All together; negative where the fall outdoes the losses.
};

/// Problem: a value outside the range named at its field, or not finite.
[[nodiscard]] Result<LineLoss> lineLoss(const LineFlow &line);

/// Darcy friction factor. reynolds is more than 0, relativeRoughness (roughness / bore) 0 or more
/// and at most 0.05 (asserted). Colebrook-White is solved to 1e-12.
[[nodiscard]] double frictionFactor(double reynolds, double relativeRoughness);
/// Below 2040 laminar, from 4000 turbulent, uncertain between.
[[nodiscard]] Regime regimeAt(double reynolds) noexcept;

} // namespace flarestock
