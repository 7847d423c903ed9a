// SPDX-License-Identifier: MIT

#include "app/desk/drawing/tag_drawing.h"

#include <QPainter>

namespace flarestock {

TagDrawing::TagDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed :
         {&TagDrawing::fillChanged, &TagDrawing::edgeChanged, &TagDrawing::holeChanged,
          &TagDrawing::cutChanged, &TagDrawing::edgeWidthChanged, &TagDrawing::brokenChanged})
        connect(this, changed, this, [this] { update(); });
}

void TagDrawing::paint(QPainter *painter)
{
    const double inset = m_edgeWidth / 2 + 0.25;
    const QRectF box(inset, inset, width() - 2 * inset, height() - 2 * inset);
    const QPolygonF outline({{box.left() + m_cut, box.top()},
                             box.topRight(),
                             box.bottomRight(),
                             {box.left() + m_cut, box.bottom()},
                             {box.left(), box.bottom() - m_cut},
                             {box.left(), box.top() + m_cut}});
    QPen pen(m_edge, m_edgeWidth, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (m_broken)
        pen.setDashPattern({4, 3});
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(pen);
    painter->setBrush(m_fill);
    painter->drawPolygon(outline);
    if (m_hole.alpha() == 0)
        return;
    painter->setPen(QPen(m_edge, 1));
    painter->setBrush(m_hole);
    painter->drawEllipse(QPointF(box.left() + 8, box.center().y()), 3, 3);
}

} // namespace flarestock
