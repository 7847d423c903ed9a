// SPDX-License-Identifier: MIT
//
// Serving: which pieces go to which build, where some builds may not use some of them. Each takes
// the first that it may use; where nothing of that is left, another that could take something else
// gives way. So all that can be served at once is served.
//
//   lying  {SN 7 (car-2's): 1, no lot: 1}, wanted {roadster: 1, not SN 7}, {coupe: 1}
//   served {SN 7: coupe 1, no lot: roadster 1}, in whatever order they ask

#pragma once

#include "model/journal/ledger.h"

namespace flarestock {

struct Wanted {
    std::string build;
    std::int64_t quantity = 0; ///< Not less than zero.
};
struct AtHand {
    BalanceKey key;
    std::int64_t quantity = 0;
};

/// What of `lying` (the first are taken first) goes to whom; less than is wanted where it does not
/// reach.
[[nodiscard]] PromisedTo served(const std::vector<Wanted> &wanted, std::vector<AtHand> lying,
                                const Bars &bars);
[[nodiscard]] std::int64_t sumOf(const PromisedTo &served);

} // namespace flarestock
