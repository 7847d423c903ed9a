// SPDX-License-Identifier: MIT
//
// Calendar day: a day as people write it, "2026-12-12", as the number of days since 1970-01-01, and
// back (proleptic Gregorian calendar, ISO 8601).

#pragma once

#include "model/netting/over_time/wanted_over_time.h"

#include <optional>

namespace flarestock {

/// Nothing where it is no day from 0001-01-01 to 9999-12-31.
[[nodiscard]] std::optional<DayNumber> dayNumber(std::string_view day) noexcept;
/// "2026-12-12"; a day of the same years (asserted).
[[nodiscard]] std::string calendarDay(DayNumber number);

} // namespace flarestock
