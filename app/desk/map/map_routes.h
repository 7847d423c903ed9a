// SPDX-License-Identifier: MIT
//
// Map routes: the way of each run over the grid of the line map, and then in pixels: straight to a
// neighbour, through a channel between rows to any other plate, along the right margin back to an
// echo.

#pragma once

#include "app/desk/map/map_grid.h"
#include "app/desk/map/map_layout.h"

namespace flarestock {

/// How one run goes. Lanes count from 0 within their channel or gutter.
struct MapRoute {
    enum class Form : std::uint8_t { Straight, Channel, Back };
    const PlacedRun *run = nullptr;
    std::size_t from = 0; ///< Plates of the grid.
    std::size_t to = 0;
    Form form = Form::Straight;
    int channel = 0; ///< The channel above this row; rows.size() is the one below the last.
    int lane = 0;
    int outLane = 0;
    int inLane = 0;
};

struct RoutedGrid {
    const MapGrid *grid = nullptr;
    std::vector<MapRoute> routes;
    std::vector<int> lanes; ///< Of each channel.
    std::vector<double> rowMiddle;
    std::vector<double> rowBottom;

    [[nodiscard]] double channelAbove(int row) const;
    [[nodiscard]] double channelBelowLast() const;
};

/// The grid must outlive the answer.
[[nodiscard]] RoutedGrid routesOf(const MapGrid &grid, const Expansion &expansion);

/// Adds strokes and marks to a map whose plates are placed.
void drawRoutes(MapLayout &map, const RoutedGrid &routed, const Expansion &expansion,
                const MapSpace &space);

} // namespace flarestock
