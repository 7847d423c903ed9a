// SPDX-License-Identifier: MIT

#include "app/desk/drawing/port_shape.h"

#include "model/ports/size_table.h"

#include <QPainter>

#include <algorithm>

namespace flarestock {

namespace {

constexpr double Neck = 7;     // From the body's face to the first thread.
constexpr double Reach = 24;   // Of the thread.
constexpr double Unknown = 12; // Millimetres, where the tables have no diameter.

enum class Nose { Flat, Cone, InnerCone, Taper, FaceRing };

Nose noseOf(Family family)
{
    switch (family) {
    case Family::An:
    case Family::Jic:
    case Family::Sae45:
    case Family::Jis30:
    case Family::Bubble:
    case Family::InvertedFlare:
        return Nose::Cone;
    case Family::Bspp60:
    case Family::Jis60:
    case Family::Din24L:
    case Family::Din24S:
        return Nose::InnerCone;
    case Family::Npt:
    case Family::Nptf:
    case Family::Bspt:
        return Nose::Taper;
    case Family::Orfs:
        return Nose::FaceRing;
    default:
        return Nose::Flat;
    }
}

class Shape {
public:
    Shape(QPainter *painter, double radius, const ShapeInks &inks)
        : m_painter(painter), m_r(radius), m_inks(inks)
    {
    }

