// SPDX-License-Identifier: MIT
//
// identify(): what an unmarked fitting can be, from a caliper, a pitch gauge and a look at its
// seat, and what to measure next where that cannot decide. It turns round the tables that mating()
// uses.

#pragma once

#include "model/ports/port.h"

#include <optional>

namespace flarestock {

/// What was measured. Lengths in millimetres.
struct Caliper {
    Gender gender = Gender::Male;
    double diameterMm = 0;         ///< Outside of a male, inside (minor) of a female thread.
    std::optional<double> pitchMm; ///< From a pitch gauge.
    std::optional<double>
        seatDegrees;       ///< Half angle of the cone as the trade says it: 37, 45, 30, 12 …
    bool flatSeat = false; ///< No cone: a flat face, with or without a ring groove.
    bool tapered = false;  ///< The thread visibly tapers.
};

struct Candidate {
    std::string thread;      ///< "7/8-14"
    std::vector<Port> ports; ///< What it can be, likeliest first.
    double deviationMm = 0;  ///< Measured less nominal.
};

enum class Ask : std::uint8_t { None, Pitch, Seat };
[[nodiscard]] std::string_view text(Ask ask) noexcept; ///< "none" "pitch" "seat"

struct Identification {
    std::vector<Candidate> candidates; ///< Nearest first; empty where nothing is near.
    Ask ask = Ask::None;               ///< What to measure next.
    std::string why;                   ///< Why that is needed, or why it is decided.
};

/// The diameter is more than zero (asserted by the caller's parsing).
[[nodiscard]] Identification identify(const Caliper &caliper);

} // namespace flarestock
