// SPDX-License-Identifier: MIT
//
// PipeDrawing: the runs of a line map as strokes as thick as their bore, with rounded bends and the
// flow's arrow. A line that is not found, or whose bore is not published, is a thin broken stroke;
// two ports that join directly a short thin one. The run that is open has a rim. Colours come from
// the screen.

#pragma once

#include "app/desk/map/line_map.h"

#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>

#include <string>
#include <vector>

namespace flarestock {

struct PipeInks {
    QColor pipe;
    QColor rim; ///< Keeps two runs apart where they cross: the ground's.
    QColor arrow;
    QString openedRun = {}; ///< Has a rim of `openedInk`; empty for none.
    QColor openedInk = {};
};
void paintPipes(QPainter *painter, const MapLayout &map, const PipeInks &inks);

class PipeDrawing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(flarestock::LineMap *map READ map WRITE setMap NOTIFY mapChanged)
    Q_PROPERTY(QColor pipe MEMBER m_pipe NOTIFY pipeChanged)
    Q_PROPERTY(QColor rim MEMBER m_rim NOTIFY rimChanged)
    Q_PROPERTY(QString openedRun MEMBER m_openedRun NOTIFY openedRunChanged)
    Q_PROPERTY(QColor openedInk MEMBER m_openedInk NOTIFY openedInkChanged)
    Q_PROPERTY(QColor arrow MEMBER m_arrow NOTIFY arrowChanged)
public:
    explicit PipeDrawing(QQuickItem *parent = nullptr);
    [[nodiscard]] LineMap *map() const { return m_map; }
    void setMap(LineMap *map);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void mapChanged();
    void pipeChanged();
    void rimChanged();
    void arrowChanged();
    void openedRunChanged();
    void openedInkChanged();

private:
    void follow();

    QPointer<LineMap> m_map;
    std::vector<std::string> m_runs; ///< Of the map as it was last drawn.
    QColor m_pipe;
    QColor m_rim;
    QColor m_arrow;
    QString m_openedRun; ///< Has a rim of `openedInk`; empty for none.
    QColor m_openedInk;
};

} // namespace flarestock
