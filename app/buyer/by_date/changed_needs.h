// SPDX-License-Identifier: MIT
//
// Changed needs: what becomes of the wants of builds, cars and places when builds move to other
// days: who loses pieces, who gets them, what has to be ordered by another day.
//
//   for (const ChangedNeed &changed : changesBetween(asTheyStand, moved)) …

#pragma once

#include "app/buyer/needs.h"

namespace flarestock {

/// What a part of one build or place has before its build moved, and after.
struct ChangedNeed {
    const NeedLine *before = nullptr; ///< nullptr: it was not wanted then.
    const NeedLine *after = nullptr;  ///< nullptr: it is not wanted any more.
};

enum class NeedChange : std::uint8_t {
    NotWanted,    ///< Not wanted any more.
    Wanted,       ///< Wanted now.
    OtherDay,     ///< The same pieces; what lacks has to be ordered by another day.
    OtherOrder,   ///< Met by another order.
    BecomesShort, ///< It was not before.
    Covered,      ///< Nothing of it is short any more.
    LacksMore,
    LacksLess,
    ChangesHands, ///< As much is short as before, and other pieces come from stock.
};

/// Of what both say those lines in which it changes what is short, or what is got of which order.
[[nodiscard]] std::vector<ChangedNeed> changesBetween(const ShopNeeds &before,
                                                      const ShopNeeds &after);
[[nodiscard]] NeedChange changeOf(const ChangedNeed &changed);

/// What of it is got from the shop's own stock, its own included; nothing where there is no line.
[[nodiscard]] Decimal fromStockIn(const NeedLine *line);
/// Nothing where there is no line.
[[nodiscard]] Decimal shortIn(const NeedLine *line);

} // namespace flarestock
