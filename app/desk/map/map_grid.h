// SPDX-License-Identifier: MIT
//
// Map grid: which row and column of the line map each station takes, before any pixel is known.

#pragma once

#include "model/systems/expansion.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace flarestock {

/// A place in the grid, and the joints on each edge of its plate, top to bottom.
struct GridPlate {
    std::string station;
    int row = 0;
    int column = 0;
    bool echo = false;
    std::vector<std::string> left;   ///< Run ids that enter.
    std::vector<std::string> right;  ///< Run ids that leave; for an echo those that come back.
    std::vector<std::string> bottom; ///< Joint ids of closed ports.
};

struct MapGrid {
    std::vector<GridPlate> plates;
    std::vector<Level> rows; ///< Level of each row.
    int columns = 0;

    /// Plate at which a run begins or ends; nothing where its station is not in the build.
    [[nodiscard]] std::optional<std::size_t> begins(const PlacedRun &run) const;
    [[nodiscard]] std::optional<std::size_t> ends(const PlacedRun &run) const;
    /// Whether nothing stands to the right of a plate.
    [[nodiscard]] bool isLastInRow(const GridPlate &plate) const;

    std::map<std::string, std::size_t, std::less<>> ofStation;
    std::map<std::string, std::size_t, std::less<>> echoOfRun;
};

/// `columnsMax` is at least 1 (asserted).
[[nodiscard]] MapGrid gridOf(const Expansion &expansion, int columnsMax);

} // namespace flarestock
