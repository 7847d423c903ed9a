// SPDX-License-Identifier: MIT
//
// Pressure: what a regulator can hold, and what carburettor, rail and injector want. What each part
// is rated for stands in ratings/.

#include "model/checks/rules/rules.h"

#include <cmath>

namespace flarestock::rules {

namespace {

std::string kpa(double value)
{
    return std::to_string(std::lround(value)) + " kPa";
}

std::string range(std::optional<double> low, std::optional<double> high)
{
    if (low && high)
        return kpa(*low) + " to " + kpa(*high);
    return low ? "from " + kpa(*low) : "up to " + kpa(high.value_or(0));
}

bool within(double value, std::optional<double> low, std::optional<double> high)
{
    constexpr double Slack = 0.005; // Half a percent: the figures are printed in whole psi or bar.
    return (!low || value >= *low * (1 - Slack)) && (!high || value <= *high * (1 + Slack));
}

void regulatorRange(const BuildUnderCheck &build, const PlacedStation &station, Findings &found)
{
    const auto *facts = station.part->as<RegulatorFacts>();
    const auto set = build.wanted(station, station.station->demand.pressure);
    if (facts == nullptr || !set || (!facts->lowKpa && !facts->highKpa))
        return;
    if (within(set->si / 1000, facts->lowKpa, facts->highKpa))
        return;
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::Pressure,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                              ": cannot be set to " + set->typed,
                     .where = station.id,
                     .text = "Its maker gives a range of " + range(facts->lowKpa, facts->highKpa) +
                             "; " + set->typed + " is " + kpa(set->si / 1000) + ".",
                     .source = "the maker's range, as entered in the catalogue",
                     .remedy = "Use a regulator whose range holds the pressure.",
                     .mend = {}});
}

/// The pressure that the nearest regulator, else the build, gives to a user of fuel.
std::optional<Measure> givenTo(const BuildUnderCheck &build, const PlacedStation &user)
{
    const auto isRegulator = [](const PlacedStation &station) {
        return station.station->demand.kind == Kind::Regulator;
    };
    for (const auto *station : build.before(user, isRegulator)) {
        if (isRegulator(*station))
            return build.wanted(*station, station->station->demand.pressure);
    }
    return build.systemPressure();
}

void userWants(const BuildUnderCheck &build, const PlacedStation &station, Findings &found)
{
    const auto *facts = station.part->as<FuelUserFacts>();
    if (facts == nullptr || (!facts->pressureLowKpa && !facts->pressureHighKpa))
        return;
    const auto given = givenTo(build, station);
    if (!given || within(given->si / 1000, facts->pressureLowKpa, facts->pressureHighKpa))
        return;
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::Pressure,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                              ": wants another pressure than " + given->typed,
                     .where = station.id,
                     .text = "Its maker asks for " +
                             range(facts->pressureLowKpa, facts->pressureHighKpa) +
                             "; the line gives " + kpa(given->si / 1000) + ".",
                     .source = "the maker's figure, as entered in the catalogue",
                     .remedy = "Set the pressure into that range, or use another part.",
                     .mend = {}});
}

} // namespace

void pressures(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &station : build.expansion().stations) {
        if (station.part == nullptr)
            continue;
        regulatorRange(build, station, found);
        userWants(build, station, found);
    }
}

} // namespace flarestock::rules
