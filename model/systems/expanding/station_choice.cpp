// SPDX-License-Identifier: MIT

#include "model/systems/expanding/station_choice.h"

namespace flarestock {

namespace {

/// Whether a hose end of this dash goes on without an adapter.
bool takesHoseEnd(const Port &port, int wished)
{
    const bool isFlare = port.family == Family::An || port.family == Family::Jic;
    return isFlare && port.gender == Gender::Male && dash(port) == wished;
}

/// Counts the part's ports with the dash of their runs into the one to be ranked.
void countPorts(Ranked &one, const std::vector<PortWish> &wishes)
{
    for (const PortWish &wish : wishes) {
        const PartPort *port = one.part->port(wish.port);
        if (wish.dash <= 0 || !port)
            continue;
        one.adapters += takesHoseEnd(port->port, wish.dash) ? 0 : 1;
        one.misfits += dash(port->port) == wish.dash ? 0 : 1;
    }
}

std::vector<const Part *> bestFirst(const StationDemand &demand, const StationWish &wish,
                                    Preference preference, Allotment &allotment)
{
    std::vector<Ranked> ranked;
    for (const Part *part : allotment.catalogue().ofKind(demand.as->kind)) {
        if (lackOf(*part, demand) != Lack::Nothing)
            continue;
        const bool here = allotment.left(*part) >= Decimal(1);
        ranked.push_back({part, here, allotment.cost(*part, 1, here)});
        countPorts(ranked.back(), wish.ports);
    }
    rank(ranked, preference);
    std::vector<const Part *> parts;
    parts.reserve(ranked.size());
    for (const Ranked &one : ranked)
        parts.push_back(one.part);
    return parts;
}

std::string joined(std::initializer_list<std::string> texts)
{
    std::string all;
    for (const std::string &text : texts)
        if (!text.empty())
            all += (all.empty() ? "" : "; ") + text;
    return all;
}

} // namespace

Result<PlacedStation> chooseStation(const StationWish &wish, Preference preference,
                                    Allotment &allotment, std::vector<std::string> &notes)
{
    auto demand = demandOf(*wish.station);
    if (!demand)
        return tl::unexpected(demand.error());
    for (const PortWish &port : wish.ports)
        demand->ports.push_back(port.port);

    PlacedStation placed;
    placed.id = wish.station->id;
    placed.station = wish.station->station;
    const auto parts = bestFirst(*demand, wish, preference, allotment);
    const Part *own = demand->part.empty() ? nullptr : allotment.catalogue().find(demand->part);
    if (!own && !demand->part.empty())
        notes.push_back("Station " + placed.id + ": " + demand->part +
                        ", which the template names, is not in the catalogue.");
    const Part *programs = own             ? own
                           : wish.settled  ? wish.settled
                           : parts.empty() ? nullptr
                                           : parts.front();
    placed.picked = wish.pick != nullptr;
    placed.part = wish.pick ? wish.pick : programs;
    if (wish.pick && programs != wish.pick)
        placed.better = programs;
    for (const Part *part : parts)
        if (part != placed.part)
            placed.others.push_back(part);
    if (!placed.part) {
        placed.why = "nothing in the catalogue meets the demand";
        return placed;
    }
    const Lack lack = lackOf(*placed.part, *demand);
    placed.why = joined(
        {wish.pick ? "your pick" : (own ? "named by the template" : ""),
         lack == Lack::Nothing ? meritOf(*placed.part, *demand) : text(lack, *placed.part, *demand),
         supplyText(*placed.part, allotment)});
    allotment.take(*placed.part, 1);
    return placed;
}

} // namespace flarestock
