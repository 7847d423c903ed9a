// SPDX-License-Identifier: MIT
//
// What a builder would rather have where a joint, or a station, can be made in several ways.
//
// "From the shelf" never makes a long chain to save a purchase: each further piece is a further
// joint, and so a further place to leak. It looks only at ways that have at most ShelfPiecesMore
// pieces more than the way that "fewest pieces" would take. That it is one is a fitter's judgement:
// common practice, no source.

#pragma once

#include "model/exact/problem.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Preference : std::uint8_t {
    Shelf,  ///< Fewest pieces and aids to buy, then fewest pieces, fewest cautions, least money;
            ///< no chain that is longer than ShelfPiecesMore allows.
    Joints, ///< Fewest pieces, then fewest to buy, fewest cautions, least money.
    Money,  ///< Least money, then fewest cautions, fewest to buy, fewest pieces.
};
/// How many pieces more than the shortest way a way from the shelf may have.
inline constexpr std::size_t ShelfPiecesMore = 1;

[[nodiscard]] std::string_view text(Preference preference) noexcept; ///< "shelf" "joints" "money"
[[nodiscard]] Result<Preference> parsePreference(std::string_view text);

} // namespace flarestock
