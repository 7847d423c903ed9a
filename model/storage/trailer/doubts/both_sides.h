// SPDX-License-Identifier: MIT
//
// Both sides: what is new in a copy and in the shop, as their doubts look at it.

#pragma once

#include "model/storage/trailer/entries_brought.h"

#include <set>

namespace flarestock {

/// What is new on either side, in the order of each one's fold.
struct BothSides {
    const std::vector<NewsEntry> &copy;
    const std::vector<NewsEntry> &shop;
};

/// Whether a movement is taken back by now. Throws StorageFailure.
[[nodiscard]] bool isTakenBack(const ShopConnection &connection, const MovementId &id);

/// Calls it for each movement, or each record of a kind.
template <class Call>
void eachMovement(const std::vector<NewsEntry> &news, const Call &call)
{
    for (const NewsEntry &entry : news) {
        if (entry.movement)
            call(*entry.movement);
    }
}
template <class Call>
void eachRecord(const std::vector<NewsEntry> &news, RecordKind kind, const Call &call)
{
    for (const NewsEntry &entry : news) {
        if (entry.record && entry.record->kind == kind)
            call(*entry.record);
    }
}

} // namespace flarestock
