// SPDX-License-Identifier: MIT
//
// TagDrawing: the outline of a bin tag, two corners cut and a punched hole at the left, in the
// colours that the screen gives. `broken` draws the outline as dashes, `cut` is 0 for a plain card.

#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace flarestock {

class TagDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor fill MEMBER m_fill NOTIFY fillChanged)
    Q_PROPERTY(QColor edge MEMBER m_edge NOTIFY edgeChanged)
    Q_PROPERTY(QColor hole MEMBER m_hole NOTIFY holeChanged)
    Q_PROPERTY(double cut MEMBER m_cut NOTIFY cutChanged)
    Q_PROPERTY(double edgeWidth MEMBER m_edgeWidth NOTIFY edgeWidthChanged)
    Q_PROPERTY(bool broken MEMBER m_broken NOTIFY brokenChanged)
public:
    explicit TagDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void fillChanged();
    void edgeChanged();
    void holeChanged();
    void cutChanged();
    void edgeWidthChanged();
    void brokenChanged();

private:
    QColor m_fill;
    QColor m_edge;
    QColor m_hole;
    double m_cut = 8;
    double m_edgeWidth = 1;
    bool m_broken = false;
};

} // namespace flarestock
