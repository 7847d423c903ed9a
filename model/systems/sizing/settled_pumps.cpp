// SPDX-License-Identifier: MIT

#include "model/systems/sizing/settled_pumps.h"

#include "model/exact/case_fold.h"
#include "model/systems/expanding/allotment.h"
#include "model/systems/expanding/line_choice.h"
#include "model/systems/expanding/station_choice.h"

#include <set>

namespace flarestock {

namespace {

std::set<std::string_view> pumpsAsked(const FlatSystem &system)
{
    std::set<std::string_view> asked;
    for (const WorkedAnswer &worked : system.workedOut)
        asked.insert(worked.pumps.begin(), worked.pumps.end());
    return asked;
}

Result<std::vector<PortWish>> portsOf(const FlatSystem &system, std::size_t station)
{
    std::vector<PortWish> ports;
    for (const FlatRun &run : system.runs) {
        if (run.from != station && run.to != station)
            continue;
        const auto line = lineWishOf(run);
        if (!line)
            return tl::unexpected(line.error());
        const int dash = *line ? (*line)->dash : 0;
        if (run.from == station)
            ports.push_back({run.run->from.port, dash});
        if (run.to == station)
            ports.push_back({run.run->to.port, dash});
    }
    return ports;
}

} // namespace

Result<SettledPumps> settledPumps(const ExpandRequest &request, const FlatSystem &system)
{
    SettledPumps settled;
    const auto asked = pumpsAsked(system);
    if (asked.empty())
        return settled;
    Allotment allotment(*request.catalogue, request.shelf);
    std::vector<std::string> notes; // They are said when all stations are placed.
    for (std::size_t i = 0; i < system.stations.size(); ++i) {
        const FlatStation &station = system.stations[i];
        if (!asked.contains(station.id))
            continue;
        auto ports = portsOf(system, i);
        if (!ports)
            return tl::unexpected(ports.error());
        StationWish wish{&station, std::move(*ports), nullptr, nullptr};
        if (const auto pick = request.picks.find(station.id); pick != request.picks.end())
            wish.pick = request.catalogue->find(trimmed(pick->second));
        const auto placed = chooseStation(wish, request.preference, allotment, notes);
        if (!placed)
            return tl::unexpected(placed.error());
        const Part *programs = placed->better ? placed->better : placed->part;
        if (placed->part)
            settled.standing.emplace(station.id, placed->part);
        if (programs)
            settled.programs.emplace(station.id, programs);
    }
    return settled;
}

} // namespace flarestock
