// SPDX-License-Identifier: MIT
//
// Map layout: where the plates, runs and joint marks of an expanded build lie in a picture of a
// given width. Pure arithmetic on an Expansion; nothing here draws.
//
// Suction, pressure and return have rows of their own, in that order; a level that does not fit in
// one row goes on in the next. Plates stand in columns, in flow order. A run leaves its plate at
// the right and enters the next one at the left; where the two are not neighbours it goes through
// the gutter beside the plate and the channel between two rows, each run in a lane of its own. A
// run that leads back to an earlier station ends, on a row of its own, at that station's echo.
//
//   const MapLayout map = layoutMap(expansion, {.width = 960});

#pragma once

#include "model/systems/expansion.h"

#include <QLineF>
#include <QPointF>
#include <QPolygonF>
#include <QRectF>

#include <string>
#include <vector>

namespace flarestock {

/// What the layout may use, in pixels before scaling.
struct MapSpace {
    double width = 960;
    double height = 0; ///< The rows stand closer where the map would otherwise be higher than this.
    double labelWidth = 26; ///< Column at the left in which the level names stand upright.
    double plateWidth = 148;
    double plateHeight = 50;
    double plateLeast = 102; ///< To which plates may shrink where that makes the map lower.
    double gapLeast = 80;    ///< Between two plates: two marks and the run, each for a finger.
    double reach = 40;       ///< Room that each joint has for a finger.
};

struct MapPlate {
    std::string station;
    QRectF box;
    bool echo = false; ///< The station stands elsewhere; here a run comes back to it.
    int row = 0;
};

struct MapMark {
    std::string joint;
    QPointF at;
};

struct MapStroke {
    std::string run;
    QPolygonF line;      ///< In flow order, only level and upright pieces.
    double boreMm = 0;   ///< 0: no line found, or its bore is not published.
    bool direct = false; ///< The ports join without a line.
    QPointF middle;      ///< Of its longest level piece, where its arrow is.
    double middleLength = 0;
    bool leftward = false; ///< The flow goes left there.
    QPointF label;         ///< What is written about it stands above and below this point …
    double labelRoom = 0;  ///< … in so much width …
    double labelClear = 0; ///< … so far above and below, beside half the stroke.
};

struct MapBand {
    Level level = Level::Suction;
    double top = 0;    ///< Of the plates of its first row.
    double bottom = 0; ///< Of the plates of its last row.
};

struct MapLayout {
    double width = 0;
    double height = 0;
    std::vector<MapBand> bands;
    std::vector<MapPlate> plates; ///< In flow order, echoes last.
    std::vector<MapStroke> strokes;
    std::vector<QLineF> stubs;  ///< From a plate to its closed ports.
    std::vector<MapMark> marks; ///< In the order of the expansion's joints.

    [[nodiscard]] const MapPlate *plate(const std::string &station, bool echo = false) const;
};

/// Total: an expansion without stations gives an empty map of the given width.
[[nodiscard]] MapLayout layoutMap(const Expansion &expansion, const MapSpace &space);

/// A bore in mm as a stroke's thickness in pixels: in proportion, within what can be seen.
[[nodiscard]] double strokeThickness(double boreMm);

} // namespace flarestock
