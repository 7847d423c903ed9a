// SPDX-License-Identifier: MIT
//
// Joint rating: what pressure and temperature a joint may work at, as the lowest of its pieces. An
// assembly stands what its weakest piece stands (SAE J517, scope: the lower of hose and connector).
// Nothing is made up for a piece of which nobody publishes a figure: it is named instead.

#pragma once

#include "model/systems/expansion.h"

namespace flarestock {

struct JointRating {
    std::optional<double> pressureKpa; ///< The lowest that is published; nothing where none is.
    const Part *weakest = nullptr;     ///< Whose that is.
    std::optional<double> lowC;        ///< The highest of the lowest temperatures …
    std::optional<double> highC;       ///< … and the lowest of the highest.
    const Part *tenderest = nullptr;   ///< Whose the highest temperature is.
    std::vector<const Part *> unrated; ///< Pieces without a published pressure, each once.
};

/// Whether parts of this kind hold pressure by themselves, so that their maker should say how much.
/// Not: rings, washers, clamps (the joint is rated, not they), tanks, engines, and carburettors and
/// injectors, which say what pressure they want.
[[nodiscard]] bool holdsPressure(Kind kind) noexcept;

/// Of the station's part, all pieces and what the joint leads to. Of an open joint only the
/// station's part.
[[nodiscard]] JointRating ratingOf(const PlacedJoint &joint, const Expansion &expansion);

} // namespace flarestock
