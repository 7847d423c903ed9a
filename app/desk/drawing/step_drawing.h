// SPDX-License-Identifier: MIT
//
// StepDrawing: a level over time as steps, in the colours that the screen gives. Where it rose
// there is a triangle that stands on its foot and is full, where it fell one that stands on its
// point and is hollow, where both happened on one day a square. `kept` is a level to compare with,
// as a broken line; below zero there is none.

#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QVariantList>

namespace flarestock {

class StepDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList steps MEMBER m_steps NOTIFY stepsChanged)
    Q_PROPERTY(double kept MEMBER m_kept NOTIFY keptChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY inkChanged)
    Q_PROPERTY(QColor rule MEMBER m_rule NOTIFY ruleChanged)
    Q_PROPERTY(QColor fill MEMBER m_fill NOTIFY fillChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY paperChanged)
    Q_PROPERTY(QColor warn MEMBER m_warn NOTIFY warnChanged)
public:
    explicit StepDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void stepsChanged();
    void keptChanged();
    void inkChanged();
    void ruleChanged();
    void fillChanged();
    void paperChanged();
    void warnChanged();

private:
    [[nodiscard]] QPointF at(const QVariantMap &step) const;
    [[nodiscard]] QPolygonF line() const;
    void paintMarks(QPainter *painter) const;

    QVariantList m_steps; ///< {at, level, came, went}, 0 to 1 from the left and from the foot.
    double m_kept = -1;
    QColor m_ink;
    QColor m_rule;
    QColor m_fill;
    QColor m_paper;
    QColor m_warn;
};

} // namespace flarestock
