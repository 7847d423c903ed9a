// SPDX-License-Identifier: MIT
//
// Making up a hose: a length of hose and an end for each side (with what the ends need) go onto the
// bench, and one tagged piece comes off it with all their value.

#pragma once

#include "app/stockroom/bench/value_shares.h"

namespace flarestock {

struct MakingWords {
    std::string hose;
    std::string cut; ///< "24 in": of hose, as it is cut.
    std::string startEnd;
    std::string farEnd;
    std::vector<std::string> with; ///< "SL-8=2": what it takes besides what the ends say they need.
    std::string tag;
    std::string to;  ///< Place id.
    std::string lot; ///< The piece of hose; empty: the shortest that gives it.
    std::string kerf;
    std::string seats;    ///< Between seats; empty: as the ends' allowances say.
    std::string clocking; ///< "90": degrees, or empty.
    std::string pressure; ///< Of the proof test; empty where none was made.
    std::string medium;
    std::string result; ///< "passed" or "failed"
    std::string testedBy;
    std::string madeOn; ///< A day; empty: today.
    std::string useBy;
};

struct MadeAction {
    Action action;
    MadeHose hose;
    std::int64_t value = 0; ///< Of the tagged piece, 10^-6.
    PieceCondition condition = PieceCondition::New;
};

/// Without a proof test the piece is to be checked, with one that failed not to be used: only one
/// that passed is free. Problem: no such part, place or piece; ends that do not fit the hose; not
/// enough is free; a tag that is a part already; a proof test that lacks something.
[[nodiscard]] Result<MadeAction> madeUp(const MakingWords &asked, const Workshop &workshop,
                                        const By &by);

} // namespace flarestock
