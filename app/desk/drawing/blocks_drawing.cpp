// SPDX-License-Identifier: MIT

#include "app/desk/drawing/blocks_drawing.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace flarestock {

BlocksDrawing::BlocksDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &BlocksDrawing::blocksChanged, this, [this] { update(); });
}

void BlocksDrawing::paint(QPainter *painter)
{
    constexpr int Most = 20; // So many blocks are told apart.
    constexpr double Between = 2;
    constexpr double Widest = 14;
    constexpr double Narrowest = 3;
    const int all = m_there + m_lack + m_over;
    const double scale = all > Most ? static_cast<double>(Most) / all : 1;
    const auto blocks = [scale](int pieces) { // What there is any of has a block.
        return pieces > 0 ? std::max(1, static_cast<int>(std::lround(pieces * scale))) : 0;
    };
    const int lacking = blocks(m_lack);
    const int over = blocks(m_over);
    const int there = std::min(m_there, std::max(0, std::min(all, Most) - lacking - over));
    const int count = std::max(1, there + lacking + over);
    const double wide = std::clamp(width() / count - Between, Narrowest, Widest);
    for (int at = 0; at < there + lacking + over; ++at) {
        const QRectF block(at * (wide + Between), 0, wide, height());
        if (at < there)
            painter->fillRect(block, m_ink);
        else if (at < there + lacking)
            paintLacking(*painter, block);
        else
            paintOver(*painter, block);
    }
}

void BlocksDrawing::paintLacking(QPainter &painter, const QRectF &block) const
{
    QPen pen(m_lackInk, 1);
    pen.setDashPattern({2, 1.6});
    painter.setPen(pen);
    painter.setBrush(m_lackFill);
    painter.drawRect(block.adjusted(0.5, 0.5, -0.5, -0.5));
}

void BlocksDrawing::paintOver(QPainter &painter, const QRectF &block) const
{
    painter.setPen(QPen(m_overInk, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(block.adjusted(0.5, 0.5, -0.5, -0.5));
    painter.setPen(QPen(m_overInk, 1.5));
    const QPointF middle = block.center();
    painter.drawLine(QPointF(block.left() + 2, middle.y()), QPointF(block.right() - 2, middle.y()));
    painter.drawLine(QPointF(middle.x(), block.top() + 2), QPointF(middle.x(), block.bottom() - 2));
}

} // namespace flarestock
