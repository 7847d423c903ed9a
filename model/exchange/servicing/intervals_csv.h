// SPDX-License-Identifier: MIT
//
// intervals.csv: when the shop washes, looks at or replaces what is in its cars. The columns are
// described in demo-data/README.md.

#pragma once

#include "model/servicing/interval.h"

namespace flarestock {

/// Problem, with its place: no such table, a row that fits everything or says no interval, work
/// that is none, a number that is none, the same piece and work twice.
[[nodiscard]] Result<Intervals> readIntervals(std::string_view text, std::string name);
/// Of a shop that wrote down none of its own.
[[nodiscard]] const Intervals &usualIntervals();

} // namespace flarestock
