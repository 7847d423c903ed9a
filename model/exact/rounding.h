// SPDX-License-Identifier: MIT
//
// How a number loses digits. Never a default: the word stands at the call.

#pragma once

#include <cstdint>

namespace flarestock {

enum class Rounding : std::uint8_t {
    HalfEven, ///< Nearest, a tie to the even digit: internal values (IEEE 754 default, from
              ///< memory).
    HalfUp,   ///< Nearest, a tie away from zero: what sales-tax law asks for.
    HalfDown, ///< Nearest, a tie towards zero.
    Down,     ///< Towards zero.
    Up,       ///< Away from zero.
    Floor,    ///< Towards minus infinity.
    Ceiling,  ///< Towards plus infinity: whole packs.
};

} // namespace flarestock
