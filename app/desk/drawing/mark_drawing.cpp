// SPDX-License-Identifier: MIT

#include "app/desk/drawing/mark_drawing.h"

#include <QPainter>
#include <QPainterPath>

namespace flarestock {

namespace {

// All shapes are drawn in a square from -10 to 10.

void paintTick(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawEllipse(QPointF(0, 0), 7.5, 7.5);
    painter->setPen(QPen(paper, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(Qt::NoBrush);
    painter->drawPolyline(QPolygonF({{-3.4, 0.2}, {-1.0, 2.8}, {3.6, -2.6}}));
}

void paintRing(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(QPen(ink, 2.4));
    painter->setBrush(paper);
    painter->drawEllipse(QPointF(0, 0), 6.4, 6.4);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawEllipse(QPointF(0, 0), 2.6, 2.6);
}

void paintTriangle(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(QPen(ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(ink);
    painter->drawPolygon(QPolygonF({{0, -7.6}, {8.2, 6.6}, {-8.2, 6.6}}));
    painter->setPen(QPen(paper, 2, Qt::SolidLine, Qt::RoundCap));
    painter->drawLine(QPointF(0, -2.6), QPointF(0, 1.6));
    painter->drawPoint(QPointF(0, 4.4));
}

void paintCross(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawRect(QRectF(-7, -7, 14, 14));
    painter->setPen(QPen(paper, 2.2, Qt::SolidLine, Qt::RoundCap));
    painter->drawLine(QPointF(-3.2, -3.2), QPointF(3.2, 3.2));
    painter->drawLine(QPointF(-3.2, 3.2), QPointF(3.2, -3.2));
}

void paintHalves(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(QPen(ink, 2.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(paper);
    painter->drawPolygon(QPolygonF({{-8.6, 0}, {-2.2, -6.6}, {-2.2, 6.6}}));
    painter->drawPolygon(QPolygonF({{8.6, 0}, {2.2, -6.6}, {2.2, 6.6}}));
}

void paintPage(QPainter *painter, const QColor &ink, const QColor &paper)
{
    painter->setPen(QPen(ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->setBrush(paper);
    painter->drawPolygon(QPolygonF({{-5.6, -7}, {2.4, -7}, {5.6, -3.6}, {5.6, 7}, {-5.6, 7}}));
    painter->drawLine(QPointF(-2.6, -1.6), QPointF(2.6, -1.6));
    painter->drawLine(QPointF(-2.6, 1.4), QPointF(2.6, 1.4));
    painter->drawLine(QPointF(-2.6, 4.2), QPointF(0.8, 4.2));
}

void paintBrokenCircle(QPainter *painter, const QColor &ink, double radius)
{
    QPen pen(ink, 1.8);
    pen.setCapStyle(Qt::FlatCap);
    pen.setDashPattern({2.4, 1.9});
    painter->setPen(pen);
    painter->setBrush(Qt::NoBrush);
    painter->drawEllipse(QPointF(0, 0), radius, radius);
}

void paintShape(QPainter *painter, Standing::Mark mark, const QColor &ink, const QColor &paper)
{
    switch (mark) {
    case Standing::Made:
        return paintTick(painter, ink, paper);
    case Standing::Needs:
        return paintRing(painter, ink, paper);
    case Standing::Caution:
        return paintTriangle(painter, ink, paper);
    case Standing::Trap:
        return paintCross(painter, ink, paper);
    case Standing::Open:
        return paintHalves(painter, ink, paper);
    case Standing::Note:
        return paintPage(painter, ink, paper);
    default:
        return paintBrokenCircle(painter, ink, 7);
    }
}

} // namespace

void paintMark(QPainter *painter, Standing::Mark mark, bool toBuy, const MarkInks &inks)
{
    paintShape(painter, mark, inks.ink, inks.paper);
    if (toBuy && mark != Standing::Short)
        paintBrokenCircle(painter, inks.ink, 11.4);
}

MarkDrawing::MarkDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed : {&MarkDrawing::markChanged, &MarkDrawing::toBuyChanged,
                               &MarkDrawing::inkChanged, &MarkDrawing::paperChanged})
        connect(this, changed, this, [this] { update(); });
}

void MarkDrawing::paint(QPainter *painter)
{
    const double side = std::min(width(), height());
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate(width() / 2, height() / 2);
    // With the surrounding circle a mark takes 26 of its units, so that both sizes agree.
    painter->scale(side / 26, side / 26);
    paintMark(painter, static_cast<Standing::Mark>(m_mark), m_toBuy, {m_ink, m_paper});
}

} // namespace flarestock
