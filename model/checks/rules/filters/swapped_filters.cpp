// SPDX-License-Identifier: MIT

#include "model/checks/rules/filters/swapped_filters.h"

#include <algorithm>
#include <cassert>

namespace flarestock::rules {

namespace {

constexpr int StarvesSurelyBelowMicron = 40;

bool never(const PlacedStation &)
{
    return false;
}

bool isStop(const PlacedStation &station)
{
    return dirtStop(station).has_value();
}

bool isElectricPump(const PlacedStation &station)
{
    const auto *pump = station.part == nullptr ? nullptr : station.part->as<PumpFacts>();
    return pump != nullptr && pump->electric;
}

bool stands(const DirtStop &stop)
{
    return !stop.sock && stop.rating;
}

} // namespace

std::vector<DirtStop> stopsIn(const BuildUnderCheck::Stations &stations)
{
    std::vector<DirtStop> stops;
    for (const auto *station : stations) {
        if (const auto stop = dirtStop(*station))
            stops.push_back(*stop);
    }
    return stops;
}

std::vector<DirtStop> stopsBefore(const BuildUnderCheck &build, const PlacedStation &pump)
{
    auto before = stopsIn(build.before(pump, never));
    if (const auto own = dirtStop(pump)) // A pump in the tank may carry its own sock.
        before.insert(before.begin(), *own);
    return before;
}

std::vector<DirtStop> stopsAfter(const BuildUnderCheck &build, const PlacedStation &pump)
{
    return stopsIn(build.after(pump, never));
}

const DirtStop &finestOf(const std::vector<DirtStop> &stops)
{
    assert(!stops.empty());
    return *std::min_element(stops.begin(), stops.end(), [](const DirtStop &a, const DirtStop &b) {
        return a.rating && (!b.rating || a.rating->micron < b.rating->micron);
    });
}

std::optional<FilterPair> swappedAround(const BuildUnderCheck &build, const PlacedStation &pump)
{
    const auto before = stopsBefore(build, pump);
    const auto after = stopsAfter(build, pump);
    if (before.empty() || after.empty() || !stands(before.front()) || !stands(after.front()))
        return std::nullopt;
    FilterPair pair{before.front(), after.front()};
    const Decimal &fine = pair.before.rating->micron;
    const Decimal &coarse = pair.after.rating->micron;
    if (fine >= Decimal(StarvesBelowMicron) || coarse < Decimal(StarvesBelowMicron) ||
        fine + fine >= coarse)
        return std::nullopt;
    const auto leading = stopsIn(build.before(*pair.after.station, isStop));
    const bool alone = leading.size() == 1 && leading.front().station == pair.before.station;
    return alone ? std::optional(pair) : std::nullopt;
}

bool isSwapped(const BuildUnderCheck &build, const PlacedStation &filter)
{
    if (build.expansion().filters != FilterRule::AroundElectricPump)
        return false;
    const auto &stations = build.expansion().stations;
    return std::any_of(stations.begin(), stations.end(), [&](const PlacedStation &station) {
        const auto pair = isElectricPump(station) ? swappedAround(build, station) : std::nullopt;
        return pair && (pair->before.station == &filter || pair->after.station == &filter);
    });
}

bool isToldOfItsPump(const BuildUnderCheck &build, const PlacedStation &user)
{
    const auto rule = build.expansion().filters;
    const auto upstream = build.before(user, isStop);
    return std::any_of(upstream.begin(), upstream.end(), [&](const PlacedStation *station) {
        const bool asks = (rule == FilterRule::AroundElectricPump && isElectricPump(*station)) ||
                          (rule == FilterRule::AfterPump && station->part != nullptr &&
                           station->part->as<PumpFacts>() != nullptr);
        return asks && stopsAfter(build, *station).empty();
    });
}

bool isStarvedByFilter(const BuildUnderCheck &build, const PlacedStation &pump)
{
    if (build.expansion().filters != FilterRule::AroundElectricPump || !isElectricPump(pump))
        return false;
    const auto before = stopsBefore(build, pump);
    if (before.empty())
        return false;
    const auto &finest = finestOf(before);
    return swappedAround(build, pump) ||
           (finest.rating && finest.rating->micron < Decimal(StarvesSurelyBelowMicron));
}

} // namespace flarestock::rules
