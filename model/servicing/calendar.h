// SPDX-License-Identifier: MIT
//
// Calendar: days as people write them, "2026-12-12", reckoned in months and days.
//
//   dayAfterMonths("2026-08-31", 6)         // "2027-02-28": of a shorter month its last day
//   daysApart("2026-12-01", "2026-12-12")    // 11

#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace flarestock {

/// `day` is a day (asserted).
[[nodiscard]] std::string dayAfterMonths(std::string_view day, int months);
/// Below zero where `to` comes first. Both are days (asserted).
[[nodiscard]] std::int64_t daysApart(std::string_view from, std::string_view to);

} // namespace flarestock
