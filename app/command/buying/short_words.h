// SPDX-License-Identifier: MIT
//
// Short in words: what the shop's builds and places lack, by day, as a JSON document and as
// tables; and what changes of it when builds move to other days.

#pragma once

#include "app/buyer/by_date/changed_needs.h"
#include "app/command/command.h"

namespace flarestock {

/// What happens to it, in a few words: "becomes short", "changes hands" …
[[nodiscard]] std::string changeText(const ChangedNeed &moved);

[[nodiscard]] QJsonObject needsDocument(const ShopNeeds &needs);
[[nodiscard]] QJsonObject movedDocument(const ShopNeeds &before, const ShopNeeds &after);
[[nodiscard]] std::string needsTables(const ShopNeeds &needs);
[[nodiscard]] std::string movedTable(const ShopNeeds &before, const ShopNeeds &after);
[[nodiscard]] std::size_t shortLines(const ShopNeeds &needs);

} // namespace flarestock
