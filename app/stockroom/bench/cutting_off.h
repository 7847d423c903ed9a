// SPDX-License-Identifier: MIT
//
// Cutting off: lengths cut at the bench, to a place of stock, where each is a piece of its own from
// then on, or to a car; with kerfs and useless rests to scrap. Off which pieces is said by a plan,
// or each length comes off the shortest piece that gives it.

#pragma once

#include "app/stockroom/bench/cut_words.h"
#include "app/stockroom/cut_planning.h"
#include "app/stockroom/deed.h"

namespace flarestock {

struct CuttingWords : CutWords {
    std::string to;   ///< Place id: a car, a shelf, a bin.
    std::string plan; ///< "remnants" or "waste"; empty: the shortest piece that gives it.
    /// The build that gets the lengths, which go to its car; empty: none.
    std::string build;
};

/// What is to be cut off what, as it was typed. Problem: as cutOff().
[[nodiscard]] Result<CutWish> cutWish(const CuttingWords &asked, const Workshop &workshop,
                                      const By &by);
/// Problem: no such part, place or build; nothing that is cut from a length; no length; no piece
/// that gives them all.
[[nodiscard]] Result<Action> cutOff(const CuttingWords &asked, const Workshop &workshop,
                                    const By &by);

} // namespace flarestock
