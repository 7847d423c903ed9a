// SPDX-License-Identifier: MIT

#include "app/desk/plot/plot_drawing.h"

#include <QPainter>
#include <QPainterPath>

namespace flarestock {

namespace {

constexpr int TintAlpha = 36;
constexpr double HatchApart = 6;

/// Slanting strokes through the area; a brush pattern would not grow with the screen's scale.
void hatch(QPainter *painter, const QPolygonF &outline, const QColor &colour)
{
    QPainterPath path;
    path.addPolygon(outline);
    const QRectF box = outline.boundingRect();
    painter->save();
    painter->setClipPath(path);
    painter->setPen(QPen(colour, 1.3));
    for (double x = box.left() - box.height(); x < box.right(); x += HatchApart)
        painter->drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
    painter->restore();
    painter->setPen(QPen(colour, 1.2));
    painter->setBrush(Qt::NoBrush);
    painter->drawPolygon(outline);
}

void paintStroke(QPainter *painter, const PlotStroke &stroke, const QColor &colour)
{
    QPen pen(colour, stroke.thick, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (stroke.dash == PlotStroke::Dash::Broken)
        pen.setDashPattern({5, 3});
    else if (stroke.dash == PlotStroke::Dash::Dotted)
        pen.setDashPattern({1.5, 3});
    painter->setPen(pen);
    painter->setBrush(Qt::NoBrush);
    painter->drawPolyline(stroke.line);
}

} // namespace

PlotDrawing::PlotDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &PlotDrawing::inksChanged, this, [this] { update(); });
}

void PlotDrawing::setPlot(Plot *plot)
{
    if (m_plot == plot)
        return;
    if (m_plot != nullptr)
        m_plot->disconnect(this);
    m_plot = plot;
    if (m_plot != nullptr)
        connect(m_plot, &Plot::drawn, this, [this] { update(); });
    Q_EMIT plotChanged();
    update();
}

QColor PlotDrawing::colour(PlotInk ink) const
{
    return m_inks.value(static_cast<int>(ink)).value<QColor>();
}

void PlotDrawing::paintArea(QPainter *painter, const PlotArea &area) const
{
    QColor ink = colour(area.ink);
    if (area.fill == PlotArea::Fill::Hatched)
        return hatch(painter, area.outline, ink);
    if (area.fill == PlotArea::Fill::Tint)
        ink.setAlpha(TintAlpha);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawPolygon(area.outline);
}

void PlotDrawing::paint(QPainter *painter)
{
    if (m_plot == nullptr || !m_plot->isThere())
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    for (const PlotArea &area : m_plot->layout().areas)
        paintArea(painter, area);
    for (const PlotStroke &stroke : m_plot->layout().strokes)
        paintStroke(painter, stroke, colour(stroke.ink));
}

} // namespace flarestock
