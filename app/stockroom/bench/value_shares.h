// SPDX-License-Identifier: MIT
//
// Value shares: what went onto the bench shared out to what comes off it, to the last millionth.
//
//   valueShares(10'000'000, {{2, {}}, {1, {}}})   // 6'666'666 and 3'333'334

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

struct Sharing {
    Decimal weight;                     ///< In proportion to it; not below zero.
    std::optional<std::int64_t> stated; ///< Its value, as somebody has said it: 10^-6, not below 0.
};
/// What is stated is taken off first, the rest shared out in proportion, downwards to 10^-6; the
/// last without a stated value takes the remainder. Where no weight is above zero, all weigh the
/// same. The sum is `whole`. Problem: more is stated than there is; or less, and nothing is left to
/// take the rest.
[[nodiscard]] Result<std::vector<std::int64_t>> valueShares(std::int64_t whole,
                                                            std::vector<Sharing> sharing);

/// The value that each of the movements takes along, were they done now one after the other; their
/// own where they come off the bench. Problem: the first that would be refused.
[[nodiscard]] Result<std::vector<std::int64_t>> valuesOf(std::vector<Movement> movements,
                                                         const Workshop &workshop);

/// What so many of a part cost at the best offer in the shop's currency; nothing where nobody
/// sells it.
[[nodiscard]] std::optional<Decimal> offeredCost(const Part &part, const Decimal &count,
                                                 const Workshop &workshop);

} // namespace flarestock
