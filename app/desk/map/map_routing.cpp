// SPDX-License-Identifier: MIT
//
// Which way each run goes over the grid, and in which lanes, so that no two lie on one another.

#include "app/desk/map/map_lanes.h"
#include "app/desk/map/map_routes.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

MapRoute routeOf(const MapGrid &grid, const PlacedRun &run, std::size_t from, std::size_t to)
{
    MapRoute route{.run = &run, .from = from, .to = to};
    const GridPlate &a = grid.plates[from];
    const GridPlate &b = grid.plates[to];
    if (b.echo) {
        route.form = MapRoute::Form::Back;
        // A plate with another to its right is left by the channel below its row.
        route.channel = a.row + 1;
    } else if (a.row == b.row && b.column == a.column + 1) {
        route.form = MapRoute::Form::Straight;
    } else {
        route.form = MapRoute::Form::Channel;
        route.channel = b.row > a.row ? b.row : b.row + 1;
        if (a.row == b.row)
            route.channel = a.row + 1;
    }
    return route;
}

Span between(int one, int other)
{
    return {std::min(one, other), std::max(one, other)};
}

/// The lanes of all channels and gutters. Gutter 0 is left of the first column, the last one the
/// right margin; in each, what leaves the plates at its left and what enters those at its right
/// have lanes of their own.
class LaneBook {
public:
    explicit LaneBook(const MapGrid &grid) : m_grid(grid), m_channels(grid.rows.size() + 1) {}

    void enter(MapRoute &route)
    {
        const GridPlate &from = m_grid.plates[route.from];
        const GridPlate &to = m_grid.plates[route.to];
        const bool isBack = route.form == MapRoute::Form::Back;
        const bool isLevel = isBack && m_grid.isLastInRow(from);
        if (route.form == MapRoute::Form::Straight)
            return;
        if (!isLevel) {
            const int end = isBack ? m_grid.columns : to.column;
            route.lane = m_channels[static_cast<std::size_t>(route.channel)].take(
                between(from.column + 1, end));
            route.outLane =
                m_leaving[from.column + 1].take(between(ofRow(from.row), ofChannel(route)));
        }
        const Span drop = between(isLevel ? ofRow(from.row) : ofChannel(route), ofRow(to.row));
        route.inLane =
            isBack ? m_leaving[m_grid.columns].take(drop) : m_entering[to.column].take(drop);
    }
    [[nodiscard]] std::vector<int> channels() const
    {
        std::vector<int> counts;
        for (const Lanes &channel : m_channels)
            counts.push_back(channel.count());
        return counts;
    }

private:
    // From top to bottom: a channel, the row below it, the next channel.
    [[nodiscard]] static int ofRow(int row) { return 2 * row + 1; }
    [[nodiscard]] static int ofChannel(const MapRoute &route) { return 2 * route.channel; }

    const MapGrid &m_grid;
    std::vector<Lanes> m_channels;
    std::map<int, Lanes> m_leaving;
    std::map<int, Lanes> m_entering;
};

} // namespace

RoutedGrid routesOf(const MapGrid &grid, const Expansion &expansion)
{
    RoutedGrid routed;
    routed.grid = &grid;
    LaneBook lanes(grid);
    for (const PlacedRun &run : expansion.runs) {
        const auto from = grid.begins(run);
        const auto to = grid.ends(run);
        if (!from || !to)
            continue;
        MapRoute route = routeOf(grid, run, *from, *to);
        lanes.enter(route);
        routed.routes.push_back(route);
    }
    routed.lanes = lanes.channels();
    return routed;
}

} // namespace flarestock
