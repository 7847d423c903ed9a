// SPDX-License-Identifier: MIT
//
// Lot names: a piece that goes on under another name than its lot keeps what is known of that:
// whose it is, and until when it may be used.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// Every name of a lot of the part that something lies under or is known of: none of them is free.
[[nodiscard]] std::set<LotKey> lotNames(const std::string &part, const Workshop &workshop);

/// A lot, and what a piece of it is called from then on.
struct Renamed {
    LotKey lot;
    std::string now;
};
/// Writes down of the new name what is known of the lot; nothing where nothing is, or where it is
/// the same name. The action has its ids already.
void keepLotFacts(Action &action, const Renamed &piece, const Workshop &workshop);

} // namespace flarestock
