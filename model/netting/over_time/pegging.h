// SPDX-License-Identifier: MIT
//
// Pegging: which want is met by what. What is there and on its way is given out first, to the
// earliest want first; what that leaves is met by what is planned, in the order in which it comes.

#pragma once

#include "model/netting/over_time/netting_over_time.h"

namespace flarestock {

/// What there is of one item, in the order of its days.
struct PegSupply {
    DayNumber first = 0;
    Decimal onHand;
    std::vector<DueItem> due;
    std::vector<PlannedOrder> orders;
};

/// Fills the pegs of the wants, which stand in the order of their days. By each day so much comes
/// as is wanted by then (asserted).
void peg(std::vector<MetWant> &wants, const PegSupply &supply);

} // namespace flarestock
