// SPDX-License-Identifier: MIT
//
// The units that measures are typed in, each with its exact way to SI. Private to measure.cpp and
// line flow; other folders parse a Measure.

#pragma once

#include "model/fluids/measure.h"

#include <optional>
#include <string>

namespace flarestock {

/// SI value = number × multiplier / divisor + offset, or, for threads per inch, the reciprocal:
/// multiplier / number. Two factors, because a double holds 1000 exactly and 0.001 not.
struct MeasureUnit {
    std::string_view word;
    Dimension dimension;
    double multiplier = 1;
    double divisor = 1;
    double offset = 0;
    bool reciprocal = false;

    [[nodiscard]] double toSi(double number) const noexcept
    {
        return reciprocal ? multiplier / number : number * multiplier / divisor + offset;
    }
    [[nodiscard]] double ofSi(double si) const noexcept
    {
        return reciprocal ? multiplier / si : (si - offset) * divisor / multiplier;
    }
};

/// The unit of that spelling: "µ" and "u", "m²" and "m2", "mPa·s" and "mPa.s", "°C" and "C" are
/// the same; letter case is forgiven except where an m or M leads, because it scales by 10^9.
[[nodiscard]] std::optional<MeasureUnit> unitOf(std::string_view word);

/// Some measures of that dimension for a remedy: "3 bar or 43.5 psi".
[[nodiscard]] std::string_view examplesOf(Dimension dimension) noexcept;

} // namespace flarestock
