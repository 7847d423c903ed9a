// SPDX-License-Identifier: MIT
//
// spares.csv and used.csv: how the shop uses up a part, and what was used at events before there
// was a journal. The columns are described in demo-data/README.md.

#pragma once

#include "model/exact/problem.h"
#include "model/spares/carry/spending.h"

namespace flarestock {

/// Problem: no such table, a part that stands twice, a way of spending that is none, what wears out
/// without an interval, a number that is none.
[[nodiscard]] Result<std::vector<PartSpending>> readSpendings(std::string_view text,
                                                              std::string name);
/// Problem: no such table, an event or a part that is not named, pieces below zero.
[[nodiscard]] Result<std::vector<PastUse>> readPastUses(std::string_view text, std::string name);

} // namespace flarestock
