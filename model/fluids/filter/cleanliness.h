// SPDX-License-Identifier: MIT
//
// Cleanliness: how dirty an oil is, as three scale numbers of ISO 4406 for particles of 4, 6 and
// 14 µm(c) and larger in a millilitre.
//
//   cleanlinessCode({850, 120, 9})->text(); // "17/14/10"

#pragma once

#include "model/exact/problem.h"

#include <array>
#include <string>

namespace flarestock {

inline constexpr int ScaleNumberMost = 28;

/// The scale number of a count in a millilitre: the table of ISO 4406, each number up to and with
/// its upper end, which is rounded and so no formula. Problem: below nothing, or above 28's end.
[[nodiscard]] Result<int> scaleNumber(double particlesPerMl);

struct CleanlinessCode {
    std::array<int, 3> scale{};    ///< At 4, 6 and 14 µm(c).
    std::array<bool, 3> atLeast{}; ///< Fewer than 20 particles were counted: no less than that.

    [[nodiscard]] std::string text() const; ///< "17/14/10", "14/12/≥7"
    /// No dirtier than the other at any of the three sizes.
    [[nodiscard]] bool isAsCleanAs(const CleanlinessCode &other) const noexcept;

    /// Problem: not three numbers of the scale between strokes, or one above that before it.
    [[nodiscard]] static Result<CleanlinessCode> parse(std::string_view text);
};

struct ParticleCounts {
    double at4PerMl = 0; ///< 4 µm(c) and larger; the smaller sizes hold the larger.
    double at6PerMl = 0;
    double at14PerMl = 0;
    double countedMl = 100; ///< Volume that was counted through.
};

/// Problem: a count below nothing or beyond the scale, or more large particles than small ones.
[[nodiscard]] Result<CleanlinessCode> cleanlinessCode(const ParticleCounts &counts);

} // namespace flarestock
