// SPDX-License-Identifier: MIT

#include "app/desk/plot/label_places.h"

#include <QFontMetricsF>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr int LetterPixels = 11; ///< Theme.smallText.
constexpr double Apart = 2;      ///< Between two labels, and between a label and its point.
constexpr double Slide = 3;      ///< Steps in which a place is looked for.

QFontMetricsF metricsOf(bool strong)
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(LetterPixels);
    font.setBold(strong);
    return QFontMetricsF(font);
}

} // namespace

QSizeF sizeOfWords(const QString &words, bool strong)
{
    const QFontMetricsF metrics = metricsOf(strong);
    const QStringList lines = words.split(u'\n');
    double widest = 0;
    for (const QString &line : lines)
        widest = std::max(widest, metrics.horizontalAdvance(line));
    // Whole pixels, and one to spare: the screen rounds each letter.
    return {std::ceil(widest) + 1, std::ceil(metrics.height()) * static_cast<double>(lines.size())};
}

QString wordsWithin(const QString &words, bool strong, double width)
{
    return metricsOf(strong).elidedText(words, Qt::ElideRight, std::max(0.0, width - 1));
}

QRectF LabelPlaces::boxAt(const QSizeF &size, const Place &place) const
{
    const QPointF at = place.at;
    const double acrossMiddle = at.x() - size.width() / 2;
    const double upMiddle = at.y() - size.height() / 2;
    QPointF corner;
    switch (place.side) {
    case LabelSide::Above:
        corner = {acrossMiddle, at.y() - size.height() - Apart};
        break;
    case LabelSide::Below:
        corner = {acrossMiddle, at.y() + Apart};
        break;
    case LabelSide::Left:
        corner = {at.x() - size.width() - Apart, upMiddle};
        break;
    case LabelSide::Right:
        corner = {at.x() + Apart, upMiddle};
        break;
    case LabelSide::Middle:
        corner = {acrossMiddle, upMiddle};
        break;
    }
    QRectF box(corner, size);
    // Words at the edge move in rather than going.
    if (box.right() > m_within.right())
        box.moveRight(m_within.right());
    if (box.left() < m_within.left())
        box.moveLeft(m_within.left());
    return box;
}

bool LabelPlaces::isFree(const QRectF &box) const
{
    if (!m_within.contains(box))
        return false;
    const QRectF wide = box.adjusted(-Apart, 0, Apart, 0);
    return std::none_of(m_taken.begin(), m_taken.end(),
                        [&wide](const QRectF &taken) { return taken.intersects(wide); });
}

void LabelPlaces::take(PlotLabel label, const QRectF &box)
{
    label.box = box;
    m_taken.push_back(box);
    m_labels.push_back(std::move(label));
}

bool LabelPlaces::put(const PlotLabel &label, const std::vector<Place> &places)
{
    const QSizeF size = sizeOfWords(label.words, label.strong);
    for (const Place &place : places) {
        const QRectF box = boxAt(size, place);
        if (isFree(box)) {
            take(label, box);
            return true;
        }
    }
    return false;
}

bool LabelPlaces::putSomewhere(const PlotLabel &label, const std::vector<Place> &places)
{
    if (put(label, places))
        return true;
    const QRectF first = boxAt(sizeOfWords(label.words, label.strong), places.front());
    for (double away = Slide; away < m_within.height(); away += Slide) {
        for (const double step : {-away, away}) {
            const QRectF box = first.translated(0, step);
            if (isFree(box)) {
                take(label, box);
                return true;
            }
        }
    }
    return false;
}

} // namespace flarestock
