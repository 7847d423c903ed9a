// SPDX-License-Identifier: MIT
//
// mating(): what happens when two ports meet. Derived from thread geometry, seat, gender and aid,
// not from a list of pairs. It never promises that a joint is tight; it says what the geometry
// does.

#pragma once

#include "model/ports/port.h"

#include <optional>
#include <span>

namespace flarestock {

/// In order of precedence: the first that applies is said.
enum class Verdict : std::uint8_t {
    SameGender, ///< Both male or both female.
    NoFit,      ///< Does not start, falls through, does not latch, or the larger tube cannot enter.
    Jams,       ///< Pitches differ: starts and binds before the normal engagement (`turns`).
    Loose,      ///< Starts with only part of the thread depth, so that it can strip.
    Leaks,      ///< Threads run home, nothing seals.
    FitsWithCaution, ///< Made to fit, with something to know.
    FitsWithAid,     ///< Made to fit, and the aid that it needs (`needs`) is not written.
    Fits,            ///< Made for each other, with the aid written where one is needed.
};
[[nodiscard]] std::string_view text(Verdict verdict) noexcept; ///< "same-gender", "no-fit", …
[[nodiscard]] bool fits(Verdict verdict) noexcept; ///< FitsWithCaution, FitsWithAid or Fits.

/// One thing a joint needs: the aid, how many, and which one where a standard names it.
struct Need {
    Aid aid = Aid::ORing;
    int count = 1;
    std::string designation;                ///< "AS568-906"; empty where no standard names it.
    [[nodiscard]] std::string text() const; ///< "o-ring AS568-906", "crush washer × 2", "sealant"
    friend bool operator==(const Need &, const Need &) = default;
};

struct Mating {
    Verdict verdict = Verdict::NoFit;
    std::vector<Need> needs; ///< All aids that the joint uses, written or not; empty where none.
    std::string why;         ///< A sentence that a fitter understands.
    std::string source; ///< Never empty: standards, "common practice, no source", "from memory".
    std::optional<double> turns; ///< Only for Jams: turns until it binds.
};

/// Symmetric: the same verdict, needs and turns for (a, b) and (b, a). Total, never fails.
/// Two hoses' or tubes' ends have no gender; what joins them is decided by size and construction.
[[nodiscard]] Mating mating(const Port &a, const Port &b, std::span<const Aid> aids = {});

} // namespace flarestock
