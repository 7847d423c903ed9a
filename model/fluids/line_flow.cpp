// SPDX-License-Identifier: MIT

#include "model/fluids/line_flow.h"

#include "model/fluids/bounds.h"

#include <cassert>
#include <cmath>
#include <numbers>
#include <optional>

namespace flarestock {

namespace {

constexpr double LaminarEnds = 2040;
constexpr double TurbulentBegins = 4000;
constexpr double RelativeRoughnessMax = 0.05; ///< As far as the Moody chart goes.

/// 1/√f = -2 log10(ε/3.7D + 2.51/(Re √f)), solved for x = 1/√f by Newton's method. The function is
/// convex and rising, so that the steps close in from any start; five are usual.
double colebrookWhite(double reynolds, double relativeRoughness)
{
    const double rough = relativeRoughness / 3.7;
    const double smooth = 2.51 / reynolds;
    double x = 7; // f = 0.02, a usual line
    for (int step = 0; step < 60; ++step) {
        const double inside = rough + smooth * x;
        const double value = x + 2 * std::log10(inside);
        const double slope = 1 + 2 * smooth / (std::numbers::ln10 * inside);
        const double change = value / slope;
        x -= change;
        if (std::abs(change) <= 1e-13 * x)
            break;
    }
    return 1 / (x * x);
}

/// The first field that cannot be.
std::optional<Problem> impossible(const LineFlow &line)
{
    if (auto wrong = firstImpossible({
            {"flow", line.flowM3S, Allowed::NothingOrMore},
            {"bore", line.boreM},
            {"length", line.lengthM, Allowed::NothingOrMore},
            {"density", line.densityKgM3},
            {"viscosity", line.viscosityPaS},
            {"roughness", line.roughnessM, Allowed::NothingOrMore},
            {"loss coefficient", line.minorK, Allowed::NothingOrMore},
            {"rise", line.riseM, Allowed::AnyNumber},
            {"way forward", line.forwardM, Allowed::AnyNumber},
            {"acceleration", line.accelerationMS2, Allowed::AnyNumber},
        }))
        return wrong;
    if (line.roughnessM > RelativeRoughnessMax * line.boreM)
        return Problem{"roughness", "is more than 5 % of the bore, where the friction formula ends",
                       "Measure the free bore, or give a smaller roughness."};
    return std::nullopt;
}

} // namespace

std::string_view text(Regime regime) noexcept
{
    switch (regime) {
    case Regime::Laminar:
        return "laminar";
    case Regime::Uncertain:
        return "uncertain";
    case Regime::Turbulent:
        return "turbulent";
    }
    assert(false);
    return {};
}

Regime regimeAt(double reynolds) noexcept
{
    if (reynolds < LaminarEnds)
        return Regime::Laminar;
    return reynolds < TurbulentBegins ? Regime::Uncertain : Regime::Turbulent;
}

double frictionFactor(double reynolds, double relativeRoughness)
{
    assert(reynolds > 0);
    assert(relativeRoughness >= 0 && relativeRoughness <= RelativeRoughnessMax);
    if (reynolds < LaminarEnds)
        return 64 / reynolds;
    return colebrookWhite(reynolds, relativeRoughness);
}

Result<LineLoss> lineLoss(const LineFlow &line)
{
    if (auto wrong = impossible(line))
        return tl::unexpected<Problem>(*std::move(wrong));
    LineLoss loss;
    loss.velocityMS = line.flowM3S / (std::numbers::pi / 4 * line.boreM * line.boreM);
    loss.reynolds = line.densityKgM3 * loss.velocityMS * line.boreM / line.viscosityPaS;
    loss.regime = regimeAt(loss.reynolds);
    if (loss.reynolds > 0)
        loss.frictionFactor = frictionFactor(loss.reynolds, line.roughnessM / line.boreM);
    const double velocityPressure = line.densityKgM3 * loss.velocityMS * loss.velocityMS / 2;
    loss.frictionPa = loss.frictionFactor * line.lengthM / line.boreM * velocityPressure;
    loss.minorPa = line.minorK * velocityPressure;
    loss.levelPa = line.densityKgM3 * StandardGravityMS2 * line.riseM;
    loss.accelerationPa = line.densityKgM3 * line.accelerationMS2 * line.forwardM;
    loss.dropPa = loss.frictionPa + loss.minorPa + loss.levelPa + loss.accelerationPa;
    if (!std::isfinite(loss.dropPa) || !std::isfinite(loss.reynolds))
        return problem("line", "asks for a pressure beyond all numbers",
                       "Look at the units of flow and bore.");
    return loss;
}

} // namespace flarestock
