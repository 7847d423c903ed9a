// SPDX-License-Identifier: MIT
//
// Bench wash: a piece that went out of a car is washed where it lies, so that it can go in again:
// it is used and good from then on, and washed once more.

#pragma once

#include "app/garage/work_begun.h"

namespace flarestock {

/// The piece out of that car that a hand names by its lot, tag or part; nullptr where none, or
/// several.
[[nodiscard]] const PieceOut *outAsked(const std::string &typed, const CarLife &life);

/// As if it were still where it was.
[[nodiscard]] FittedPiece asFitted(const PieceOut &out);

struct BenchWash {
    Serviced serviced;
    std::vector<Movement> movements; ///< None where somebody has called it good before.
};
/// `begun` is of the car alone. Problem: it is never washed, or spent; it lies nowhere.
[[nodiscard]] Result<BenchWash> washedAtBench(const PieceOut &out, const Begun &begun,
                                              const Garage &garage);

} // namespace flarestock
