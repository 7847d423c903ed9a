// SPDX-License-Identifier: MIT

#include "app/desk/map/map_grid.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <set>
#include <string_view>

namespace flarestock {

namespace {

Level levelOf(const PlacedStation &station)
{
    return station.station != nullptr ? station.station->level : Level::Pressure;
}

/// The stations as what flows out comes by them, else as they are listed: a template may list where
/// a feed ends before where it begins. What leads back, or round in a ring, orders nothing.
class FlowOrder {
public:
    explicit FlowOrder(const Expansion &expansion) : m_expansion(expansion)
    {
        for (const PlacedStation &station : expansion.stations)
            add(station);
    }
    [[nodiscard]] std::vector<const PlacedStation *> take() { return std::move(m_order); }

private:
    using Ids = std::set<std::string_view>;

    [[nodiscard]] bool leadsOn(const PlacedRun &run) const
    {
        const PlacedStation *to = m_expansion.station(run.to);
        return run.run == nullptr || run.run->level != Level::Return ||
               (to && levelOf(*to) == Level::Return);
    }
    /// Whether something comes from one to the other without being led back.
    bool reaches(const std::string &from, const std::string &to, Ids &seen) const
    {
        return from == to || std::any_of(m_expansion.runs.begin(), m_expansion.runs.end(),
                                         [&](const PlacedRun &run) {
                                             return run.from == from && leadsOn(run) &&
                                                    seen.insert(run.to).second &&
                                                    reaches(run.to, to, seen);
                                         });
    }
    void add(const PlacedStation &station)
    {
        if (!m_placed.insert(station.id).second)
            return;
        for (const PlacedRun &run : m_expansion.runs) {
            if (run.to != station.id || m_placed.count(run.from) > 0 || !leadsOn(run))
                continue;
            const PlacedStation *before = m_expansion.station(run.from);
            Ids seen;
            if (before && !reaches(run.to, run.from, seen))
                add(*before);
        }
        m_order.push_back(&station);
    }

    const Expansion &m_expansion;
    Ids m_placed;
    std::vector<const PlacedStation *> m_order;
};

using Stations = std::vector<const PlacedStation *>;

/// The stations of one level, each row filled before the next begins.
void placeLevel(MapGrid &grid, const Stations &stations, Level level, int columnsMax)
{
    Stations here;
    std::copy_if(stations.begin(), stations.end(), std::back_inserter(here),
                 [level](const PlacedStation *station) { return levelOf(*station) == level; });
    if (here.empty())
        return;
    const int count = static_cast<int>(here.size());
    const int rows = (count + columnsMax - 1) / columnsMax;
    const int inRow = rows == 1 ? count : columnsMax;
    grid.columns = std::max(grid.columns, inRow);
    const int first = static_cast<int>(grid.rows.size());
    for (int at = 0; at < count; ++at) {
        GridPlate plate;
        plate.station = here[static_cast<std::size_t>(at)]->id;
        plate.row = first + at / inRow;
        plate.column = at % inRow;
        grid.ofStation.emplace(plate.station, grid.plates.size());
        grid.plates.push_back(std::move(plate));
    }
    grid.rows.insert(grid.rows.end(), static_cast<std::size_t>(rows), level);
}

/// The last row, where it belongs to the return, has no echo yet and a column to spare.
bool takesAnEcho(const MapGrid &grid)
{
    if (grid.rows.empty() || grid.rows.back() != Level::Return)
        return false;
    int taken = 0;
    for (const GridPlate &plate : grid.plates) {
        if (plate.row != static_cast<int>(grid.rows.size()) - 1)
            continue;
        if (plate.echo)
            return false;
        taken = std::max(taken, plate.column + 1);
    }
    return taken < grid.columns;
}

/// The echo of where a run ends that leads back: right of the stations of its row, so that nothing
/// stands between it and the margin along which the run comes.
GridPlate echoOf(MapGrid &grid, const PlacedRun &run)
{
    GridPlate plate;
    plate.station = run.to;
    plate.echo = true;
    if (!takesAnEcho(grid))
        grid.rows.push_back(Level::Return);
    plate.row = static_cast<int>(grid.rows.size()) - 1;
    for (const GridPlate &other : grid.plates) {
        if (other.row == plate.row)
            plate.column = std::max(plate.column, other.column + 1);
    }
    return plate;
}

/// Runs that lead back, or to themselves.
void placeEchoes(MapGrid &grid, const Stations &stations, const Expansion &expansion)
{
    std::map<std::string, std::size_t, std::less<>> order;
    for (std::size_t at = 0; at < stations.size(); ++at)
        order.emplace(stations[at]->id, at);
    for (const PlacedRun &run : expansion.runs) {
        const auto from = order.find(run.from);
        const auto to = order.find(run.to);
        if (from == order.end() || to == order.end() || to->second > from->second)
            continue;
        GridPlate plate = echoOf(grid, run);
        grid.echoOfRun.emplace(run.id, grid.plates.size());
        grid.plates.push_back(std::move(plate));
    }
}

void fillEdges(MapGrid &grid, const Expansion &expansion)
{
    for (const PlacedRun &run : expansion.runs) {
        const auto begins = grid.begins(run);
        const auto ends = grid.ends(run);
        if (!begins || !ends)
            continue;
        grid.plates[*begins].right.push_back(run.id);
        GridPlate &end = grid.plates[*ends];
        (end.echo ? end.right : end.left).push_back(run.id);
    }
    for (const PlacedJoint &joint : expansion.joints) {
        const auto station = grid.ofStation.find(joint.station);
        if (expansion.run(joint.run) == nullptr && station != grid.ofStation.end())
            grid.plates[station->second].bottom.push_back(joint.id);
    }
}

} // namespace

std::optional<std::size_t> MapGrid::begins(const PlacedRun &run) const
{
    const auto found = ofStation.find(run.from);
    return found == ofStation.end() ? std::nullopt : std::optional(found->second);
}

std::optional<std::size_t> MapGrid::ends(const PlacedRun &run) const
{
    const auto echo = echoOfRun.find(run.id);
    if (echo != echoOfRun.end())
        return echo->second;
    const auto found = ofStation.find(run.to);
    return found == ofStation.end() ? std::nullopt : std::optional(found->second);
}

bool MapGrid::isLastInRow(const GridPlate &plate) const
{
    return std::none_of(plates.begin(), plates.end(), [&plate](const GridPlate &other) {
        return other.row == plate.row && other.column > plate.column;
    });
}

MapGrid gridOf(const Expansion &expansion, int columnsMax)
{
    assert(columnsMax >= 1);
    MapGrid grid;
    const Stations stations = FlowOrder(expansion).take();
    for (const Level level : {Level::Suction, Level::Pressure, Level::Return})
        placeLevel(grid, stations, level, columnsMax);
    placeEchoes(grid, stations, expansion);
    fillEdges(grid, expansion);
    return grid;
}

} // namespace flarestock
