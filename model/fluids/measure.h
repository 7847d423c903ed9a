// SPDX-License-Identifier: MIT
//
// Measures: a number and a unit, as typed: "255 L/h", "43.5 psi", "5 ft 6 in", "450 hp".
//
// Physics is done in SI doubles behind named dimensions; the text that was typed is kept, so that
// an answer is shown as it was given. A bare number is refused (except Count), because a number
// without a unit is a guess. "hp" is mechanical horsepower, 550 ft·lbf/s; metric horsepower is
// "PS".

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace flarestock {

enum class Dimension : std::uint8_t {
    Count,              ///< Bare number.
    Length,             ///< m
    Area,               ///< m²
    Volume,             ///< m³
    VolumeFlow,         ///< m³/s
    MassFlow,           ///< kg/s
    Pressure,           ///< Pa
    Power,              ///< W
    Density,            ///< kg/m³
    DynamicViscosity,   ///< Pa·s
    KinematicViscosity, ///< m²/s
    Temperature,        ///< K, absolute
    Angle,              ///< rad
    Pitch,              ///< m, also from threads per inch
    Voltage,            ///< V
    Current,            ///< A
    Velocity,           ///< m/s
    Acceleration,       ///< m/s², also "1.5 g"
    Time,               ///< s
};

[[nodiscard]] std::string_view text(Dimension dimension) noexcept; ///< "length", "flow", …

struct Measure {
    Dimension dimension = Dimension::Count;
    double si = 0;     ///< In the unit named at the dimension.
    std::string typed; ///< As the person wrote it, blanks trimmed.

    /// Problem: no number, no unit, or a unit that nobody knows (the remedy names some).
    [[nodiscard]] static Result<Measure> parse(std::string_view text);
    /// The same, and of this dimension. Problem: also where it is another ("a length is wanted").
    [[nodiscard]] static Result<Measure> parse(std::string_view text, Dimension wanted);
};

/// The number in a unit of the same grammar: in(Pa 300000, "bar") is 3.
/// The unit is known and of the same dimension (asserted).
[[nodiscard]] double in(const Measure &measure, std::string_view unit);

} // namespace flarestock
