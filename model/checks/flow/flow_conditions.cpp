// SPDX-License-Identifier: MIT

#include "model/checks/flow/flow_conditions.h"

#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/liquid.h"

namespace flarestock {

namespace {

constexpr double ZeroCelsiusK = 273.15;

std::optional<double> answered(const Expansion &expansion, std::string_view question,
                               Dimension dimension)
{
    const auto found = expansion.answers.find(question);
    if (found == expansion.answers.end())
        return {};
    const auto measure = Measure::parse(found->second, dimension);
    return measure ? std::optional(measure->si) : std::nullopt;
}

} // namespace

FlowConditions conditionsOf(const Expansion &expansion)
{
    FlowConditions conditions;
    const auto set = [&](double &figure, std::string_view question, Dimension dimension) {
        if (const auto said = answered(expansion, question, dimension))
            figure = *said;
    };
    if (const auto kelvin = answered(expansion, "fuel-temperature", Dimension::Temperature))
        conditions.fuelC = *kelvin - ZeroCelsiusK;
    set(conditions.altitudeM, "altitude", Dimension::Length);
    set(conditions.reidPa, "vapour-pressure", Dimension::Pressure);
    set(conditions.volts, "voltage", Dimension::Voltage);
    set(conditions.accelerationMS2, "acceleration", Dimension::Acceleration);
    set(conditions.boostPa, "boost", Dimension::Pressure);
    conditions.margin = marginOf(Feed::Pump).factor;
    return conditions;
}

std::optional<double> engineFlowM3S(const Expansion &expansion, const FlowConditions &conditions)
{
    const auto powerW = answered(expansion, "power", Dimension::Power);
    if (!powerW || !expansion.fluid || !isFuel(*expansion.fluid))
        return {};
    const auto band = consumptionBand(
        *expansion.fluid, conditions.boostPa > 0 ? Induction::Boosted : Induction::Natural);
    const auto liquid = liquidAt(*expansion.fluid, conditions.fuelC);
    if (!band || !liquid)
        return {};
    const auto demand =
        fuelDemand({*powerW, band->usualKgJ, liquid->densityKgM3, conditions.margin});
    return demand ? std::optional(demand->volumeM3S) : std::nullopt;
}

} // namespace flarestock
