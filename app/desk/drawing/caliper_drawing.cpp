// SPDX-License-Identifier: MIT

#include "app/desk/drawing/caliper_drawing.h"

#include <QPainter>

#include <algorithm>

namespace flarestock {

namespace {

// Everything is drawn on paper of 230 by 150 and then fitted in.
constexpr double LeftFace = 36;   // Where the thread is touched,
constexpr double RightFace = 112; // and there.

} // namespace

CaliperDrawing::CaliperDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed : {&CaliperDrawing::maleChanged, &CaliperDrawing::readingChanged,
                               &CaliperDrawing::inkChanged, &CaliperDrawing::quietChanged,
                               &CaliperDrawing::accentChanged, &CaliperDrawing::paperChanged})
        connect(this, changed, this, [this] { update(); });
}

void CaliperDrawing::paintBeam(QPainter *painter) const
{
    painter->setPen(QPen(m_ink, 1.4));
    painter->setBrush(m_paper);
    painter->drawRect(QRectF(8, 14, 214, 22));
    painter->setPen(QPen(m_quiet, 1));
    for (int mark = 0; mark < 26; ++mark) {
        const double x = 14 + mark * 8;
        painter->drawLine(QPointF(x, 36), QPointF(x, mark % 5 == 0 ? 27 : 31));
    }
}

void CaliperDrawing::paintJaws(QPainter *painter) const
{
    painter->setPen(QPen(m_ink, 1.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter->setBrush(m_paper);
    const double out = m_male ? -1 : 1; // Jaws touch from outside, or from inside.
    for (const auto &[face, side] : {std::pair(LeftFace, out), std::pair(RightFace, -out)})
        painter->drawPolygon(QPolygonF({{face, 36},
                                        {face, 122},
                                        {face + side * 6, 122},
                                        {face + side * 20, 62},
                                        {face + side * 20, 36}}));
    // The slide with its reading.
    painter->setPen(QPen(m_accent, 1.6));
    painter->drawRoundedRect(QRectF(124, 4, 94, 26), 3, 3);
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(14);
    font.setBold(true);
    painter->setFont(font);
    painter->drawText(QRectF(124, 4, 94, 26), Qt::AlignCenter, m_reading);
}

void CaliperDrawing::paintThread(QPainter *painter) const
{
    painter->setPen(QPen(m_ink, 1.4));
    painter->setBrush(m_paper);
    if (m_male) {
        painter->drawRect(QRectF(LeftFace, 74, RightFace - LeftFace, 44));
        painter->drawRect(QRectF(LeftFace - 6, 118, RightFace - LeftFace + 12, 22));
    } else {
        painter->drawRect(QRectF(LeftFace - 22, 66, 22, 74));
        painter->drawRect(QRectF(RightFace, 66, 22, 74));
    }
    painter->setPen(QPen(m_quiet, 1.2));
    for (double y = 78; y < 116; y += 6) {
        if (m_male) {
            painter->drawLine(QPointF(LeftFace, y + 3), QPointF(RightFace, y));
            continue;
        }
        painter->drawLine(QPointF(LeftFace - 8, y), QPointF(LeftFace, y + 2));
        painter->drawLine(QPointF(RightFace, y), QPointF(RightFace + 8, y + 2));
    }
}

void CaliperDrawing::paint(QPainter *painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const double fit = std::min(width() / 230, height() / 150);
    painter->translate((width() - 230 * fit) / 2, (height() - 150 * fit) / 2);
    painter->scale(fit, fit);
    paintThread(painter);
    paintBeam(painter);
    paintJaws(painter);
}

} // namespace flarestock
