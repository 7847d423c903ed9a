// SPDX-License-Identifier: MIT
//
// Flow: a filter, regulator or pump that is rated for less than is wanted of it. A pump is judged
// here by the largest flow that its maker publishes; where its own lines show that it gives too
// little (flow/pump_flows.cpp), that says it.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

#include <algorithm>
#include <cmath>

namespace flarestock::rules {

namespace {

constexpr double LitresPerHour = 1.0 / 3.6e6; // m³/s, exact.

std::optional<double> publishedFlow(const Part &part)
{
    if (const auto *filter = part.as<FilterFacts>())
        return filter->flowLh;
    if (const auto *regulator = part.as<RegulatorFacts>())
        return regulator->flowLh;
    const auto *pump = part.as<PumpFacts>();
    if (pump == nullptr || pump->curve.empty())
        return {};
    return std::max_element(pump->curve.begin(), pump->curve.end(),
                            [](const auto &a, const auto &b) { return a.flowLh < b.flowLh; })
        ->flowLh;
}

} // namespace

void flows(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &station : build.expansion().stations) {
        if (station.part == nullptr)
            continue;
        const auto wanted = build.wanted(station, station.station->demand.flow);
        const auto flow = publishedFlow(*station.part);
        if (!wanted || wanted->dimension != Dimension::VolumeFlow || !flow ||
            *flow >= wanted->si / LitresPerHour * 0.995 || isFoundShort(build, station.id))
            continue;
        found.push_back({.severity = Severity::Caution,
                         .matter = Matter::Flow,
                         .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                                  ": passes less than " + wanted->typed,
                         .where = station.id,
                         .text = "Its maker publishes " + std::to_string(std::lround(*flow)) +
                                 " L/h at best; the system wants " +
                                 std::to_string(std::lround(wanted->si / LitresPerHour)) +
                                 " L/h there.",
                         .source = "the maker's figure, as entered in the catalogue",
                         .remedy = "Use a larger one.",
                         .mend = {}});
    }
}

} // namespace flarestock::rules
