// SPDX-License-Identifier: MIT
//
// Way order: what a builder looks at first, second and third where the joints of a build share a
// shelf: units to buy, pieces, money, in any order.

#pragma once

#include "model/joints/way.h"

#include <array>
#include <vector>

namespace flarestock {

enum class Want : std::uint8_t {
    FewBought, ///< Pieces and aids that the shelf does not have.
    FewPieces, ///< Pieces, and so joints.
    LittleMoney,
};
using WantOrder = std::array<Want, 3>; ///< Each once.

[[nodiscard]] WantOrder wantOrder(Preference preference) noexcept;

/// A criterion of WayRank, as a number to be low.
enum class Criterion : std::uint8_t {
    Unanswered,
    Narrow,
    ToBuy,
    Pieces,
    Cautions,
    Unpriced,
    CostMicro,
};
/// What the order looks at, one after the other: as compare() does for the three preferences.
/// Needs that nothing answers come before all, then ports that throttle their line. Cautions come
/// right before money where money is the last, else right behind it.
[[nodiscard]] std::vector<Criterion> criteria(const WantOrder &order);
[[nodiscard]] std::string_view text(Criterion criterion) noexcept; ///< "to buy" "pieces" …
[[nodiscard]] std::int64_t valueOf(const WayRank &rank, Criterion criterion) noexcept;

} // namespace flarestock
