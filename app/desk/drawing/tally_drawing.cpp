// SPDX-License-Identifier: MIT

#include "app/desk/drawing/tally_drawing.h"

#include <QPainter>

#include <cmath>

namespace flarestock {

namespace {

constexpr double Gap = 3;

} // namespace

TallyDrawing::TallyDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &TallyDrawing::tallyChanged, this, [this] { update(); });
    connect(this, &TallyDrawing::inkChanged, this, [this] { update(); });
}

void TallyDrawing::paint(QPainter *painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const std::pair<Shape, double> parts[] = {{Shape::Own, m_own},
                                              {Shape::Here, m_here},
                                              {Shape::Coming, m_coming},
                                              {Shape::Lacks, m_lacks}};
    const double total = m_own + m_here + m_coming + m_lacks;
    const double side = height();
    if (total <= 0 || side <= 0)
        return;
    double x = 0;
    if (m_pieces && total * (side + Gap) - Gap <= width()) {
        for (const auto &[shape, count] : parts) {
            for (long piece = std::lround(count); piece > 0; --piece, x += side + Gap)
                paintBox(*painter, shape, {x, 0, side, side});
        }
        return;
    }
    for (const auto &[shape, amount] : parts) {
        const double wide = amount <= 0 ? 0 : std::max(side / 2, width() * amount / total);
        if (wide > 0)
            paintBox(*painter, shape, {x, 0, std::min(wide, width() - x), side});
        x += wide;
    }
}

void TallyDrawing::paintBox(QPainter &painter, Shape shape, const QRectF &box) const
{
    const QRectF inner = box.adjusted(0.75, 0.75, -0.75, -0.75);
    QPen pen(shape == Shape::Lacks ? m_lackInk : m_ink, 1.5, Qt::SolidLine, Qt::FlatCap,
             Qt::MiterJoin);
    if (shape == Shape::Lacks)
        pen.setDashPattern({2, 1.6});
    painter.setPen(pen);
    const bool isFull = shape == Shape::Own || shape == Shape::Here;
    painter.setBrush(isFull ? m_ink : m_paper);
    painter.drawRect(inner);
    if (shape == Shape::Own) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_paper);
        painter.drawEllipse(inner.center(), box.height() / 5, box.height() / 5);
    } else if (shape == Shape::Coming) { // The lid.
        painter.drawLine(QPointF(inner.center().x(), inner.top()),
                         QPointF(inner.center().x(), inner.center().y()));
    }
}

} // namespace flarestock
