// SPDX-License-Identifier: MIT
//
// MarkDrawing: one mark of Standing, told by its shape alone: disc with tick, ring round a dot,
// triangle, square with cross, halves of a diamond that do not meet, page, broken circle. Where
// pieces have to be bought a broken circle surrounds it.

#pragma once

#include "app/desk/words/standing.h"

#include <QColor>
#include <QQuickPaintedItem>

namespace flarestock {

/// A mark about the painter's origin, 26 units wide with the circle round it.
struct MarkInks {
    QColor ink;
    QColor paper;
};
void paintMark(QPainter *painter, Standing::Mark mark, bool toBuy, const MarkInks &inks);

class MarkDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark MEMBER m_mark NOTIFY markChanged)
    Q_PROPERTY(bool toBuy MEMBER m_toBuy NOTIFY toBuyChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY inkChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY paperChanged)
public:
    explicit MarkDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void markChanged();
    void toBuyChanged();
    void inkChanged();
    void paperChanged();

private:
    int m_mark = Standing::Made;
    bool m_toBuy = false;
    QColor m_ink;
    QColor m_paper;
};

} // namespace flarestock
