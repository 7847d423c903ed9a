// SPDX-License-Identifier: MIT
//
// Opening a box: it goes onto the bench, and what the catalogue says lies in it comes off with its
// value shared out exactly. The part that stood in it goes back without its contents, unless the
// box was all there was to it: a pack, a kit. What stays in a car is issued to the build that has
// got the box: it has its contents as before.

#pragma once

#include "app/stockroom/bench/value_shares.h"

namespace flarestock {

struct OpeningWords {
    std::string part;
    std::string from; ///< Place id; of a car too, where a piece was left over.
    std::string to;   ///< Where the contents go; empty: where the box lay.
    std::string lot;
    std::string condition;
    std::vector<std::string> only;   ///< Part numbers; empty: all that is in it.
    std::vector<std::string> prices; ///< "BK-460=12.50": the price of one, to share by.
    std::vector<std::string> costs;  ///< "BK-460=12.50": what all of it carries.
    bool nothingLeft = false;        ///< The box is no piece by itself.
    std::string build; ///< That the contents go to with its car; empty: the one that has the box.
};

/// What came off the bench, for people.
struct CameOff {
    const Part *part = nullptr;
    std::int64_t quantity = 0; ///< Smallest units.
    std::string to;
    std::string lot;
    std::int64_t value = 0; ///< 10^-6 of the shop's currency.
    std::string by;         ///< "stated", "offered 19.06", "no price".
};
struct OpenedAction {
    Action action;
    std::vector<CameOff> pieces;
    std::vector<std::string> missing; ///< What an earlier look had found missing: part numbers.
    const BuildPlan *build = nullptr; ///< That has got the contents; nothing where none has.
};

/// One box. Problem: no such part, place, piece or build; a part without a box; nothing of what is
/// named is in it; no bench; a price or cost that is none, or more than the whole; a build of
/// another car than the contents go to.
[[nodiscard]] Result<OpenedAction> openedBox(const OpeningWords &asked, const Workshop &workshop,
                                             const By &by);

} // namespace flarestock
