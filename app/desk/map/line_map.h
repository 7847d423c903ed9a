// SPDX-License-Identifier: MIT
//
// LineMap: the line map as QML sees it. It lays the build out for the width that the screen gives
// it, and knows which mark or plate lies near a finger and which one an arrow key leads to.
//
// A spot is a place on the map that can be opened, written "joint|supply.start", "station|pump" or
// "run|supply".

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/map/map_layout.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace flarestock {

class LineMap : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(double width READ width WRITE setWidth NOTIFY drawn)
    Q_PROPERTY(double room READ room WRITE setRoom NOTIFY drawn)
    Q_PROPERTY(double height READ height NOTIFY drawn)
    Q_PROPERTY(flarestock::Rows *plates READ plates CONSTANT)
    Q_PROPERTY(flarestock::Rows *marks READ marks CONSTANT)
    Q_PROPERTY(flarestock::Rows *runs READ runs CONSTANT)
    Q_PROPERTY(flarestock::Rows *bands READ bands CONSTANT)
public:
    enum Way { Back, On, Up, Down, First, Last };
    Q_ENUM(Way)

    explicit LineMap(QObject *parent = nullptr);

    [[nodiscard]] double width() const { return m_width; }
    void setWidth(double width);
    /// The height that it should not exceed; it may still.
    [[nodiscard]] double room() const { return m_room; }
    void setRoom(double room);
    [[nodiscard]] double height() const { return m_layout.height; }
    [[nodiscard]] const MapLayout &layout() const { return m_layout; }
    [[nodiscard]] Rows *plates() { return &m_plates; }
    [[nodiscard]] Rows *marks() { return &m_marks; }
    [[nodiscard]] Rows *runs() { return &m_runs; }
    [[nodiscard]] Rows *bands() { return &m_bands; }

    void show(const WorkedOut &worked);
    void setUnits(Units units);
    /// Joints, by id, that are marked as what was looked for.
    void setFound(std::set<QString> joints);

    /// The spot under or near a point; empty where none is within a finger's width. A mark comes
    /// before its plate, a plate before a run.
    Q_INVOKABLE QString near(double x, double y) const;
    /// The spot that a key leads to. From no spot or an unknown one: the first.
    Q_INVOKABLE QString step(const QString &from, flarestock::LineMap::Way way) const;
    /// Where a spot lies; an empty rectangle where it is not on the map.
    Q_INVOKABLE QRectF place(const QString &spot) const;

Q_SIGNALS:
    void drawn();

private:
    void layOut();
    void findSpots();
    void addSpot(const QString &kind, const std::string &id, const QRectF &box);
    void addMark(const std::string &joint);
    void addRun(const PlacedRun &run, bool leadsBack);
    [[nodiscard]] QString nearestMark(const QPointF &touch, double reach) const;
    [[nodiscard]] QString nearestRun(const QPointF &touch) const;

    WorkedOut m_worked;
    Units m_units = Units::Metric;
    std::set<QString> m_found;
    MapLayout m_layout;
    double m_width = 960;
    double m_room = 0;
    QTimer m_soon; ///< Width and room come one after the other: it is laid out once for both.
    struct Spot {
        QString name;
        QRectF box;
    };
    std::vector<Spot> m_spots; ///< In flow order.
    Rows m_plates;
    Rows m_marks;
    Rows m_runs;
    Rows m_bands;
};

} // namespace flarestock
