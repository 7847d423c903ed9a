// SPDX-License-Identifier: MIT
//
// What a builder would rather have where a joint, or a station, can be made in several ways.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Preference : std::uint8_t {
    Shelf,  ///< Fewest pieces and aids to buy, then fewest pieces, fewest cautions, least money.
    Joints, ///< Fewest pieces, then fewest to buy, fewest cautions, least money.
    Money,  ///< Least money, then fewest cautions, fewest to buy, fewest pieces.
};
[[nodiscard]] std::string_view text(Preference preference) noexcept; ///< "shelf" "joints" "money"
[[nodiscard]] Result<Preference> parsePreference(std::string_view text);

} // namespace flarestock
