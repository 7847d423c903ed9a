// SPDX-License-Identifier: MIT
//
// Bars: a short text as Code 128 (ISO/IEC 15417), which a hand scanner reads off the paper.

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

} // namespace flarestock
