// SPDX-License-Identifier: MIT
//
// BlocksDrawing: pieces side by side, one block each: full is there, a broken outline should be
// there and is not, a crossed one is to go. Beyond what fits, one block stands for several.

#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace flarestock {

class BlocksDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int there MEMBER m_there NOTIFY blocksChanged)
    Q_PROPERTY(int lack MEMBER m_lack NOTIFY blocksChanged)
    Q_PROPERTY(int over MEMBER m_over NOTIFY blocksChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY blocksChanged)
    Q_PROPERTY(QColor lackInk MEMBER m_lackInk NOTIFY blocksChanged)
    Q_PROPERTY(QColor lackFill MEMBER m_lackFill NOTIFY blocksChanged)
    Q_PROPERTY(QColor overInk MEMBER m_overInk NOTIFY blocksChanged)
public:
    explicit BlocksDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void blocksChanged();

private:
    void paintLacking(QPainter &painter, const QRectF &block) const;
    void paintOver(QPainter &painter, const QRectF &block) const;

    int m_there = 0;
    int m_lack = 0;
    int m_over = 0;
    QColor m_ink;
    QColor m_lackInk;
    QColor m_lackFill;
    QColor m_overInk;
};

} // namespace flarestock
