// SPDX-License-Identifier: MIT
//
// Filling up: what lies below the minimum that its place is to hold, and which other place has it
// free; what nobody has is to be bought.

#pragma once

#include "app/stockroom/stock_line.h"

namespace flarestock {

struct FillLine {
    const Part *part = nullptr;
    Keeping keeping;
    std::int64_t has = 0; ///< Free there, smallest units.
    struct Source {
        std::string place;
        std::int64_t quantity = 0;
    };
    std::vector<Source> from; ///< Nearest first; no place goes below its own minimum for it.
    std::int64_t toBuy = 0;   ///< What is then still lacking to the maximum.
};

/// In the order of part and place, on that day. Of what two places lack of one part the first gets
/// it.
[[nodiscard]] std::vector<FillLine> belowMinimum(const Workshop &workshop, std::string_view day);
/// The same with so much free of every part, by place.
using FreeAt = std::map<PartAt, std::int64_t>;
[[nodiscard]] std::vector<FillLine> belowMinimum(const Workshop &workshop, FreeAt free);

/// Levels that are low or out, by part and place.
[[nodiscard]] std::vector<LevelSeen> lowLevels(const ShopNotes &notes);

} // namespace flarestock
