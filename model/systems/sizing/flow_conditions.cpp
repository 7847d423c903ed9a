// SPDX-License-Identifier: MIT

#include "model/systems/sizing/flow_conditions.h"

#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/liquid.h"
#include "model/fluids/measure.h"

namespace flarestock {

namespace {

constexpr double ZeroCelsiusK = 273.15;

std::optional<double> answered(const Answers &answers, std::string_view question,
                               Dimension dimension)
{
    const auto found = answers.find(question);
    if (found == answers.end())
        return {};
    const auto measure = Measure::parse(found->second, dimension);
    return measure ? std::optional(measure->si) : std::nullopt;
}

} // namespace

FlowConditions conditionsOf(const Answers &answers)
{
    FlowConditions conditions;
    const auto set = [&](double &figure, std::string_view question, Dimension dimension) {
        if (const auto said = answered(answers, question, dimension))
            figure = *said;
    };
    if (const auto kelvin = answered(answers, "fuel-temperature", Dimension::Temperature))
        conditions.fuelC = *kelvin - ZeroCelsiusK;
    set(conditions.altitudeM, "altitude", Dimension::Length);
    set(conditions.reidPa, "vapour-pressure", Dimension::Pressure);
    set(conditions.volts, "voltage", Dimension::Voltage);
    set(conditions.accelerationMS2, "acceleration", Dimension::Acceleration);
    set(conditions.boostPa, "boost", Dimension::Pressure);
    conditions.margin = marginOf(Feed::Pump).factor;
    return conditions;
}

std::optional<double> engineFlowM3S(const Answers &answers, const std::optional<Fluid> &fluid,
                                    const FlowConditions &conditions)
{
    const auto powerW = answered(answers, "power", Dimension::Power);
    if (!powerW || !fluid || !isFuel(*fluid))
        return {};
    const auto band =
        consumptionBand(*fluid, conditions.boostPa > 0 ? Induction::Boosted : Induction::Natural);
    const auto liquid = liquidAt(*fluid, conditions.fuelC);
    if (!band || !liquid)
        return {};
    const auto demand =
        fuelDemand({*powerW, band->usualKgJ, liquid->densityKgM3, conditions.margin});
    return demand ? std::optional(demand->volumeM3S) : std::nullopt;
}

} // namespace flarestock
