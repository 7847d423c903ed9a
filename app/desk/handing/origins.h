// SPDX-License-Identifier: MIT
//
// Origins: out of which place the pieces of a build came that are in its car, so that what was not
// used goes back there.

#pragma once

#include "model/journal/ledger.h"

#include <map>

namespace flarestock {

/// By the pieces in the car: the place of the shop's stock that the last of them came from.
using Origins = std::map<BalanceKey, std::string>;

/// Of a build's movements, oldest first; what was taken back counts for nothing.
[[nodiscard]] Origins originsOf(const std::vector<Movement> &movements, const Ledger &ledger);

} // namespace flarestock
