// SPDX-License-Identifier: MIT
//
// Pump inlets: how far the fuel is from boiling where a pump draws it, on the day, height and
// temperature of the build (flow/flow_conditions.h).

#include "model/checks/rules/filters/swapped_filters.h"
#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

std::string source(const SystemFlow &flow)
{
    return "vapour pressure: " + std::string(flow.vapour->source) + "; " +
           std::string(inletBounds().source) + "; " + std::string(inletBounds().aircraftSource);
}

std::string nearness(const InletMargin &margin)
{
    return margin.marginPa < 0
               ? "the fuel boils at its inlet"
               : "the fuel at its inlet is " + kilopascals(margin.marginPa) + " from boiling";
}

/// ", 23.0 kPa of it pre-filter PF-1": where a filter takes more than half.
std::string filterText(const BuildUnderCheck &build, const PumpAtWork &pump)
{
    const auto filters = filtersIn(build, pump.suction);
    if (filters.empty() || filters.front().dropPa < pump.suction.dropPa / 2)
        return {};
    return ", " + kilopascals(filters.front().dropPa) + " of it " +
           nameOf(build, filters.front().filter->id);
}

std::string why(const BuildUnderCheck &build, const PumpAtWork &pump)
{
    const auto &flow = build.flow();
    return "Of the air's " + kilopascals(pump.inlet->atmospherePa) + " the way " +
           wayOf(build, pump.suction) + " takes " + kilopascals(pump.suction.dropPa) + " at " +
           litresPerHour(pump.suction.flowM3S) + filterText(build, pump) + "; at " +
           withDecimals(flow.conditions.fuelC, 0) + " °C the fuel boils under " +
           (flow.vapour->atMost ? "at most " : "") + kilopascals(flow.vapour->pascal) +
           ", which leaves " + kilopascals(pump.inlet->marginPa) + "; aircraft pumps are held to " +
           kilopascals(inletBounds().aircraftPa) + " (5 psi).";
}

Finding nearBoiling(const BuildUnderCheck &build, const PumpAtWork &pump)
{
    const bool fuel = isFuelTooWarm(build.flow(), pump);
    return {.severity =
                pump.inlet->marginPa < inletBounds().stopPa ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, pump.station) + ": " + nearness(*pump.inlet),
            .where = pump.station,
            .text = why(build, pump),
            .source = source(build.flow()),
            .remedy = fuel ? "Keep the fuel cooler or use one of less vapour pressure, and put the "
                             "pump into the tank or below it."
                           : "Use a wider or shorter supply line or a larger filter before the "
                             "pump, or mount the pump lower.",
            .mend = {}};
}

} // namespace

void pumpInlets(const BuildUnderCheck &build, Findings &found)
{
    bool saidOfFuel = false;
    for (const auto &delivery : build.flow().deliveries) {
        const auto *pump = nearestToBoiling(delivery);
        if (pump == nullptr || pump->inlet->marginPa >= inletBounds().cautionPa)
            continue;
        const bool fuel = isFuelTooWarm(build.flow(), *pump);
        const bool starved = isStarvedByFilter(build, *build.expansion().station(pump->station));
        if (!fuel && starved)
            continue;              // Said by pumpFilters(), with the same remedy.
        if (!(fuel && saidOfFuel)) // The fuel is one cause, whatever pumps draw it.
            found.push_back(nearBoiling(build, *pump));
        saidOfFuel = saidOfFuel || fuel;
    }
}

} // namespace flarestock::rules
