// SPDX-License-Identifier: MIT
//
// Short in words: what the shop's builds and places lack, by day, as a JSON document and as
// tables; and what changes of it when builds move to other days.

#pragma once

#include "app/buyer/needs.h"
#include "app/command/command.h"

namespace flarestock {

/// What a part of one build or place has before its build moved, and after.
struct ChangedNeed {
    const NeedLine *before = nullptr; ///< nullptr: it was not wanted then.
    const NeedLine *after = nullptr;  ///< nullptr: it is not wanted any more.
};
/// What happens to it, in a few words: "becomes short", "changes hands" …
[[nodiscard]] std::string changeText(const ChangedNeed &moved);
/// Of what both say those lines in which it changes what is short, or what is got of which order.
[[nodiscard]] std::vector<ChangedNeed> changesBetween(const ShopNeeds &before,
                                                      const ShopNeeds &after);

[[nodiscard]] QJsonObject needsDocument(const ShopNeeds &needs);
[[nodiscard]] QJsonObject movedDocument(const ShopNeeds &before, const ShopNeeds &after);
[[nodiscard]] std::string needsTables(const ShopNeeds &needs);
[[nodiscard]] std::string movedTable(const ShopNeeds &before, const ShopNeeds &after);
[[nodiscard]] std::size_t shortLines(const ShopNeeds &needs);

} // namespace flarestock
