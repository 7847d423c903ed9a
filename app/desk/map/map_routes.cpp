// SPDX-License-Identifier: MIT

#include "app/desk/map/map_routes.h"

#include "model/parts/part.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double LaneHeight = 26;  ///< A run and its label above it.
constexpr double LanePadding = 4;  ///< Between a channel and the plates.
constexpr double GutterReach = 18; ///< From a plate to the first upright lane beside it.
constexpr double PlugDrop = 14;    ///< A closed port hangs so far below its plate.
constexpr double GutterLane = 8;   ///< From one upright lane to the next.

/// The joints of one edge, spread over it so that a finger finds each.
double edgeOffset(const std::vector<std::string> &edge, const std::string &run, double reach)
{
    const auto found = std::find(edge.begin(), edge.end(), run);
    const auto at = static_cast<double>(found - edge.begin());
    return (at - (static_cast<double>(edge.size()) - 1) / 2) * reach;
}

double boreOf(const PlacedRun &run)
{
    if (run.line == nullptr)
        return 0;
    if (const auto *hose = run.line->as<HoseFacts>())
        return hose->boreMm.value_or(0);
    if (const auto *tubing = run.line->as<TubingFacts>())
        return tubing->boreMm.value_or(0);
    return 0;
}

/// Draws one layout's routes; the numbers that several routes share.
class RouteDrawing {
public:
    RouteDrawing(MapLayout &map, const RoutedGrid &routed, const MapSpace &space)
        : m_map(map), m_routed(routed), m_space(space)
    {
        for (const MapPlate &plate : map.plates)
            m_right = std::max(m_right, plate.box.right());
    }

    [[nodiscard]] QPolygonF line(const MapRoute &route) const;

private:
    [[nodiscard]] QPointF leaving(const MapRoute &route) const;
    [[nodiscard]] QPointF entering(const MapRoute &route) const;
    [[nodiscard]] QPointF leavingOwn(const MapRoute &route) const;
    [[nodiscard]] QPointF enteringOwn(const MapRoute &route) const;
    [[nodiscard]] static double levelled(double own, double other, const QRectF &box);
    [[nodiscard]] double channelY(const MapRoute &route) const;
    [[nodiscard]] QPolygonF back(const MapRoute &route) const;

    MapLayout &m_map;
    const RoutedGrid &m_routed;
    const MapSpace &m_space;
    double m_right = 0;
};

/// Where two neighbours' edges have the room for it, a run between them is straight: the lonelier
/// end goes to the height of the other.
double RouteDrawing::levelled(double own, double other, const QRectF &box)
{
    const bool within = other > box.top() + 4 && other < box.bottom() - 4;
    return within ? other : own;
}

QPointF RouteDrawing::leaving(const MapRoute &route) const
{
    const QPointF own = leavingOwn(route);
    const auto &grid = *m_routed.grid;
    if (route.form != MapRoute::Form::Straight || grid.plates[route.from].right.size() > 1)
        return own;
    return {own.x(), levelled(own.y(), enteringOwn(route).y(), m_map.plates[route.from].box)};
}

QPointF RouteDrawing::entering(const MapRoute &route) const
{
    const QPointF own = enteringOwn(route);
    const auto &grid = *m_routed.grid;
    if (route.form != MapRoute::Form::Straight || grid.plates[route.to].left.size() > 1)
        return own;
    return {own.x(), levelled(own.y(), leavingOwn(route).y(), m_map.plates[route.to].box)};
}

QPointF RouteDrawing::leavingOwn(const MapRoute &route) const
{
    const QRectF box = m_map.plates[route.from].box;
    return {box.right(), box.center().y() + edgeOffset(m_routed.grid->plates[route.from].right,
                                                       route.run->id, m_space.reach)};
}

QPointF RouteDrawing::enteringOwn(const MapRoute &route) const
{
    const QRectF box = m_map.plates[route.to].box;
    const GridPlate &plate = m_routed.grid->plates[route.to];
    const auto &edge = plate.echo ? plate.right : plate.left;
    return {plate.echo ? box.right() : box.left(),
            box.center().y() + edgeOffset(edge, route.run->id, m_space.reach)};
}

double RouteDrawing::channelY(const MapRoute &route) const
{
    const double above =
        route.channel == 0 ? 0 : m_routed.rowBottom[static_cast<std::size_t>(route.channel - 1)];
    return above + LanePadding + (route.lane + 0.75) * LaneHeight;
}

