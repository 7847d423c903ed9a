// SPDX-License-Identifier: MIT
//
// PlotDrawing: the lines and areas of a plot, in the colours that the screen gives. What is hatched
// differs by its strokes from what is full, so that neither needs its colour.

#pragma once

#include "app/desk/plot/plot.h"

#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>

namespace flarestock {

class PlotDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(flarestock::Plot *plot READ plot WRITE setPlot NOTIFY plotChanged)
    Q_PROPERTY(QVariantList inks MEMBER m_inks NOTIFY inksChanged)
public:
    explicit PlotDrawing(QQuickItem *parent = nullptr);
    [[nodiscard]] Plot *plot() const { return m_plot; }
    void setPlot(Plot *plot);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void plotChanged();
    void inksChanged();

private:
    [[nodiscard]] QColor colour(PlotInk ink) const;
    void paintArea(QPainter *painter, const PlotArea &area) const;

    QPointer<Plot> m_plot;
    QVariantList m_inks; ///< One colour for each PlotInk, in its order.
};

} // namespace flarestock
