// SPDX-License-Identifier: MIT
//
// PartDrawing: a part drawn from its ports, in proportion to one another: a hexagon with its ends,
// a box for what has more inside, a length for what is cut. The ends are numbered in the order of
// the words beside it.

#pragma once

#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>
#include <QStringList>

namespace flarestock {

class PartDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList ports MEMBER m_ports NOTIFY portsChanged)
    Q_PROPERTY(QString body MEMBER m_body NOTIFY bodyChanged)
    Q_PROPERTY(int bend MEMBER m_bend NOTIFY bendChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY inkChanged)
    Q_PROPERTY(QColor quiet MEMBER m_quiet NOTIFY quietChanged)
    Q_PROPERTY(QColor accent MEMBER m_accent NOTIFY accentChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY paperChanged)
public:
    /// Ends beyond which no more are drawn.
    static constexpr int EndsMost = 4;

    explicit PartDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void portsChanged();
    void bodyChanged();
    void bendChanged();
    void inkChanged();
    void quietChanged();
    void accentChanged();
    void paperChanged();

private:
    void paintLength(QPainter *painter) const;
    void paintRing(QPainter *painter) const;
    void paintEnds(QPainter *painter) const;
    void paintBody(QPainter *painter, double half) const;
    void paintNumber(QPainter *painter, const QPointF &at, int number) const;

    QStringList m_ports; ///< "AN -6 male", in the model's words.
    QString m_body;      ///< "hex", "box", "length", "ring"
    int m_bend = 0;      ///< Degrees by which the second end turns away from the first.
    QColor m_ink;
    QColor m_quiet;
    QColor m_accent;
    QColor m_paper;
};

} // namespace flarestock
