// SPDX-License-Identifier: MIT

#include "app/desk/drawing/step_drawing.h"

#include <QPainter>

namespace flarestock {

namespace {

constexpr double MarkSize = 4.5;
constexpr double Inset = MarkSize + 1.5;

} // namespace

StepDrawing::StepDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    for (const auto changed :
         {&StepDrawing::stepsChanged, &StepDrawing::keptChanged, &StepDrawing::inkChanged,
          &StepDrawing::ruleChanged, &StepDrawing::fillChanged, &StepDrawing::paperChanged,
          &StepDrawing::warnChanged})
        connect(this, changed, this, [this] { update(); });
}

QPointF StepDrawing::at(const QVariantMap &step) const
{
    const double across = step.value(QStringLiteral("at")).toDouble();
    const double up = step.value(QStringLiteral("level")).toDouble();
    return {Inset + across * (width() - 2 * Inset), height() - Inset - up * (height() - 2 * Inset)};
}

/// From the left edge to the right one: level until the next step, then up or down.
QPolygonF StepDrawing::line() const
{
    QPolygonF line;
    for (const QVariant &one : m_steps) {
        const QPointF point = at(one.toMap());
        if (!line.isEmpty())
            line.append({point.x(), line.back().y()});
        line.append(point);
    }
    line.append({width() - Inset, line.back().y()});
    return line;
}

void StepDrawing::paintMarks(QPainter *painter) const
{
    painter->setPen(QPen(m_ink, 1.2));
    for (const QVariant &one : m_steps) {
        const QVariantMap step = one.toMap();
        const bool came = step.value(QStringLiteral("came")).toBool();
        const bool went = step.value(QStringLiteral("went")).toBool();
        if (!came && !went)
            continue;
        const QPointF point = at(step);
        painter->setBrush(came && !went ? m_ink : m_paper);
        if (came && went) {
            painter->drawRect(QRectF(point.x() - MarkSize + 1, point.y() - MarkSize + 1,
                                     2 * MarkSize - 2, 2 * MarkSize - 2));
            continue;
        }
        const double foot = came ? MarkSize : -MarkSize;
        painter->drawPolygon(QPolygonF({{point.x() - MarkSize, point.y() + foot},
                                        {point.x() + MarkSize, point.y() + foot},
                                        {point.x(), point.y() - foot}}));
    }
}

void StepDrawing::paint(QPainter *painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
    const double foot = height() - Inset;
    const QPointF left(Inset, foot);
    const QPointF right(width() - Inset, foot);
    if (!m_steps.isEmpty()) {
        const QPolygonF steps = line();
        painter->setPen(Qt::NoPen);
        painter->setBrush(m_fill);
        painter->drawPolygon(QPolygonF({left}) + steps + QPolygonF({right}));
        painter->setPen(QPen(m_ink, 1.6, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter->setBrush(Qt::NoBrush);
        painter->drawPolyline(steps);
    }
    painter->setPen(QPen(m_rule, 1));
    painter->drawLine(left, right);
    if (m_kept >= 0) {
        const double up = foot - m_kept * (height() - 2 * Inset);
        QPen broken(m_warn, 1.2);
        broken.setDashPattern({4, 3});
        painter->setPen(broken);
        painter->drawLine(QPointF(left.x(), up), QPointF(right.x(), up));
    }
    paintMarks(painter);
}

} // namespace flarestock
