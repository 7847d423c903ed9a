// SPDX-License-Identifier: MIT
//
// Wearing out: a piece that is replaced by an interval. How many that takes is counted, not
// guessed: each fitted piece is replaced whenever its life is over before the running is.
//
//   replacementsDue({{4}, 10, 20})   // 2 more: after 6 and after 16; 0 left of 4 at the end

#pragma once

#include "model/exact/decimal.h"

#include <vector>

namespace flarestock {

struct WearingOut {
    std::vector<Decimal> used; ///< What each fitted piece has run since it was new; zero or more.
    Decimal lasts;             ///< More than zero; the same measure: events, runs or hours.
    Decimal coming;            ///< Of running for each of them; zero or more.
};

struct DuePieces {
    std::int64_t during = 0; ///< Replaced before the running is over.
    std::int64_t after = 0;  ///< Pieces whose life ends just with it: due before they run again.
};
/// Every piece that is fitted then lasts its full interval. A piece that is past its life now
/// counts as due at once, where there is running to come.
[[nodiscard]] DuePieces replacementsDue(const WearingOut &wear);

} // namespace flarestock
