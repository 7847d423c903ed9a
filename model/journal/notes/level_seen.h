// SPDX-License-Identifier: MIT
//
// Level seen: how much of a part a hand saw at a place, where the shop does not count it: sealant,
// zip ties, a tin of assorted pieces. The newest look counts.

#pragma once

#include "model/journal/record.h"
#include "model/parts/free_stock.h"

namespace flarestock {

struct LevelSeen {
    MovementId id;
    std::string part;
    std::string place;
    StockLevel level = StockLevel::Plenty;
    std::string holds; ///< What lies there, in words: "M5 to M8, stainless"; may be empty.
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<LevelSeen> read(const Record &record); ///< Problem: not one.
};

} // namespace flarestock
