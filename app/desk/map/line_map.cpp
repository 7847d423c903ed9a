// SPDX-License-Identifier: MIT

#include "app/desk/map/line_map.h"

#include "app/desk/map/map_rows.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double FingerReach = 26; ///< From a mark's middle to a touch that still means it.
constexpr double MarkRadius = 10;

QString stopName(QLatin1String kind, const std::string &id)
{
    return QString(kind + u'|' + said(id));
}

double distance(const QPointF &a, const QPointF &b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

} // namespace

LineMap::LineMap(QObject *parent)
    : QObject(parent), m_plates(plateCells()), m_marks(markCells()), m_runs(runCells()),
      m_bands(bandCells())
{
}

void LineMap::setWidth(double width)
{
    if (std::abs(width - m_width) < 0.5 || width < 1)
        return;
    m_width = width;
    layOut();
}

void LineMap::show(const WorkedOut &worked)
{
    m_worked = worked;
    layOut();
}

void LineMap::layOut()
{
    if (m_worked.expansion == nullptr)
        return;
    const Expansion &expansion = *m_worked.expansion;
    MapSpace space;
    space.width = m_width;
    if (m_width < 760) { // A narrow map: three plates a row rather than two.
        space.labelWidth = 0;
        space.plateWidth = 112;
        space.gapLeast = 74;
    }
    m_layout = layoutMap(expansion, space);
    m_stops.clear();
    const auto addMark = [this](const std::string &joint) {
        for (const MapMark &mark : m_layout.marks) {
            if (mark.joint == joint)
                m_stops.push_back({stopName(QLatin1String("joint"), joint),
                                   QRectF(mark.at.x() - MarkRadius, mark.at.y() - MarkRadius,
                                          2 * MarkRadius, 2 * MarkRadius)});
        }
    };
    for (const PlacedStation &station : expansion.stations) {
        if (const MapPlate *plate = m_layout.plate(station.id))
            m_stops.push_back({stopName(QLatin1String("station"), station.id), plate->box});
        for (const PlacedJoint &joint : expansion.joints) {
            if (joint.station == station.id)
                addMark(joint.id);
        }
    }
    m_plates.become(plateRows(m_layout, expansion, *m_worked.shelf));
    m_marks.become(markRows(m_layout, expansion));
    m_runs.become(runRows(m_layout, expansion));
    m_bands.become(bandRows(m_layout));
    Q_EMIT drawn();
}

QString LineMap::near(double x, double y) const
{
    const QPointF touch(x, y);
    const Stop *nearest = nullptr;
    double least = FingerReach;
    for (const Stop &stop : m_stops) {
        const bool isMark = stop.box.width() <= 2 * MarkRadius;
        const double away = distance(stop.box.center(), touch);
        if (isMark && away <= least) {
            least = away;
            nearest = &stop;
        }
    }
    if (nearest != nullptr)
        return nearest->name;
    for (const Stop &stop : m_stops) {
        if (stop.box.contains(touch))
            return stop.name;
    }
    for (const MapPlate &plate : m_layout.plates) {
        if (plate.echo && plate.box.contains(touch))
            return stopName(QLatin1String("station"), plate.station);
    }
    return {};
}

QString LineMap::step(const QString &from, Way way) const
{
    if (m_stops.empty())
        return {};
    const auto at = std::find_if(m_stops.begin(), m_stops.end(),
                                 [&from](const Stop &stop) { return stop.name == from; });
    if (at == m_stops.end() || way == First)
        return m_stops.front().name;
    if (way == Last)
        return m_stops.back().name;
    if (way == Back)
        return at == m_stops.begin() ? from : std::prev(at)->name;
    if (way == On)
        return std::next(at) == m_stops.end() ? from : std::next(at)->name;
    const double sense = way == Down ? 1 : -1;
    const QPointF here = at->box.center();
    const Stop *best = nullptr;
    double least = 0;
    for (const Stop &stop : m_stops) {
        const QPointF step = stop.box.center() - here;
        if (step.y() * sense < 20)
            continue;
        const double cost = std::abs(step.x()) + 4 * std::abs(step.y());
        if (best == nullptr || cost < least) {
            best = &stop;
            least = cost;
        }
    }
    return best == nullptr ? from : best->name;
}

QRectF LineMap::place(const QString &stop) const
{
    const auto at = std::find_if(m_stops.begin(), m_stops.end(),
                                 [&stop](const Stop &other) { return other.name == stop; });
    return at == m_stops.end() ? QRectF() : at->box;
}

} // namespace flarestock
