// SPDX-License-Identifier: MIT
//
// Line asked: one line as somebody types it, for the command `line` and for the desk alike: what
// flows, how much of it, through which bore, how far. lineLoss() says what pressure that takes.
//
//   LineWords words;
//   words.flow = "255 L/h";
//   words.dash = 6;
//   words.length = "5 m";
//   lineLoss(lineAsked(words).value());

#pragma once

#include "model/fluids/line_flow.h"
#include "model/fluids/liquid.h"

#include <string>

namespace flarestock {

/// As typed; empty where it was not.
struct LineWords {
    std::string fluid = "gasoline";
    std::string temperature = "20 C";
    std::string flow;     ///< By volume or by mass; or the velocity instead.
    std::string velocity; ///< In the bore.
    std::string bore;
    int dash = 0; ///< Where it is more than 0 its bore is assumed, instead of one that is typed.
    std::string length;
    std::string density;   ///< Instead of the fluid's.
    std::string viscosity; ///< Likewise; dynamic or kinematic.
    std::string roughness;
    std::string lossCoefficient; ///< The sum of ends and bends.
    std::string rise;
    std::string forward;
    std::string acceleration;
};

/// The fluid at its temperature. Problem: none that is known, outside of what is published.
[[nodiscard]] Result<Liquid> liquidAsked(const LineWords &words);
/// Problem: the first of the words that cannot be read, under the name of its option.
[[nodiscard]] Result<LineFlow> lineAsked(const LineWords &words);

} // namespace flarestock
