// SPDX-License-Identifier: MIT

#include "app/desk/map/map_layout.h"

#include "app/desk/map/map_grid.h"
#include "app/desk/map/map_routes.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double EdgeMargin = 32; ///< Left of the first and right of the last plate, for lanes.
constexpr double TopMargin = 8;
constexpr double RowPadding = 12;  ///< Under a row …
constexpr double TightPadding = 2; ///< … and where there is little height.
constexpr double PlugRoom = 26;    ///< For a closed port that hangs below its plate.

struct Columns {
    int most = 1;
    double plateWidth = 0;
    double gap = 0;
    double first = 0;

    [[nodiscard]] double left(int column) const { return first + column * (plateWidth + gap); }
};

double roomOf(const MapSpace &space)
{
    return space.width - space.labelWidth - 2 * EdgeMargin;
}

int columnsThatFit(const MapSpace &space, double plateWidth)
{
    const double each = plateWidth + space.gapLeast;
    return std::max(1, static_cast<int>((roomOf(space) + space.gapLeast) / each));
}

/// The widest plate with which so many columns fit.
double plateFor(const MapSpace &space, int columns)
{
    const double each = (roomOf(space) + space.gapLeast) / columns - space.gapLeast;
    return std::clamp(each, space.plateLeast, space.plateWidth);
}

Columns columnsOf(const MapGrid &grid, const MapSpace &space)
{
    Columns columns;
    columns.most = std::max(1, grid.columns);
    columns.plateWidth = space.plateWidth;
    columns.first = space.labelWidth + EdgeMargin;
    if (columns.most > 1) {
        const double free = roomOf(space) - columns.most * columns.plateWidth;
        columns.gap = std::clamp(free / (columns.most - 1), space.gapLeast, 240.0);
    }
    return columns;
}

double heightOf(const GridPlate &plate, const MapSpace &space)
{
    const auto edge = static_cast<double>(std::max(plate.left.size(), plate.right.size()));
    return std::max(plate.echo ? space.reach + 4 : space.plateHeight, edge * space.reach + 4);
}

/// Middles of the rows, the channel of `lanes[row]` below each; returns the whole height.
double placeRows(RoutedGrid &routed, const MapSpace &space, double padding)
{
    routed.rowMiddle.clear();
    routed.rowBottom.clear();
    const MapGrid &grid = *routed.grid;
    double y = TopMargin;
    for (std::size_t row = 0; row < grid.rows.size(); ++row) {
        double height = 0;
        bool closed = false;
        for (const GridPlate &plate : grid.plates) {
            if (plate.row != static_cast<int>(row))
                continue;
            height = std::max(height, heightOf(plate, space));
            closed = closed || !plate.bottom.empty();
        }
        y += routed.channelAbove(static_cast<int>(row));
        routed.rowMiddle.push_back(y + height / 2);
        routed.rowBottom.push_back(y + height + (closed ? PlugRoom : 0));
        y += height + padding + (closed ? PlugRoom : 0);
    }
    return y + routed.channelBelowLast() + padding;
}

void placePlates(MapLayout &map, const RoutedGrid &routed, const MapSpace &space,
                 const Columns &columns)
{
    for (const GridPlate &plate : routed.grid->plates) {
        const double height = heightOf(plate, space);
        const double middle = routed.rowMiddle.at(static_cast<std::size_t>(plate.row));
        map.plates.push_back(
            {plate.station,
             QRectF(columns.left(plate.column), middle - height / 2, columns.plateWidth, height),
             plate.echo, plate.row});
    }
    for (std::size_t row = 0; row < routed.grid->rows.size(); ++row) {
        if (row == 0 || routed.grid->rows[row] != routed.grid->rows[row - 1])
            map.bands.push_back(
                {routed.grid->rows[row], routed.rowMiddle[row], routed.rowMiddle[row]});
        for (const MapPlate &plate : map.plates) {
            if (plate.row != static_cast<int>(row))
                continue;
            map.bands.back().top = std::min(map.bands.back().top, plate.box.top());
            map.bands.back().bottom = std::max(map.bands.back().bottom, plate.box.bottom());
        }
    }
}

MapLayout drawn(const Expansion &expansion, MapSpace space, int columns)
{
    MapLayout map;
    map.width = space.width;
    space.plateWidth = plateFor(space, columns);
    const MapGrid grid = gridOf(expansion, columns);
    RoutedGrid routed = routesOf(grid, expansion);
    map.height = placeRows(routed, space, RowPadding);
    if (map.height > space.height)
        map.height = placeRows(routed, space, TightPadding);
    placePlates(map, routed, space, columnsOf(grid, space));
    drawRoutes(map, routed, expansion, space);
    return map;
}

} // namespace

const MapPlate *MapLayout::plate(const std::string &station, bool echo) const
{
    const auto found = std::find_if(plates.begin(), plates.end(), [&](const MapPlate &plate) {
        return plate.station == station && plate.echo == echo;
    });
    return found == plates.end() ? nullptr : &*found;
}

MapLayout layoutMap(const Expansion &expansion, const MapSpace &wanted)
{
    MapLayout map;
    map.width = wanted.width;
    if (expansion.stations.empty())
        return map;
    const int fewest = columnsThatFit(wanted, wanted.plateWidth);
    map = drawn(expansion, wanted, fewest);
    for (int columns = fewest + 1; columns <= columnsThatFit(wanted, wanted.plateLeast);
         ++columns) {
        MapLayout lower = drawn(expansion, wanted, columns);
        if (lower.height < map.height)
            map = std::move(lower);
    }
    return map;
}

double strokeThickness(double boreMm)
{
    if (!(boreMm > 0))
        return 2;
    return std::clamp(boreMm * 0.85, 3.0, 18.0);
}

} // namespace flarestock
