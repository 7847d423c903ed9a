// SPDX-License-Identifier: MIT
//
// Plot: a picture of a build as QML sees it. It is laid out for the size that the screen gives it,
// and knows which of its points is in hand, which lies near a finger and which one a key leads to.

#pragma once

#include "app/desk/plot/plot_layout.h"
#include "app/desk/rows/rows.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace flarestock {

class Plot : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(double width READ width WRITE setWidth NOTIFY drawn)
    Q_PROPERTY(double room READ room WRITE setRoom NOTIFY drawn)
    Q_PROPERTY(double height READ height NOTIFY drawn)
    Q_PROPERTY(bool isThere READ isThere NOTIFY drawn)
    Q_PROPERTY(QString title READ title NOTIFY drawn)
    Q_PROPERTY(QString says READ says NOTIFY drawn)
    Q_PROPERTY(QString whyNone READ whyNone NOTIFY drawn)
    Q_PROPERTY(QString whatToDo READ whatToDo NOTIFY drawn)
    Q_PROPERTY(QStringList views READ views NOTIFY drawn)
    Q_PROPERTY(int view READ view WRITE setView NOTIFY drawn)
    Q_PROPERTY(QString current READ current NOTIFY currentChanged)
    Q_PROPERTY(QString currentSays READ currentSays NOTIFY currentChanged)
    Q_PROPERTY(flarestock::Rows *labels READ labels CONSTANT)
    Q_PROPERTY(flarestock::Rows *marks READ marks CONSTANT)
    Q_PROPERTY(flarestock::Rows *points READ points CONSTANT)
public:
    enum Way { Back, On, First, Last };
    Q_ENUM(Way)

    explicit Plot(QObject *parent = nullptr);

    /// How its view of that number is drawn in so much space.
    using Draw = std::function<PlotLayout(int view, const PlotSpace &space)>;
    /// From now on it shows this; `views` are the words of what there is to choose from, none or
    /// two at least. Which of them is shown stays, where there are as many.
    void show(const QStringList &views, Draw draw);
    void clear();

    [[nodiscard]] double width() const { return m_space.width; }
    void setWidth(double width);
    /// The height that it fills; it may take more.
    [[nodiscard]] double room() const { return m_space.height; }
    void setRoom(double room);
    [[nodiscard]] double height() const { return m_layout.space.height; }
    [[nodiscard]] bool isThere() const { return m_draw && m_layout.isThere(); }
    [[nodiscard]] QString title() const { return m_layout.title; }
    [[nodiscard]] QString says() const { return m_layout.says; }
    [[nodiscard]] QString whyNone() const { return m_layout.whyNone; }
    [[nodiscard]] QString whatToDo() const { return m_layout.whatToDo; }
    [[nodiscard]] QStringList views() const { return m_views; }
    [[nodiscard]] int view() const { return m_view; }
    void setView(int view);
    [[nodiscard]] QString current() const { return m_current; }
    [[nodiscard]] QString currentSays() const;
    [[nodiscard]] const PlotLayout &layout() const { return m_layout; }
    [[nodiscard]] Rows *labels() { return &m_labels; }
    [[nodiscard]] Rows *marks() { return &m_marks; }
    [[nodiscard]] Rows *points() { return &m_points; }

    /// The point under or near a finger; empty where none is.
    Q_INVOKABLE QString near(double x, double y) const;
    /// The point that a key leads to. From none: the first.
    Q_INVOKABLE QString step(flarestock::Plot::Way way) const;
    /// Takes a point in hand. What it opens; empty where it opens nothing.
    Q_INVOKABLE QString take(const QString &point);
    /// Takes in hand the first point that opens this; nothing where none does.
    Q_INVOKABLE void takeWhatOpens(const QString &opened);
    /// What the point in hand opens.
    Q_INVOKABLE QString opens() const;
    /// Where a point lies; an empty rectangle where there is none.
    Q_INVOKABLE QRectF place(const QString &point) const;

Q_SIGNALS:
    void drawn();
    void currentChanged();

private:
    void layOut();
    [[nodiscard]] const PlotPoint *point(const QString &key) const;

    Draw m_draw;
    QStringList m_views;
    int m_view = 0;
    PlotSpace m_space{640, 300};
    PlotLayout m_layout;
    QString m_current;
    Rows m_labels;
    Rows m_marks;
    Rows m_points;
    QTimer m_soon; ///< Width and room come one after the other: it is laid out once for both.
};

} // namespace flarestock
