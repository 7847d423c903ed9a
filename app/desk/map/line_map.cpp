// SPDX-License-Identifier: MIT

#include "app/desk/map/line_map.h"

#include "app/desk/map/map_rows.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace flarestock {

namespace {

constexpr double MarkReach = 20;   ///< From a mark's middle, whatever else lies there.
constexpr double FingerReach = 26; ///< The same where nothing else lies there.
constexpr double RunReach = 20;    ///< From the middle of a stroke.
constexpr double MarkRadius = 10;

double distance(const QPointF &a, const QPointF &b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

/// From a point to the nearest one of a level or upright piece.
double distance(const QPointF &point, const QPointF &a, const QPointF &b)
{
    const QPointF nearest(std::clamp(point.x(), std::min(a.x(), b.x()), std::max(a.x(), b.x())),
                          std::clamp(point.y(), std::min(a.y(), b.y()), std::max(a.y(), b.y())));
    return distance(point, nearest);
}

} // namespace

LineMap::LineMap(QObject *parent)
    : QObject(parent), m_plates(plateCells()), m_marks(markCells()), m_runs(runCells()),
      m_bands(bandCells())
{
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &LineMap::layOut);
}

void LineMap::setWidth(double width)
{
    if (std::abs(width - m_width) < 0.5 || width < 1)
        return;
    m_width = width;
    m_soon.start();
}

void LineMap::setRoom(double room)
{
    if (std::abs(room - m_room) < 0.5)
        return;
    m_room = room;
    m_soon.start();
}

void LineMap::show(const WorkedOut &worked)
{
    m_worked = worked;
    layOut();
}

void LineMap::setUnits(Units units)
{
    m_units = units;
    layOut();
}

void LineMap::setFound(std::set<QString> joints)
{
    if (joints == m_found)
        return;
    m_found = std::move(joints);
    if (m_worked.expansion != nullptr)
        m_marks.become(markRows(m_layout, *m_worked.expansion, m_found));
}

void LineMap::layOut()
{
    m_soon.stop();
    if (m_worked.expansion == nullptr)
        return;
    const Expansion &expansion = *m_worked.expansion;
    MapSpace space;
    space.width = m_width;
    space.height = m_room;
    m_layout = layoutMap(expansion, space);
    findSpots();
    m_plates.become(plateRows(m_layout, m_worked, m_units));
    m_marks.become(markRows(m_layout, expansion, m_found));
    m_runs.become(runRows(m_layout, expansion, m_units));
    m_bands.become(bandRows(m_layout));
    Q_EMIT drawn();
}

void LineMap::addSpot(const QString &kind, const std::string &id, const QRectF &box)
{
    m_spots.push_back({QString(kind + u'|' + said(id)), box});
}

void LineMap::addMark(const std::string &joint)
{
    for (const MapMark &mark : m_layout.marks) {
        if (mark.joint == joint)
            addSpot(QStringLiteral("joint"), joint,
                    QRectF(mark.at.x() - MarkRadius, mark.at.y() - MarkRadius, 2 * MarkRadius,
                           2 * MarkRadius));
    }
}

/// A run behind the joint at which it begins; one that leads back has its last joint with it too.
void LineMap::addRun(const PlacedRun &run, bool leadsBack)
{
    addMark(run.joints.front());
    for (const MapStroke &stroke : m_layout.strokes) {
        if (stroke.run == run.id && !stroke.direct)
            addSpot(QStringLiteral("run"), run.id,
                    QRectF(stroke.label.x() - RunReach, stroke.label.y() - RunReach, 2 * RunReach,
                           2 * RunReach));
    }
    if (leadsBack && run.joints.size() > 1)
        addMark(run.joints.back());
}

void LineMap::findSpots()
{
    const Expansion &expansion = *m_worked.expansion;
    std::map<std::string, std::size_t> order;
    for (std::size_t at = 0; at < expansion.stations.size(); ++at)
        order.emplace(expansion.stations[at].id, at);
    const auto leadsBack = [&order](const PlacedRun &run) {
        return order[run.to] <= order[run.from];
    };
    m_spots.clear();
    for (const PlacedStation &station : expansion.stations) {
        for (const PlacedRun &run : expansion.runs) {
            if (run.to == station.id && run.joints.size() > 1 && !leadsBack(run))
                addMark(run.joints.back());
        }
        if (const MapPlate *plate = m_layout.plate(station.id))
            addSpot(QStringLiteral("station"), station.id, plate->box);
        for (const PlacedJoint &joint : expansion.joints) {
            if (joint.station == station.id && expansion.run(joint.run) == nullptr)
                addMark(joint.id);
        }
        for (const PlacedRun &run : expansion.runs) {
            if (run.from == station.id && !run.joints.empty())
                addRun(run, leadsBack(run));
        }
    }
}

QString LineMap::nearestMark(const QPointF &touch, double reach) const
{
    const MapMark *nearest = nullptr;
    for (const MapMark &mark : m_layout.marks) {
        const double away = distance(mark.at, touch);
        if (away <= reach) {
            reach = away;
            nearest = &mark;
        }
    }
    return nearest == nullptr ? QString()
                              : QString(QStringLiteral("joint|") + said(nearest->joint));
}

QString LineMap::nearestRun(const QPointF &touch) const
{
    const MapStroke *nearest = nullptr;
    double least = RunReach;
    for (const MapStroke &stroke : m_layout.strokes) {
        for (int at = 1; at < stroke.line.size() && !stroke.direct; ++at) {
            const double away = distance(touch, stroke.line[at - 1], stroke.line[at]);
            if (away <= least) {
                least = away;
                nearest = &stroke;
            }
        }
    }
    return nearest == nullptr ? QString() : QString(QStringLiteral("run|") + said(nearest->run));
}

QString LineMap::near(double x, double y) const
{
    const QPointF touch(x, y);
    if (QString mark = nearestMark(touch, MarkReach); !mark.isEmpty())
        return mark;
    for (const MapPlate &plate : m_layout.plates) {
        if (plate.box.contains(touch))
            return QString(QStringLiteral("station|") + said(plate.station));
    }
    const QString run = nearestRun(touch);
    return run.isEmpty() ? nearestMark(touch, FingerReach) : run;
}

QString LineMap::step(const QString &from, Way way) const
{
    if (m_spots.empty())
        return {};
    const auto at = std::find_if(m_spots.begin(), m_spots.end(),
                                 [&from](const Spot &spot) { return spot.name == from; });
    if (at == m_spots.end() || way == First)
        return m_spots.front().name;
    if (way == Last)
        return m_spots.back().name;
    if (way == Back)
        return at == m_spots.begin() ? from : std::prev(at)->name;
    if (way == On)
        return std::next(at) == m_spots.end() ? from : std::next(at)->name;
    const double sense = way == Down ? 1 : -1;
    const QPointF here = at->box.center();
    const Spot *best = nullptr;
    double least = 0;
    for (const Spot &spot : m_spots) {
        const QPointF step = spot.box.center() - here;
        if (step.y() * sense < 20)
            continue;
        const double cost = std::abs(step.x()) + 4 * std::abs(step.y());
        if (best == nullptr || cost < least) {
            best = &spot;
            least = cost;
        }
    }
    return best == nullptr ? from : best->name;
}

QRectF LineMap::place(const QString &spot) const
{
    const auto at = std::find_if(m_spots.begin(), m_spots.end(),
                                 [&spot](const Spot &other) { return other.name == spot; });
    return at == m_spots.end() ? QRectF() : at->box;
}

} // namespace flarestock
