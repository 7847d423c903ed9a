// SPDX-License-Identifier: MIT

#include "app/desk/map/map_layout.h"

#include "app/desk/map/map_grid.h"
#include "app/desk/map/map_routes.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double EdgeMargin = 36; ///< Left of the first and right of the last plate, for lanes.
constexpr double TopMargin = 14;
constexpr double RowPadding = 10;
constexpr double PlugRoom = 28;  ///< For a closed port that hangs below its plate.
constexpr double LabelRoom = 10; ///< Over a row whose level name stands above it.

struct Columns {
    int most = 1;
    double plateWidth = 0;
    double gap = 0;
    double first = 0;

    [[nodiscard]] double left(int column) const { return first + column * (plateWidth + gap); }
};

/// The least that plates and gaps can do with.
MapSpace tightened(MapSpace space)
{
    space.plateWidth = std::min(space.plateWidth, 124.0);
    space.gapLeast = std::min(space.gapLeast, 66.0);
    return space;
}

/// Rows that the build takes with so many columns.
std::size_t rowsWith(const Expansion &expansion, int columns)
{
    return gridOf(expansion, columns).rows.size();
}

int columnsThatFit(const MapSpace &space)
{
    const double room = space.width - space.labelWidth - 2 * EdgeMargin;
    return std::max(
        1, static_cast<int>((room + space.gapLeast) / (space.plateWidth + space.gapLeast)));
}

Columns columnsOf(const MapGrid &grid, const MapSpace &space)
{
    Columns columns;
    columns.most = std::max(1, grid.columns);
    columns.plateWidth = space.plateWidth;
    columns.first = space.labelWidth + EdgeMargin;
    const double room = space.width - columns.first - EdgeMargin;
    if (columns.most > 1) {
        const double free = room - columns.most * columns.plateWidth;
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
double placeRows(RoutedGrid &routed, const MapSpace &space)
{
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
        const bool begins = row == 0 || grid.rows[row] != grid.rows[row - 1];
        y += begins && space.labelWidth <= 0 ? LabelRoom : 0;
        routed.rowMiddle.push_back(y + height / 2);
        routed.rowBottom.push_back(y + height + (closed ? PlugRoom : 0));
        y += height + RowPadding + (closed ? PlugRoom : 0);
    }
    return y + routed.channelBelowLast() + RowPadding;
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
        if (row != 0 && routed.grid->rows[row] == routed.grid->rows[row - 1])
            continue;
        double top = routed.rowMiddle[row];
        for (const MapPlate &plate : map.plates)
            top = plate.row == static_cast<int>(row) ? std::min(top, plate.box.top()) : top;
        map.bands.push_back({routed.grid->rows[row], routed.rowMiddle[row], top});
    }
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
    // Smaller plates only where that saves a row.
    MapSpace space = wanted;
    const MapSpace tight = tightened(wanted);
    if (rowsWith(expansion, columnsThatFit(tight)) < rowsWith(expansion, columnsThatFit(space)))
        space = tight;
    const MapGrid grid = gridOf(expansion, columnsThatFit(space));
    RoutedGrid routed = routesOf(grid, expansion);
    map.height = placeRows(routed, space);
    placePlates(map, routed, space, columnsOf(grid, space));
    drawRoutes(map, routed, expansion, space);
    return map;
}

double strokeThickness(double boreMm)
{
    if (!(boreMm > 0))
        return 2;
    return std::clamp(boreMm * 0.85, 3.0, 18.0);
}

} // namespace flarestock
