// SPDX-License-Identifier: MIT
//
// Plot layout: a picture of a build as lines, areas, words and points of a given size. Pure values:
// the layouts of the pressure, the pump and the cost are made as one, so that one screen shows them
// and one test holds that no two of their words lie on one another.

#pragma once

#include "app/desk/words/standing.h"

#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <vector>

namespace flarestock {

/// What the screen's theme makes a colour of.
enum class PlotInk : std::uint8_t { Ink, Quiet, Accent, Pipe, Rule, Edge, Caution, Stop };

struct PlotStroke {
    enum class Dash : std::uint8_t { Whole, Broken, Dotted };
    QPolygonF line;
    PlotInk ink = PlotInk::Accent;
    double thick = 1; ///< Pixels before scaling.
    Dash dash = Dash::Whole;
};

struct PlotArea {
    enum class Fill : std::uint8_t { Tint, Full, Hatched };
    QPolygonF outline;
    PlotInk ink = PlotInk::Accent;
    Fill fill = Fill::Tint;
};

struct PlotLabel {
    QString words;
    QRectF box; ///< As large as the words.
    PlotInk ink = PlotInk::Quiet;
    bool strong = false;
};

/// A finding that stands at this place.
struct PlotMark {
    QPointF at;
    Standing::Mark mark = Standing::Caution;
};

/// What a key or a finger reaches.
struct PlotPoint {
    QString key;   ///< Unique in its plot.
    QPointF at;    ///< Where it is shown to be in hand.
    QRectF box;    ///< Where a finger means it.
    QString says;  ///< Its values, as a sentence.
    QString opens; ///< What it stands for: a spot of the line map, a group of the bill, a build.
    bool isDot = true; ///< Drawn also where it is not in hand.
};

struct PlotSpace {
    double width = 0;
    double height = 0;
};

struct PlotLayout {
    PlotSpace space; ///< What it takes; it may be higher than what there was.
    QString title;
    QString says;     ///< The answer of the picture as a sentence.
    QString whyNone;  ///< Why there is nothing to draw; then nothing below is.
    QString whatToDo; ///< … and what would help.
    std::vector<PlotStroke> strokes;
    std::vector<PlotArea> areas; ///< Below the strokes.
    std::vector<PlotLabel> labels;
    std::vector<PlotMark> marks;
    std::vector<PlotPoint> points; ///< In the order in which keys walk.

    [[nodiscard]] bool isThere() const { return whyNone.isEmpty(); }
};

} // namespace flarestock
