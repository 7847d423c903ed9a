// SPDX-License-Identifier: MIT
//
// Ranking: which of several parts that would all do is taken, by the builder's preference.
//
// Whatever the preference, a hose whose liner stands the fluid only on conditions comes after all
// that stand it well. Then:
//
//   shelf:   what is here, fewest adapters, the cheapest, fewest misfits
//   joints:  fewest adapters, fewest misfits, what is here, the cheapest
//   money:   the cheapest, what is here, fewest adapters, fewest misfits
//
// Ties by part number, so that the order of the catalogue never shows.
//
// A port takes an adapter where it is no male 37° flare of its run's dash, on which a hose end goes
// as it is; it is a misfit where its dash is another. How many pieces a part's joints really take
// is known only when all of them are closed; reading the port costs nothing. A fitter takes the
// filter with -8 ends for a -8 line, not one with pipe threads that is a little cheaper; but no
// dearer pump because its boss has the line's size, for one adapter does either: common practice,
// no source.

#pragma once

#include "model/joints/preference.h"
#include "model/systems/expanding/allotment.h"

namespace flarestock {

struct Ranked {
    const Part *part = nullptr;
    bool here = false;           ///< The shelf has what is needed.
    std::optional<Decimal> cost; ///< Of what is needed; nothing where there is no price.
    bool doubtful = false;       ///< It stands the fluid only on conditions.
    int adapters = 0;            ///< Ports that take one before their run's hose end.
    int misfits = 0;             ///< Ports whose dash differs from that of their run.
};

/// Best first.
void rank(std::vector<Ranked> &parts, Preference preference);

/// "2 on the shelf", "to be bought, 54.20", "to be bought, without a price".
[[nodiscard]] std::string supplyText(const Part &part, Allotment &allotment);

} // namespace flarestock
