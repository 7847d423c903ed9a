// SPDX-License-Identifier: MIT
//
// Round scale: an axis whose marks stand at round figures: steps of 1, 2 or 5 and so many zeros.
//
//   const RoundScale scale = roundScale(0, 43.7, 6); // 0 10 20 30 40 50
//   scale.at(21.85, 200, 0);                         // half way: 112.6

#pragma once

#include <QString>

#include <vector>

namespace flarestock {

struct RoundScale {
    double low = 0;
    double high = 1;
    double step = 1;
    std::vector<double> marks; ///< From low to high.

    /// Where a figure lies between the pixels of low and high.
    [[nodiscard]] double at(double figure, double lowPixel, double highPixel) const;
    /// The figure at its mark, with as many digits as the step needs, in the person's locale.
    [[nodiscard]] QString said(double mark) const;
};

/// Covers least to most, which may be equal, with no more marks than so many (3 at least).
[[nodiscard]] RoundScale roundScale(double least, double most, int marksMost);

} // namespace flarestock