    double male(Family family)
    {
        const Nose nose = noseOf(family);
        const double tip = nose == Nose::Taper ? m_r * 0.84 : m_r;
        box(0, Neck, m_r * 0.84);
        outline({{Neck, -m_r}, {Neck + Reach, -tip}, {Neck + Reach, tip}, {Neck, m_r}});
        flanks(Neck, Neck + Reach, m_r, tip);
        if (family == Family::Orb || family == Family::Iso6149)
            rings(Neck / 2, m_r * 0.88);
        if (family == Family::Bspp || family == Family::Metric)
            box(0, 3.5, m_r * 1.25);
        return noseAt(Neck + Reach, nose);
    }
    double female(Turning turning, Family family)
    {
        const double outer = m_r + 7;
        const double from = turning == Turning::Fixed ? 0 : 5;
        const double length = from + Reach + 6;
        if (from > 0)
            box(0, from, m_r * 0.7);
        box(from, length, outer);
        hatch(QRectF(from, -outer, length - from, outer - m_r));
        hatch(QRectF(from, m_r, length - from, outer - m_r));
        m_painter->setPen(QPen(m_inks.line, 1));
        m_painter->setBrush(Qt::NoBrush);
        m_painter->drawLine(QPointF(from + 4, -m_r), QPointF(length, -m_r));
        m_painter->drawLine(QPointF(from + 4, m_r), QPointF(length, m_r));
        flanks(from + 8, length, m_r, m_r);
        const Nose nose = noseOf(family);
        if (nose == Nose::Cone || nose == Nose::InnerCone) // The cone stands at the bottom.
            outline({{from, -m_r * 0.7},
                     {from + 9, -m_r * 0.4},
                     {from + 9, m_r * 0.4},
                     {from, m_r * 0.7}});
        if (turning != Turning::Fixed)
            facets(from, length, outer);
        return length;
    }
    double barb()
    {
        for (int ridge = 0; ridge < 3; ++ridge) {
            const double x = 4 + ridge * 11;
            outline({{x, -m_r}, {x + 11, -m_r * 0.72}, {x + 11, m_r * 0.72}, {x, m_r}});
        }
        box(0, 4, m_r * 0.72);
        return 37;
    }
    double pipe(bool braided)
    {
        box(0, 42, m_r);
        if (braided)
            hatch(QRectF(0, -m_r, 42, 2 * m_r));
        return 42;
    }
    double banjo()
    {
        box(0, 8, m_r * 0.5);
        m_painter->setPen(QPen(m_inks.line, 1.4));
        m_painter->setBrush(m_inks.paper);
        m_painter->drawEllipse(QPointF(8 + m_r, 0), m_r * 1.15, m_r * 1.15);
        m_painter->drawEllipse(QPointF(8 + m_r, 0), m_r * 0.55, m_r * 0.55);
        return 8 + 2.15 * m_r;
    }
    double spigot()
    {
        box(0, 36, m_r * 0.8);
        box(16, 21, m_r);
        return 36;
    }
    double weld()
    {
        outline({{0, -m_r},
                 {16, -m_r},
                 {16, -m_r * 1.3},
                 {24, -m_r * 1.3},
                 {24, m_r * 1.3},
                 {16, m_r * 1.3},
                 {16, m_r},
                 {0, m_r}});
        return 24;
    }

private:
    void outline(const QPolygonF &line)
    {
        m_painter->setPen(QPen(m_inks.line, 1.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        m_painter->setBrush(m_inks.paper);
        m_painter->drawPolygon(line);
    }
    void box(double from, double to, double half)
    {
        outline({{from, -half}, {to, -half}, {to, half}, {from, half}});
    }
    /// Thread flanks, slanted as a right-hand thread's are.
    void flanks(double from, double to, double half, double halfThere)
    {
        m_painter->setPen(QPen(m_inks.hatch, 1));
        for (double x = from + 3; x < to - 1; x += 4) {
            const double at = half + (halfThere - half) * (x - from) / (to - from);
            m_painter->drawLine(QPointF(x - 1, at), QPointF(x + 1.5, -at));
        }
    }
    void facets(double from, double to, double half)
    {
        m_painter->setPen(QPen(m_inks.line, 1));
        for (const double y : {-half * 0.45, half * 0.45})
            m_painter->drawLine(QPointF(from, y), QPointF(to, y));
    }
    void hatch(const QRectF &area)
    {
        m_painter->save();
        m_painter->setClipRect(area, Qt::IntersectClip);
        m_painter->setPen(QPen(m_inks.hatch, 1));
        for (double x = area.left() - area.height(); x < area.right(); x += 5)
            m_painter->drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
        m_painter->restore();
    }
    void rings(double x, double y)
    {
        m_painter->setPen(Qt::NoPen);
        m_painter->setBrush(m_inks.ring);
        for (const double side : {-y, y})
            m_painter->drawEllipse(QPointF(x, side), 3.4, 3.4);
    }
    double noseAt(double x, Nose nose)
    {
        if (nose == Nose::Cone) {
            outline({{x, -m_r * 0.8}, {x + 10, -m_r * 0.42}, {x + 10, m_r * 0.42}, {x, m_r * 0.8}});
            return x + 10;
        }
        if (nose == Nose::InnerCone) {
            QPen pen(m_inks.line, 1, Qt::CustomDashLine);
            pen.setDashPattern({3, 2});
            m_painter->setPen(pen);
            m_painter->drawPolyline(QPolygonF(
                {{x, -m_r * 0.75}, {x - 10, -m_r * 0.35}, {x - 10, m_r * 0.35}, {x, m_r * 0.75}}));
        }
        if (nose == Nose::FaceRing)
            rings(x - 1, m_r * 0.6);
        return x;
    }

    QPainter *m_painter;
    double m_r;
    const ShapeInks &m_inks;
};

} // namespace

double diameterMm(const Port &port)
{
    const SizeRow *size = sizeOf(port);
    if (size == nullptr)
        return Unknown;
    if (size->thread)
        return size->thread->majorMm;
    return size->tubeMm > 0 ? size->tubeMm : Unknown;
}

double paintPort(QPainter *painter, const Port &port, double radius, const ShapeInks &inks)
{
    Shape shape(painter, radius, inks);
    switch (port.family) {
    case Family::Barb:
        return shape.barb();
    case Family::Hose:
        return shape.pipe(true);
    case Family::Tube:
        return shape.pipe(false);
    case Family::Banjo:
        return shape.banjo();
    case Family::Weld:
        return shape.weld();
    case Family::QuickConnect:
        return port.gender == Gender::Female ? shape.female(port.turning, port.family)
                                             : shape.spigot();
    default:
        break;
    }
    return port.gender == Gender::Female ? shape.female(port.turning, port.family)
                                         : shape.male(port.family);
}

} // namespace flarestock
