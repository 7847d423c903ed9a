// SPDX-License-Identifier: MIT
//
// Cut task: which lengths are to be cut from which pieces, and what one makes out of one piece. All
// lengths are whole smallest units (125 nm).
//
// The rule of the saw is that of CutPieces: a length comes whole from one piece, and each cut takes
// its kerf, unless the piece ends there.

#pragma once

#include "model/parts/cutting.h"

namespace flarestock {

/// No length is so long: 140,000 km.
inline constexpr std::int64_t CutLengthMost = std::int64_t{1} << 50;

struct CutTask {
    std::vector<std::int64_t> pieces;  ///< What lies there; each above zero.
    std::vector<std::int64_t> lengths; ///< What is wanted; each above zero.
    std::int64_t kerf = UsualKerf;     ///< Zero or more.
    std::int64_t leastUseful = 0;      ///< A rest that is shorter is waste.
    /// What a new coil has, of which as many can be bought as are needed; nothing: none.
    std::optional<std::int64_t> coil;

    /// A piece so long or longer is a coil, a shorter one a remnant: what a new coil has; where
    /// none can be bought, the longest piece.
    [[nodiscard]] std::int64_t wholeCoil() const;
};

/// What one piece gives.
struct CutPattern {
    std::vector<std::int64_t> counts; ///< Of each different length, longest first, so many.
    std::int64_t cuts = 0;            ///< The sum of the counts.
    std::int64_t length = 0;          ///< The sum of the lengths.
    std::int64_t rest = 0;            ///< What stays; zero where it is too short to be useful.
    std::int64_t waste = 0;           ///< Kerfs, and a rest too short.
};

/// How many of one length are wanted.
struct WantedLength {
    std::int64_t length = 0;
    std::int64_t count = 0;
};
/// The different lengths, longest first.
[[nodiscard]] std::vector<WantedLength> wantedLengths(const CutTask &task);

/// What a piece gives when it is cut so.
[[nodiscard]] CutPattern patternOf(const CutTask &task, std::int64_t piece,
                                   const std::vector<WantedLength> &wanted,
                                   std::vector<std::int64_t> counts);

/// All that a piece can give of what is wanted, but nothing at all; at most `most` of them, those
/// of the longest lengths first.
[[nodiscard]] std::vector<CutPattern> patternsOf(const CutTask &task, std::int64_t piece,
                                                 const std::vector<WantedLength> &wanted,
                                                 std::size_t most);

} // namespace flarestock
