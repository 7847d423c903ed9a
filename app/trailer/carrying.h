// SPDX-License-Identifier: MIT
//
// Carrying: how many spares of the shop's parts to take to the events that come, from what was used
// at those that are over: in the journal, and before it in used.csv. One rate for all cars that
// have the part: how often one fitted piece is used.

#pragma once

#include "app/trailer/spare_book.h"

namespace flarestock {

struct CarryWanted {
    std::string today;
    std::vector<const Event *> events; ///< To come, the next first; where empty those before the
                                       ///< next delivery can come.
    std::optional<RunningIn> per;      ///< Nothing: as spares.csv says, else by events.
    std::optional<std::int64_t> each;  ///< So many in every car; nothing: as the shop knows.
    std::optional<int> deliveryDays;   ///< What is used is ordered at once and comes after so many.
    std::optional<SpareDemand::Form> form;
    double certainty = 0.95;
};

struct PartCarry {
    const Part *part = nullptr;
    CarryLine line;
    std::vector<const Event *> events; ///< For which it is to last.
    std::string until;                 ///< Why those, where nobody has said.
    std::string fitted;                ///< "car-1: 1, car-2: 2"
    std::vector<std::string> seenAt;   ///< Events of the history.
};

/// Problem: no event to come, nothing known of how often it is used, an event without runs or hours
/// where those are counted, a mean that is too large.
[[nodiscard]] Result<PartCarry> carryOf(const Part &part, const Workshop &workshop,
                                        const SpareBook &book, const CarryWanted &wanted);

} // namespace flarestock
