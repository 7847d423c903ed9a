// SPDX-License-Identifier: MIT
//
// TallyDrawing: the pieces that one wants, each as a small square whose shape says where it comes
// from: with a punched hole its own, full from stock, an open box on order, a broken outline short.
// Lengths, and more pieces than can be told apart, are one bar in the same shapes.

#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace flarestock {

class TallyDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double own MEMBER m_own NOTIFY tallyChanged)
    Q_PROPERTY(double here MEMBER m_here NOTIFY tallyChanged)
    Q_PROPERTY(double coming MEMBER m_coming NOTIFY tallyChanged)
    Q_PROPERTY(double lacks MEMBER m_lacks NOTIFY tallyChanged)
    Q_PROPERTY(bool pieces MEMBER m_pieces NOTIFY tallyChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY inkChanged)
    Q_PROPERTY(QColor lackInk MEMBER m_lackInk NOTIFY inkChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY inkChanged)
public:
    explicit TallyDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void tallyChanged();
    void inkChanged();

private:
    enum class Shape { Own, Here, Coming, Lacks };
    void paintBox(QPainter &painter, Shape shape, const QRectF &box) const;

    double m_own = 0;
    double m_here = 0;
    double m_coming = 0;
    double m_lacks = 0;
    bool m_pieces = true;
    QColor m_ink;
    QColor m_lackInk;
    QColor m_paper;
};

} // namespace flarestock
