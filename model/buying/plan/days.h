// SPDX-License-Identifier: MIT
//
// Days: dates as they are written, counted on and back.
//
//   dayAfter("2026-12-30", 3)   // "2027-01-02"

#pragma once

#include <string>
#include <string_view>

namespace flarestock {

/// So many days later, or earlier where `days` is below zero. `day` is a date that is there:
/// "2026-12-30" (asserted).
[[nodiscard]] std::string dayAfter(std::string_view day, int days);
/// So many days from the one to the other, both as above; below zero where `to` is earlier.
[[nodiscard]] int daysFrom(std::string_view from, std::string_view to);

} // namespace flarestock
