// SPDX-License-Identifier: MIT
//
// Seats: what keeps the fluid in where the threads run home. A seat is a form; two forms either
// meet as they were made to, or they touch in a line, or not at all.

#pragma once

#include "model/ports/mating.h"
#include "model/ports/size_table.h"

namespace flarestock {

enum class Seat : std::uint8_t {
    Cone37,      ///< 37° flare.
    Cone45,      ///< 45° flare.
    Inverted,    ///< 45° cone in the bottom of the port, flare pushed onto it by the nut.
    Bubble,      ///< Bubble flare against a hollow seat.
    BossRing,    ///< Ring squeezed in the port's chamfer.
    FaceRing,    ///< Ring in the face of the male.
    Cone60,      ///< 60° cone, raised in the female (ISO 8434-6).
    Cone60Other, ///< 60° cone of JIS B 8363.
    Flare30,     ///< 30° flare, hollow in the female (JIS B 8363).
    Taper,       ///< The thread itself, with sealant.
    FlatWasher,  ///< Washer on a spot face.
    Cone24,      ///< 24° cone of ISO 8434-1.
    Banjo,       ///< Eye between two washers.
    None,        ///< Plain ends.
};

[[nodiscard]] Seat seatOf(Family family) noexcept;
/// Half angle of its cone as the trade says it (37, 45, 30, 12); 0 where it has none.
[[nodiscard]] double coneDegrees(Seat seat) noexcept;
/// "the 37° cone", "the ring of the stud": as the subject of a sentence.
[[nodiscard]] std::string_view words(Seat seat) noexcept;

/// A male and a female whose threads run home.
struct SeatedPair {
    const Port &male;
    const Port &female;
    const SizeRow &maleRow;
    const SizeRow &femaleRow;
};

/// What the seats do: Fits (with the needs that it has), FitsWithCaution, Leaks or NoFit (a larger
/// tube cannot enter). why and source are set; needs are those of the joint, written or not.
[[nodiscard]] Mating seatsMeet(const SeatedPair &pair);

} // namespace flarestock
