// SPDX-License-Identifier: MIT
//
// Balance: what lies at a place of one part, lot and condition, and what it is worth.

#pragma once

#include "model/journal/layers.h"
#include "model/journal/movement.h"

#include <map>
#include <set>
#include <string>

namespace flarestock {

/// What is at a place of one part, lot and condition.
struct BalanceKey {
    std::string part;
    std::string place;
    std::string lot;
    PieceCondition condition = PieceCondition::New;
    friend auto operator<=>(const BalanceKey &, const BalanceKey &) = default;
};
/// Never holds a balance that is nothing, so that two ledgers of equal stock are equal.
using Balances = std::map<BalanceKey, Balance>;
/// The same of a shop that costs first in, first out: what lies in stock places, by when it came.
using LayersOfBalances = std::map<BalanceKey, Layers>;

/// A lot of a part, wherever it lies.
struct LotKey {
    std::string part;
    std::string lot;
    friend auto operator<=>(const LotKey &, const LotKey &) = default;
};

/// The lots that a build may not use: another car's, or past their day when it is due. For a build
/// that is not in it stands the one without a name, if it is.
using Bars = std::map<std::string, std::set<LotKey>, std::less<>>;
/// How much of what lies somewhere is thought to go to which build.
using PromisedTo = std::map<BalanceKey, std::map<std::string, std::int64_t>>;

/// Where a movement takes from, and where it puts to.
[[nodiscard]] BalanceKey source(const Movement &movement);
[[nodiscard]] BalanceKey target(const Movement &movement);

} // namespace flarestock
