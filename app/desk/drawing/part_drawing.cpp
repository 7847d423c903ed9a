// SPDX-License-Identifier: MIT

#include "app/desk/drawing/part_drawing.h"

#include "app/desk/drawing/port_shape.h"

#include <QPainter>

#include <algorithm>
#include <array>
#include <vector>

namespace flarestock {

namespace {

constexpr double Wide = 216; // Everything is drawn on paper of this size and then fitted in.
constexpr double High = 112;
constexpr double LargestRadius = 21;
constexpr double LeastRadius = 7;

std::vector<Port> readPorts(const QStringList &texts)
{
    std::vector<Port> ports;
    for (const QString &text : texts) {
        const auto port = Port::parse(text.toStdString());
        if (port && static_cast<int>(ports.size()) < PartDrawing::EndsMost)
            ports.push_back(*port);
    }
    return ports;
}

} // namespace

PartDrawing::PartDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed :
         {&PartDrawing::portsChanged, &PartDrawing::bodyChanged, &PartDrawing::bendChanged,
          &PartDrawing::inkChanged, &PartDrawing::quietChanged, &PartDrawing::accentChanged,
          &PartDrawing::paperChanged})
        connect(this, changed, this, [this] { update(); });
}

void PartDrawing::paintNumber(QPainter *painter, const QPointF &at, int number) const
{
    painter->setPen(QPen(m_accent, 1.2));
    painter->setBrush(m_paper);
    painter->drawEllipse(at, 8, 8);
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(10);
    font.setBold(true);
    painter->setFont(font);
    painter->drawText(QRectF(at.x() - 8, at.y() - 8, 16, 16), Qt::AlignCenter,
                      QString::number(number));
}

void PartDrawing::paintBody(QPainter *painter, double half) const
{
    painter->setPen(QPen(m_ink, 1.4));
    painter->setBrush(m_paper);
    if (m_body == QStringLiteral("box")) {
        painter->drawRoundedRect(QRectF(-40, -34, 80, 68), 7, 7);
        return;
    }
    const double height = half + 9;
    painter->drawRect(QRectF(-13, -height, 26, 2 * height)); // A hexagon seen from its side.
    painter->setPen(QPen(m_ink, 1));
    for (const double y : {-height * 0.45, height * 0.45})
        painter->drawLine(QPointF(-13, y), QPointF(13, y));
}

void PartDrawing::paintEnds(QPainter *painter) const
{
    const std::vector<Port> ports = readPorts(m_ports);
    double largest = 1;
    for (const Port &port : ports)
        largest = std::max(largest, diameterMm(port));
    const bool isBox = m_body == QStringLiteral("box");
    const double face = isBox ? 40 : 13;
    // The second end goes on from the first, or turns away from it; further ones go down and up.
    const std::array<double, 4> ways{180, static_cast<double>(-m_bend), 90, -90};
    const ShapeInks inks{m_ink, m_quiet, m_paper, m_ink};
    std::vector<std::pair<QPointF, int>> numbers;
    double half = LeastRadius;
    for (std::size_t at = 0; at < ports.size(); ++at) {
        const double way = ports.size() == 1 ? 0 : ways[at];
        const double radius =
            std::max(LeastRadius, LargestRadius * diameterMm(ports[at]) / largest);
        half = std::max(half, radius);
        painter->save();
        painter->rotate(way);
        const bool upright = at >= 2;
        painter->translate(isBox && upright ? 34 : upright ? half + 9 : face, 0);
        if (upright)
            painter->scale(0.72, 0.72);
        const double reach = paintPort(painter, ports[at], upright ? radius * 0.9 : radius, inks);
        numbers.emplace_back(painter->combinedTransform().map(QPointF(reach + 12, 0)),
                             static_cast<int>(at) + 1);
        painter->restore();
    }
    paintBody(painter, half);
    const QTransform back = painter->combinedTransform().inverted();
    if (ports.size() > 1) {
        for (const auto &[at, number] : numbers)
            paintNumber(painter, back.map(at), number);
    }
}

void PartDrawing::paintLength(QPainter *painter) const
{
    painter->setPen(QPen(m_ink, 1.4));
    painter->setBrush(m_paper);
    painter->drawRect(QRectF(-98, -15, 196, 30));
    painter->save();
    painter->setClipRect(QRectF(-98, -15, 196, 30), Qt::IntersectClip);
    painter->setPen(QPen(m_quiet, 1));
    for (double x = -150; x < 150; x += 7) {
        painter->drawLine(QPointF(x, -15), QPointF(x + 30, 15));
        painter->drawLine(QPointF(x + 30, -15), QPointF(x, 15));
    }
    painter->restore();
    painter->setPen(QPen(m_ink, 1.4));
    for (const double x : {-98.0, 98.0})
        painter->drawEllipse(QPointF(x, 0), 5, 15);
}

void PartDrawing::paintRing(QPainter *painter) const
{
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(m_ink, 7));
    painter->drawEllipse(QPointF(-40, 0), 30, 30);
    painter->setPen(Qt::NoPen);
    painter->setBrush(m_ink);
    for (const double y : {-30.0, 30.0})
        painter->drawEllipse(QPointF(52, y), 3.5, 3.5);
    QPen pen(m_quiet, 1, Qt::CustomDashLine);
    pen.setDashPattern({8, 3, 2, 3});
    painter->setPen(pen);
    painter->drawLine(QPointF(52, -44), QPointF(52, 44));
}

void PartDrawing::paint(QPainter *painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate(width() / 2, height() / 2);
    const double fit = std::min({width() / Wide, height() / High, 1.7});
    painter->scale(fit, fit);
    if (m_body == QStringLiteral("length"))
        return paintLength(painter);
    if (m_body == QStringLiteral("ring"))
        return paintRing(painter);
    QPen axis(m_quiet, 1, Qt::CustomDashLine);
    axis.setDashPattern({8, 3, 2, 3});
    painter->setPen(axis);
    painter->drawLine(QPointF(-100, 0), QPointF(m_bend == 0 ? 100 : 0, 0));
    paintEnds(painter);
}

} // namespace flarestock
