// SPDX-License-Identifier: MIT
//
// On hand: how much of a part was in stock, day by day, over the last year, summed up from what
// happened to it. What goes from one shelf to another changes nothing.
//
//   onHandOver(movements, isStockPlace, {now, 0})   // most, least, and a step a day that changed
//   it

#pragma once

#include "model/journal/movement.h"

#include <functional>
#include <vector>

namespace flarestock {

/// A day on which it changed.
struct OnHandDay {
    std::int64_t at = 0;     ///< Of its first change, milliseconds since 1970, UTC.
    std::int64_t onHand = 0; ///< At its end, smallest units.
    bool came = false;       ///< Some came that day …
    bool went = false;       ///< … some went.
    friend bool operator==(const OnHandDay &, const OnHandDay &) = default;
};

struct OnHand {
    std::int64_t from = 0;   ///< Where the picture begins: a year ago, or with the first change.
    std::int64_t to = 0;     ///< Now.
    std::int64_t before = 0; ///< On hand where it begins.
    std::vector<OnHandDay> days;
    std::int64_t least = 0; ///< In that time, at the end of a day; smallest units, likewise.
    std::int64_t most = 0;
    std::int64_t now = 0;
    std::int64_t came = 0; ///< All that came in that time.
    std::int64_t went = 0;

    /// Whether there is any time to look back on: two days at least.
    [[nodiscard]] bool isThere() const noexcept;
};

/// `movements` of one part, in any order; `isStock` tells a place of stock by its id; `now` is in
/// milliseconds since 1970, UTC.
[[nodiscard]] OnHand onHandOver(const std::vector<Movement> &movements,
                                const std::function<bool(const std::string &)> &isStock,
                                std::int64_t now);

} // namespace flarestock
