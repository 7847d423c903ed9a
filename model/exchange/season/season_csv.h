// SPDX-License-Identifier: MIT
//
// season.csv: the events that the shop goes to. The columns are described in demo-data/README.md.

#pragma once

#include "model/exact/problem.h"
#include "model/spares/season.h"

namespace flarestock {

/// Problem: no such table, an id that stands twice, a day that is none or an end before the
/// beginning, no car or one twice, runs or hours below zero.
[[nodiscard]] Result<Season> readSeason(std::string_view text, std::string name);

} // namespace flarestock
