// SPDX-License-Identifier: MIT

#include "app/stockroom/tables/line_asked.h"

#include "app/stockroom/asked.h"
#include "model/fluids/line/dash_bore.h"
#include "model/fluids/measure.h"

#include <numbers>

namespace flarestock {

namespace {

tl::unexpected<Problem> about(const char *option, Problem wrong)
{
    return tl::unexpected(wrongIn(option, std::move(wrong)));
}

/// The value in SI; `otherwise` where nothing was typed.
Result<double> siValue(const char *option, const std::string &typed, Dimension wanted,
                       double otherwise = 0)
{
    if (typed.empty())
        return otherwise;
    const auto measure = Measure::parse(typed, wanted);
    if (!measure)
        return about(option, measure.error());
    return measure->si;
}

/// Of two dimensions that both make sense; gives the SI value and which it was.
Result<Measure> eitherMeasure(const char *option, const std::string &typed, Dimension first,
                              Dimension second)
{
    const auto measure = Measure::parse(typed);
    if (measure && (measure->dimension == first || measure->dimension == second))
        return *measure;
    // The complaint names the first of the two.
    auto wrong = Measure::parse(typed, first);
    return about(option, wrong.error());
}

/// Density and viscosity, of the fluid unless given.
Result<LineFlow> liquidOf(const LineWords &asked)
{
    LineFlow line;
    const bool given = !asked.density.empty() && !asked.viscosity.empty();
    const auto liquid = given ? Liquid() : liquidAsked(asked);
    if (!liquid)
        return tl::unexpected<Problem>(liquid.error());
    const auto density =
        siValue("--density", asked.density, Dimension::Density, liquid->densityKgM3);
    if (!density)
        return tl::unexpected<Problem>(density.error());
    line.densityKgM3 = *density;
    line.viscosityPaS = liquid->viscosityPaS;
    if (!asked.viscosity.empty()) {
        const auto viscosity =
            eitherMeasure("--viscosity", asked.viscosity, Dimension::DynamicViscosity,
                          Dimension::KinematicViscosity);
        if (!viscosity)
            return tl::unexpected<Problem>(viscosity.error());
        line.viscosityPaS = viscosity->dimension == Dimension::KinematicViscosity
                                ? viscosity->si * *density
                                : viscosity->si;
    }
    return line;
}

/// In m³/s, by volume, by mass, or by the velocity in the line's bore.
Result<double> flowOf(const LineWords &asked, const LineFlow &line)
{
    if (!asked.velocity.empty()) {
        const auto velocity = siValue("--velocity", asked.velocity, Dimension::Velocity);
        if (!velocity)
            return tl::unexpected<Problem>(velocity.error());
        return *velocity * std::numbers::pi / 4 * line.boreM * line.boreM;
    }
    const auto flow =
        eitherMeasure("--flow", asked.flow, Dimension::VolumeFlow, Dimension::MassFlow);
    if (!flow)
        return tl::unexpected<Problem>(flow.error());
    return flow->dimension == Dimension::MassFlow ? flow->si / line.densityKgM3 : flow->si;
}

} // namespace

Result<Liquid> liquidAsked(const LineWords &asked)
{
    const auto fluid = parseFluid(asked.fluid);
    if (!fluid)
        return about("--fluid", fluid.error());
    const auto kelvin = siValue("--temperature", asked.temperature, Dimension::Temperature);
    if (!kelvin)
        return tl::unexpected<Problem>(kelvin.error());
    auto liquid = liquidAt(*fluid, in({Dimension::Temperature, *kelvin, {}}, "C"));
    if (!liquid)
        return about("--temperature", liquid.error());
    return liquid;
}

Result<LineFlow> lineAsked(const LineWords &asked)
{
    auto line = liquidOf(asked);
    if (!line)
        return line;
    struct Field {
        const char *option;
        const std::string &typed;
        Dimension dimension;
        double LineFlow::*field;
    };
    const Field fields[] = {
        {"--bore", asked.bore, Dimension::Length, &LineFlow::boreM},
        {"--length", asked.length, Dimension::Length, &LineFlow::lengthM},
        {"--roughness", asked.roughness, Dimension::Length, &LineFlow::roughnessM},
        {"--k", asked.lossCoefficient, Dimension::Count, &LineFlow::minorK},
        {"--rise", asked.rise, Dimension::Length, &LineFlow::riseM},
        {"--forward", asked.forward, Dimension::Length, &LineFlow::forwardM},
        {"--acceleration", asked.acceleration, Dimension::Acceleration, &LineFlow::accelerationMS2},
    };
    for (const auto &[option, typed, dimension, field] : fields) {
        const auto value = siValue(option, typed, dimension);
        if (!value)
            return tl::unexpected<Problem>(value.error());
        (*line).*field = *value;
    }
    if (asked.dash > 0) {
        const auto bore = assumedBore(asked.dash, DashNumbering::AsTube);
        if (!bore)
            return about("--dash", bore.error());
        line->boreM = bore->boreM;
    }
    const auto flow = flowOf(asked, *line);
    if (!flow)
        return tl::unexpected<Problem>(flow.error());
    line->flowM3S = *flow;
    return line;
}

} // namespace flarestock
