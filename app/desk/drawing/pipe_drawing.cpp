// SPDX-License-Identifier: MIT

#include "app/desk/drawing/pipe_drawing.h"

#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double BendRadius = 16;

double lengthOf(const QPointF &step)
{
    return std::hypot(step.x(), step.y());
}

/// The line with its corners rounded, as a hose lies.
QPainterPath bent(const QPolygonF &line)
{
    QPainterPath path(line.first());
    for (int at = 1; at + 1 < line.size(); ++at) {
        const QPointF in = line[at] - line[at - 1];
        const QPointF out = line[at + 1] - line[at];
        const double radius = std::min({BendRadius, lengthOf(in) / 2, lengthOf(out) / 2});
        if (radius < 0.5) {
            path.lineTo(line[at]);
            continue;
        }
        path.lineTo(line[at] - in / lengthOf(in) * radius);
        path.quadTo(line[at], line[at] + out / lengthOf(out) * radius);
    }
    path.lineTo(line.last());
    return path;
}

void paintStroke(QPainter *painter, const MapStroke &stroke, const PipeInks &inks)
{
    const double thickness = stroke.direct ? 4 : strokeThickness(stroke.boreMm);
    QPen pen(inks.pipe, thickness, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    const bool unknown = !stroke.direct && !(stroke.boreMm > 0);
    if (unknown)
        pen.setDashPattern({4, 3});
    const QPainterPath path = bent(stroke.line);
    painter->setBrush(Qt::NoBrush);
    if (said(stroke.run) == inks.openedRun) {
        painter->setPen(
            QPen(inks.openedInk, thickness + 6, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter->drawPath(path);
    }
    if (!unknown && thickness > 5) { // The rim keeps two runs apart where they cross.
        painter->setPen(QPen(inks.rim, thickness + 3, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter->drawPath(path);
    }
    painter->setPen(pen);
    painter->drawPath(path);
    if (stroke.direct || stroke.middleLength < 24)
        return;
    const double sense = stroke.leftward ? -1 : 1;
    const double half = std::clamp(thickness * 0.42, 4.0, 6.5);
    const QPointF tip = stroke.middle + QPointF(sense * half * 0.7, 0);
    const QColor colour = thickness >= 7 ? inks.arrow : inks.pipe;
    painter->setPen(QPen(colour, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPolyline(
        QPolygonF({tip - QPointF(sense * half, half), tip, tip - QPointF(sense * half, -half)}));
}

} // namespace

void paintPipes(QPainter *painter, const MapLayout &map, const PipeInks &inks)
{
    painter->setPen(QPen(inks.pipe, 4, Qt::SolidLine, Qt::FlatCap));
    for (const QLineF &stub : map.stubs)
        painter->drawLine(stub);
    for (const MapStroke &stroke : map.strokes)
        paintStroke(painter, stroke, inks);
}

PipeDrawing::PipeDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed :
         {&PipeDrawing::pipeChanged, &PipeDrawing::rimChanged, &PipeDrawing::arrowChanged,
          &PipeDrawing::openedRunChanged, &PipeDrawing::openedInkChanged})
        connect(this, changed, this, [this] { update(); });
}

void PipeDrawing::setMap(LineMap *map)
{
    if (m_map == map)
        return;
    if (m_map != nullptr)
        m_map->disconnect(this);
    m_map = map;
    if (m_map != nullptr)
        connect(m_map, &LineMap::drawn, this, &PipeDrawing::follow);
    Q_EMIT mapChanged();
    update();
}

/// Of another build the pipes are drawn once its plates are laid, as both in one frame would hold
/// the window too long.
void PipeDrawing::follow()
{
    std::vector<std::string> runs;
    for (const MapStroke &stroke : m_map->layout().strokes)
        runs.push_back(stroke.run);
    if (runs == m_runs)
        return update();
    m_runs = std::move(runs);
    setFlag(ItemHasContents, false);
    Pace::instance().later(this, [this] {
        setFlag(ItemHasContents);
        update();
    });
}

void PipeDrawing::paint(QPainter *painter)
{
    if (m_map == nullptr)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    paintPipes(painter, m_map->layout(), {m_pipe, m_rim, m_arrow, m_openedRun, m_openedInk});
}

} // namespace flarestock
