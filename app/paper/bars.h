// SPDX-License-Identifier: MIT
//
// Bars: a short text as Code 128 (ISO/IEC 15417), which a hand scanner reads off the paper; and
// squares: a longer one as QR (ISO/IEC 18004).

#pragma once

#include <QRectF>
#include <QString>
#include <QVector>

namespace flarestock {

struct Bars {
    QVector<QRectF> black; ///< In modules from the left; each as high as the code, from 0 to 1.
    double modules = 0;    ///< The whole code without its quiet zones (10 modules on either side).
};

/// Nothing black where the text cannot be encoded: it is empty, or no ASCII.
[[nodiscard]] Bars barsOf(const QString &text);

struct Squares {
    QVector<QRectF> black; ///< In modules from the left and the top.
    double side = 0;       ///< In modules, without its quiet zone (4 modules all round).
};

/// Nothing black where the text cannot be encoded: it is empty, or longer than a code holds.
[[nodiscard]] Squares squaresOf(const QString &text);

} // namespace flarestock
