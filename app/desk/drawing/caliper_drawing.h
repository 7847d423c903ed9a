// SPDX-License-Identifier: MIT
//
// CaliperDrawing: a threaded end between the jaws of a caliper, or the jaws inside a threaded hole,
// with what the caliper reads.

#pragma once

#include <QColor>
#include <QQuickPaintedItem>

namespace flarestock {

class CaliperDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool male MEMBER m_male NOTIFY maleChanged)
    Q_PROPERTY(QString reading MEMBER m_reading NOTIFY readingChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY inkChanged)
    Q_PROPERTY(QColor quiet MEMBER m_quiet NOTIFY quietChanged)
    Q_PROPERTY(QColor accent MEMBER m_accent NOTIFY accentChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY paperChanged)
public:
    explicit CaliperDrawing(QQuickItem *parent = nullptr);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void maleChanged();
    void readingChanged();
    void inkChanged();
    void quietChanged();
    void accentChanged();
    void paperChanged();

private:
    void paintBeam(QPainter *painter) const;
    void paintJaws(QPainter *painter) const;
    void paintThread(QPainter *painter) const;

    bool m_male = true;
    QString m_reading;
    QColor m_ink;
    QColor m_quiet;
    QColor m_accent;
    QColor m_paper;
};

} // namespace flarestock