QPolygonF RouteDrawing::back(const MapRoute &route) const
{
    const QPointF start = leaving(route);
    const QPointF end = entering(route);
    const double margin = m_right + GutterReach + GutterLane * route.inLane;
    if (m_routed.grid->isLastInRow(m_routed.grid->plates[route.from]))
        return QPolygonF({start, {margin, start.y()}, {margin, end.y()}, end});
    const double out = start.x() + GutterReach + GutterLane * route.outLane;
    const double y = channelY(route);
    return QPolygonF({start, {out, start.y()}, {out, y}, {margin, y}, {margin, end.y()}, end});
}

QPolygonF RouteDrawing::line(const MapRoute &route) const
{
    const QPointF start = leaving(route);
    const QPointF end = entering(route);
    if (route.form == MapRoute::Form::Back)
        return back(route);
    if (route.form == MapRoute::Form::Straight) {
        if (std::abs(start.y() - end.y()) < 0.5)
            return QPolygonF({start, end});
        const double middle = (start.x() + end.x()) / 2 + GutterLane * route.outLane;
        return QPolygonF({start, {middle, start.y()}, {middle, end.y()}, end});
    }
    const double out = start.x() + GutterReach + GutterLane * route.outLane;
    const double in = end.x() - GutterReach - GutterLane * route.inLane;
    const double y = channelY(route);
    return QPolygonF({start, {out, start.y()}, {out, y}, {in, y}, {in, end.y()}, end});
}

MapStroke strokeOf(const MapRoute &route, QPolygonF line)
{
    MapStroke stroke;
    stroke.run = route.run->id;
    stroke.boreMm = boreOf(*route.run);
    stroke.direct = route.run->joints.size() == 1;
    for (int at = 1; at < line.size(); ++at) {
        const QPointF step = line[at] - line[at - 1];
        if (std::abs(step.x()) <= stroke.middleLength)
            continue;
        stroke.middleLength = std::abs(step.x());
        stroke.middle = (line[at] + line[at - 1]) / 2;
        stroke.leftward = step.x() < 0;
    }
    stroke.label = stroke.middle;
    stroke.labelRoom = stroke.middleLength;
    if (route.form == MapRoute::Form::Straight) { // Also where it has a step: over the whole gap.
        stroke.label = (line.first() + line.last()) / 2;
        stroke.labelRoom = line.last().x() - line.first().x();
        stroke.labelClear = std::abs(line.last().y() - line.first().y()) / 2;
    }
    stroke.line = std::move(line);
    return stroke;
}

void addPlugs(MapLayout &map, const RoutedGrid &routed, const MapSpace &space)
{
    for (std::size_t at = 0; at < map.plates.size(); ++at) {
        const auto &edge = routed.grid->plates[at].bottom;
        const QRectF box = map.plates[at].box;
        for (const std::string &joint : edge) {
            const double offset = edgeOffset(edge, joint, space.reach);
            const QPointF port(box.center().x() + offset, box.bottom());
            map.marks.push_back({joint, port + QPointF(0, PlugDrop)});
            map.stubs.emplace_back(port, port + QPointF(0, PlugDrop));
        }
    }
}

} // namespace

double RoutedGrid::channelAbove(int row) const
{
    const int count = lanes.at(static_cast<std::size_t>(row));
    return count > 0 ? count * LaneHeight + 2 * LanePadding : LanePadding;
}

double RoutedGrid::channelBelowLast() const
{
    return lanes.back() * LaneHeight;
}

void drawRoutes(MapLayout &map, const RoutedGrid &routed, const Expansion &expansion,
                const MapSpace &space)
{
    const RouteDrawing drawing(map, routed, space);
    for (const MapRoute &route : routed.routes) {
        MapStroke stroke = strokeOf(route, drawing.line(route));
        const auto &joints = route.run->joints;
        if (stroke.direct) {
            const bool isStraight = route.form == MapRoute::Form::Straight;
            map.marks.push_back({joints.front(), isStraight ? stroke.middle : stroke.line.last()});
        } else if (joints.size() > 1) {
            map.marks.push_back({joints.front(), stroke.line.first()});
            map.marks.push_back({joints.back(), stroke.line.last()});
        }
        map.strokes.push_back(std::move(stroke));
    }
    addPlugs(map, routed, space);
    std::vector<MapMark> inOrder;
    for (const PlacedJoint &joint : expansion.joints) {
        const auto found =
            std::find_if(map.marks.begin(), map.marks.end(),
                         [&joint](const MapMark &mark) { return mark.joint == joint.id; });
        if (found != map.marks.end())
            inOrder.push_back(*found);
    }
    map.marks = std::move(inOrder);
}

} // namespace flarestock
