// SPDX-License-Identifier: MIT
//
// Digits: a limit whose factors are too large for a search in floating point, as several limits of
// small ones: digit by digit with carries, as sums are done on paper. With tolerances of 1e-7 and
// factors of 1e8 a search calls possible what is not, and impossible what is.
//
//   1'234'567 x + 7'654'321 y = v   567 x + 321 y = v0 + 1000 q0
//                                   234 x + 654 y + q0 = v1 + 1000 q1
//                                   x + 7 y + q1 = v2

#pragma once

#include "model/programme/cbc_search.h"

namespace flarestock {

/// No factor of a limit in a search is larger.
inline constexpr std::int64_t DigitBase = 1000;

/// The quotient towards minus infinity; `by` is above zero.
[[nodiscard]] std::int64_t floorOf(std::int64_t number, std::int64_t by) noexcept;

/// The least and the most that a sum can come to by the ranges of its numbers.
[[nodiscard]] Programme::Range rangeIn(const std::vector<Programme::Range> &numbers,
                                       const LinearSum &sum);

/// Adds the limit to the search, with further numbers behind those that it has where it needs any.
void keepInDigits(Search &search, const Programme::Limit &limit);

} // namespace flarestock
