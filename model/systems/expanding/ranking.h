// SPDX-License-Identifier: MIT
//
// Ranking: which of several parts that would all do is taken, by the builder's preference.
//
// Whatever the preference, a hose whose liner stands the fluid only on conditions comes after all
// that stand it well. Then, shelf: what is here first, then the cheapest. Money: the cheapest, then
// what is here. Joints: the fewest ports whose dash differs from that of their run, then as Shelf.
// (How many pieces a part's joints take is known only when all of them are closed; a port of the
// run's own dash takes no reducing adapter, and reading it costs nothing.) Ties by part number, so
// that the order of the catalogue never shows.

#pragma once

#include "model/joints/preference.h"
#include "model/systems/expanding/allotment.h"

namespace flarestock {

struct Ranked {
    const Part *part = nullptr;
    bool here = false;           ///< The shelf has what is needed.
    std::optional<Decimal> cost; ///< Of what is needed; nothing where there is no price.
    bool doubtful = false;       ///< It stands the fluid only on conditions.
    int misfits = 0;             ///< Ports whose dash differs from that of their run.
};

/// Best first.
void rank(std::vector<Ranked> &parts, Preference preference);

/// "2 on the shelf", "to be bought, 54.20", "to be bought, without a price".
[[nodiscard]] std::string supplyText(const Part &part, Allotment &allotment);

} // namespace flarestock
