// SPDX-License-Identifier: MIT
//
// Cautions: what is said wherever a fuel, oil, coolant or brake system is opened. General words,
// common practice: the series' rulebook and the part maker's data come first.

#pragma once

#include <array>
#include <string_view>

namespace flarestock {

/// In one line, for a command.
inline constexpr std::string_view OpeningCaution =
    "before it is opened: relieve the pressure, catch the fluid, no ignition source, eyes and skin "
    "protected, extinguisher at hand, static bonded; afterwards leak-test it";

/// Line by line, for a paper.
inline constexpr std::array<std::string_view, 7> OpeningCautions = {
    "Pump off, pressure relieved into a container; a rag over the joint: some pressure stays.",
    "Catch the fluid. No ignition source anywhere near, fresh air, hot parts cold.",
    "Eyes and skin protected; gloves that stand the fluid.",
    "Extinguisher at hand, for liquids that burn.",
    "Bond metal couplings and the container, so that no static builds up.",
    "Ends capped while they are open; bores flushed after hose was cut.",
    "Leak-test before the first start, dry and then wet; look at every joint."};

/// At the foot of every paper that somebody might act on.
inline constexpr std::string_view AdviceOnly =
    "Advice from the data entered, not a safety certificate: the series' rulebook, the part "
    "maker's data and local codes come first; have fuel and brake work checked by someone "
    "qualified.";

} // namespace flarestock
