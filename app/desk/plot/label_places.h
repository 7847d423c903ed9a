// SPDX-License-Identifier: MIT
//
// Label places: puts words where nothing else lies. Each label is given the places that suit it,
// best first; it gets the first that is free of all that was placed before and of what is to be
// kept clear.
//
//   LabelPlaces places(QRectF(0, 0, 640, 300));
//   places.keepClear(mark);
//   places.put({"43.5 psi", sizeOfWords("43.5 psi", false)}, {above, below});
//   layout.labels = places.all();

#pragma once

#include "app/desk/plot/plot_layout.h"

#include <QSizeF>

namespace flarestock {

/// As large as the screen draws them, small letters; lines are parted by '\n'.
[[nodiscard]] QSizeF sizeOfWords(const QString &words, bool strong);
/// The words, or as much of them as so many pixels hold, with "…" behind.
[[nodiscard]] QString wordsWithin(const QString &words, bool strong, double width);

/// Where a label lies about a point of it.
enum class LabelSide : std::uint8_t { Above, Below, Left, Right, Middle };

class LabelPlaces {
public:
    /// No label leaves this.
    explicit LabelPlaces(const QRectF &within) : m_within(within) {}

    /// Nothing will lie here.
    void keepClear(const QRectF &box) { m_taken.push_back(box); }

    struct Place {
        QPointF at;
        LabelSide side = LabelSide::Above;
    };
    /// The label at the first place that is free; its box is found here. Whether there was one.
    bool put(const PlotLabel &label, const std::vector<Place> &places);
    /// The same of a label that must be there: where no place is free, the free one nearest to the
    /// first, above or below it. Whether there was any.
    bool putSomewhere(const PlotLabel &label, const std::vector<Place> &places);

    [[nodiscard]] const std::vector<PlotLabel> &all() const { return m_labels; }

private:
    [[nodiscard]] QRectF boxAt(const QSizeF &size, const Place &place) const;
    [[nodiscard]] bool isFree(const QRectF &box) const;
    void take(PlotLabel label, const QRectF &box);

    QRectF m_within;
    std::vector<QRectF> m_taken;
    std::vector<PlotLabel> m_labels;
};

} // namespace flarestock
