// SPDX-License-Identifier: MIT

#include "model/checks/check.h"

#include "model/checks/rules/rules.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace flarestock {

namespace {

/// The place of every station, run and joint along the flow; what is not found comes first.
std::map<std::string, std::size_t, std::less<>> flowOrder(const Expansion &expansion)
{
    std::map<std::string, std::size_t, std::less<>> order;
    std::size_t at = 1;
    for (const auto &station : expansion.stations) {
        order.emplace(station.id, at++);
        for (const auto &joint : expansion.joints) {
            if (joint.station == station.id)
                order.emplace(joint.id, at++);
        }
        for (const auto &run : expansion.runs) {
            if (run.from == station.id)
                order.emplace(run.id, at++);
        }
    }
    return order;
}

/// One cause, one finding: of two that are about the same thing at the same place, the graver.
void dropDoubles(std::vector<Finding> &found)
{
    std::vector<Finding> kept;
    for (auto &finding : found) {
        const auto same = std::find_if(kept.begin(), kept.end(), [&](const Finding &other) {
            return other.where == finding.where && other.about == finding.about;
        });
        if (same == kept.end())
            kept.push_back(std::move(finding));
    }
    found = std::move(kept);
}

/// In the order in which they look; what they say is sorted afterwards.
constexpr std::array EveryRule = {rules::fluidAndMaterial,
                                  rules::metals,
                                  rules::aluminiumInBrakes,
                                  rules::bonding,
                                  rules::emptyPlaces,
                                  rules::jointVerdicts,
                                  rules::assembly,
                                  rules::steelOnAluminium,
                                  rules::bends,
                                  rules::torques,
                                  rules::pumpWiring,
                                  rules::pressures,
                                  rules::workingPressures,
                                  rules::workingTemperatures,
                                  rules::direction,
                                  rules::pumpFilters,
                                  rules::filterGrades,
                                  rules::filterLosses,
                                  rules::oilFilters,
                                  rules::elements,
                                  rules::unprotected,
                                  rules::flows,
                                  rules::pumpFlows,
                                  rules::pumpInlets,
                                  rules::surgeTanks,
                                  rules::gravityFeeds,
                                  rules::returnLines,
                                  rules::lineLosses,
                                  rules::velocities,
                                  rules::flowDoubts,
                                  rules::boxContents,
                                  rules::outdonePicks,
                                  rules::shortLines,
                                  rules::lowLevels};

} // namespace

std::vector<Finding> check(const Expansion &expansion, const Catalogue &catalogue,
                           const Shelf &shelf)
{
    const BuildUnderCheck build(expansion, catalogue, shelf);
    std::vector<Finding> found;
    for (const auto rule : EveryRule)
        rule(build, found);

    const auto order = flowOrder(expansion);
    const auto place = [&order](const Finding &finding) {
        const auto at = order.find(finding.where);
        return at == order.end() ? std::size_t{0} : at->second;
    };
    std::stable_sort(found.begin(), found.end(), [&](const Finding &a, const Finding &b) {
        return std::tuple(a.severity, a.matter, place(a)) <
               std::tuple(b.severity, b.matter, place(b));
    });
    dropDoubles(found);
    return found;
}

std::vector<Protection> protections(const Expansion &expansion)
{
    const Catalogue none;
    const Shelf empty;
    const BuildUnderCheck build(expansion, none, empty);
    const auto stops = [](const PlacedStation &station) { return dirtStop(station).has_value(); };

    std::vector<Protection> said;
    std::vector<const PlacedStation *> reached;
    for (const auto &station : expansion.stations) {
        if (!stops(station))
            continue;
        Protection protection{station.id, {}};
        for (const auto *next : build.after(station, stops)) {
            reached.push_back(next);
            protection.protects.push_back(next->id);
        }
        said.push_back(std::move(protection));
    }
    Protection open;
    for (const auto &station : expansion.stations) {
        const bool wants = station.part != nullptr && wantsCleanFluid(station.part->kind);
        if (wants && std::find(reached.begin(), reached.end(), &station) == reached.end() &&
            !stops(station))
            open.protects.push_back(station.id);
    }
    if (!open.protects.empty())
        said.push_back(std::move(open));
    return said;
}

} // namespace flarestock
