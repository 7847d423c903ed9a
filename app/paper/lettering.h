// SPDX-License-Identifier: MIT
//
// Lettering: the one typeface of all papers and labels.

#pragma once

#include <QFont>

#include <algorithm>

namespace flarestock {

/// At least one pixel of the writer high.
[[nodiscard]] inline QFont lettering(int pixels, QFont::Weight weight)
{
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(std::max(1, pixels));
    font.setWeight(weight);
    font.setStyleStrategy(QFont::PreferNoShaping); // No ligature: "flare" is searched for.
    return font;
}

} // namespace flarestock
