// SPDX-License-Identifier: MIT
//
// Wanted over time as TOML: items, needs and what is due, by period or by day. The format is
// described in demo-data/README.md.

#pragma once

#include "model/exact/problem.h"
#include "model/netting/over_time/wanted_over_time.h"

namespace flarestock {

struct WantedFile {
    WantedOverTime wanted;
    bool isCalendar = false; ///< Its days are those of the calendar; else they are periods.
};

/// `today` is the first day where the file names days and no first. Problem: with file, line,
/// column, the line and a caret: TOML that does not parse, an unknown or missing key, a wrong
/// number or day, periods and days in one file.
[[nodiscard]] Result<WantedFile> readWanted(std::string_view text, std::string file,
                                            DayNumber today);

} // namespace flarestock
