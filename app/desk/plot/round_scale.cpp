// SPDX-License-Identifier: MIT

#include "app/desk/plot/round_scale.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double Slack = 1e-9; ///< Of a step: 0.3 is three times 0.1.

/// The least of 1, 2, 5, 10 … times a power of ten that is no less.
double roundUp(double figure)
{
    const double power = std::pow(10, std::floor(std::log10(figure)));
    for (const double one : {1.0, 2.0, 5.0})
        if (figure <= one * power * (1 + Slack))
            return one * power;
    return 10 * power;
}

} // namespace

double RoundScale::at(double figure, double lowPixel, double highPixel) const
{
    return std::lerp(lowPixel, highPixel, (figure - low) / (high - low));
}

QString RoundScale::said(double mark) const
{
    const int digits = std::max(0, static_cast<int>(-std::floor(std::log10(step) + Slack)));
    const double shown = std::abs(mark) < step * Slack ? 0.0 : mark;
    return QLocale().toString(shown, 'f', digits);
}

RoundScale roundScale(double least, double most, int marksMost)
{
    RoundScale scale;
    double span = most - least;
    if (!(span > 0))
        span = std::max(1.0, std::abs(most));
    const int gaps = std::max(2, marksMost - 1);
    for (double wanted = span / gaps;; wanted = scale.step * (1 + 2 * Slack)) {
        scale.step = roundUp(wanted);
        scale.low = std::floor(least / scale.step + Slack) * scale.step;
        scale.high =
            std::ceil(std::max(most, least + span * Slack) / scale.step - Slack) * scale.step;
        if (!(scale.high > scale.low))
            scale.high = scale.low + scale.step;
        if (std::lround((scale.high - scale.low) / scale.step) <= gaps)
            break;
    }
    const long count = std::lround((scale.high - scale.low) / scale.step);
    for (long at = 0; at <= count; ++at)
        scale.marks.push_back(scale.low + static_cast<double>(at) * scale.step);
    return scale;
}

} // namespace flarestock
