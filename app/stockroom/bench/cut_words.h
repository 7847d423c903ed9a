// SPDX-License-Identifier: MIT
//
// Cut words: what a hand types about lengths to cut, for whoever cuts and whoever plans.

#pragma once

#include "app/stockroom/cutting.h"
#include "app/workshop/workshop.h"

namespace flarestock {

struct CutWords {
    std::string part;
    std::vector<std::string> lengths;
    std::string lot;
    std::string kerf;
    std::string leastUseful;
};

/// Problem: no length, or none above zero.
[[nodiscard]] Result<std::vector<std::int64_t>> lengthsAsked(const CutWords &words,
                                                             const Part &part);
/// The usual where nothing was typed. Problem: as kerfAsked(); no length, or below zero.
[[nodiscard]] Result<CutLoss> lossAsked(const CutWords &words, const Part &part);

/// For whom is cut, and on which day.
struct CutFor {
    const Place *to = nullptr; ///< nullptr: for no car.
    std::string day;
};
/// The piece that is named; else all that somebody may cut for that place on that day. Problem: a
/// named piece that is not in stock.
[[nodiscard]] Result<std::map<BalanceKey, std::int64_t>> piecesToCut(const Part &part,
                                                                     const CutWords &words,
                                                                     const CutFor &cutFor,
                                                                     const Workshop &workshop);

} // namespace flarestock
