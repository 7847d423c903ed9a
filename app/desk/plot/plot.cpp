// SPDX-License-Identifier: MIT

#include "app/desk/plot/plot.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

std::vector<Row> labelRows(const PlotLayout &layout)
{
    std::vector<Row> rows;
    for (const PlotLabel &label : layout.labels)
        rows.push_back({QString::number(rows.size()),
                        {label.box.x(), label.box.y(), label.box.width(), label.box.height(),
                         label.words, static_cast<int>(label.ink), label.strong}});
    return rows;
}

std::vector<Row> markRowsOf(const PlotLayout &layout)
{
    std::vector<Row> rows;
    for (const PlotMark &mark : layout.marks)
        rows.push_back({QString::number(rows.size()),
                        {mark.at.x(), mark.at.y(), static_cast<int>(mark.mark)}});
    return rows;
}

std::vector<Row> pointRows(const PlotLayout &layout)
{
    std::vector<Row> rows;
    for (const PlotPoint &point : layout.points)
        rows.push_back({point.key, {point.at.x(), point.at.y(), point.isDot, point.says}});
    return rows;
}

double areaOf(const QRectF &box)
{
    return box.width() * box.height();
}

} // namespace

Plot::Plot(QObject *parent)
    : QObject(parent),
      m_labels({QStringLiteral("atX"), QStringLiteral("atY"), QStringLiteral("wide"),
                QStringLiteral("high"), QStringLiteral("words"), QStringLiteral("ink"),
                QStringLiteral("bold")}),
      m_marks({QStringLiteral("atX"), QStringLiteral("atY"), QStringLiteral("mark")}),
      m_points({QStringLiteral("atX"), QStringLiteral("atY"), QStringLiteral("dot"),
                QStringLiteral("says")})
{
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &Plot::layOut);
}

void Plot::show(const QStringList &views, Draw draw)
{
    if (views.size() != m_views.size())
        m_view = 0;
    m_views = views;
    m_draw = std::move(draw);
    layOut();
}

void Plot::clear()
{
    m_draw = nullptr;
    m_views.clear();
    m_view = 0;
    m_layout = {};
    layOut();
}

void Plot::setWidth(double width)
{
    if (std::abs(width - m_space.width) < 0.5 || width < 1)
        return;
    m_space.width = width;
    m_soon.start();
}

void Plot::setRoom(double room)
{
    if (std::abs(room - m_space.height) < 0.5 || room < 1)
        return;
    m_space.height = room;
    m_soon.start();
}

void Plot::setView(int view)
{
    if (view == m_view || view < 0 || view >= m_views.size())
        return;
    m_view = view;
    m_current.clear();
    layOut();
}

void Plot::layOut()
{
    m_soon.stop();
    if (m_draw)
        m_layout = m_draw(m_view, m_space);
    m_labels.become(labelRows(m_layout));
    m_marks.become(markRowsOf(m_layout));
    m_points.become(pointRows(m_layout));
    if (point(m_current) == nullptr)
        m_current.clear();
    Q_EMIT drawn();
    Q_EMIT currentChanged();
}

const PlotPoint *Plot::point(const QString &key) const
{
    const auto found = std::find_if(m_layout.points.begin(), m_layout.points.end(),
                                    [&key](const PlotPoint &one) { return one.key == key; });
    return found == m_layout.points.end() ? nullptr : &*found;
}

QString Plot::currentSays() const
{
    const PlotPoint *one = point(m_current);
    return one == nullptr ? QString() : one->says;
}

QString Plot::near(double x, double y) const
{
    const PlotPoint *nearest = nullptr; // A small box lies over a large one.
    for (const PlotPoint &one : m_layout.points) {
        if (one.box.contains(x, y) &&
            (nearest == nullptr || areaOf(one.box) < areaOf(nearest->box)))
            nearest = &one;
    }
    return nearest == nullptr ? QString() : nearest->key;
}

QString Plot::step(Way way) const
{
    const auto &points = m_layout.points;
    if (points.empty())
        return {};
    const auto at = std::find_if(points.begin(), points.end(),
                                 [this](const PlotPoint &one) { return one.key == m_current; });
    if (way == Last)
        return points.back().key;
    if (way == First || at == points.end())
        return points.front().key;
    if (way == Back)
        return at == points.begin() ? m_current : std::prev(at)->key;
    return std::next(at) == points.end() ? m_current : std::next(at)->key;
}

QString Plot::take(const QString &key)
{
    const PlotPoint *one = point(key);
    if (one == nullptr)
        return {};
    QString opens = one->opens;
    if (m_current != key) {
        m_current = key;
        Q_EMIT currentChanged();
    }
    return opens;
}

void Plot::takeWhatOpens(const QString &opened)
{
    if (opened.isEmpty() || opens() == opened)
        return;
    const auto found =
        std::find_if(m_layout.points.begin(), m_layout.points.end(),
                     [&opened](const PlotPoint &one) { return one.opens == opened; });
    const QString next = found == m_layout.points.end() ? QString() : found->key;
    if (next == m_current)
        return;
    m_current = next;
    Q_EMIT currentChanged();
}

QString Plot::opens() const
{
    const PlotPoint *one = point(m_current);
    return one == nullptr ? QString() : one->opens;
}

QRectF Plot::place(const QString &key) const
{
    const PlotPoint *one = point(key);
    return one == nullptr ? QRectF() : one->box;
}

} // namespace flarestock
