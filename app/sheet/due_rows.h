// SPDX-License-Identifier: MIT
//
// Due rows: what is to be done to the cars, on a sheet for a spreadsheet program and on paper.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/garage/due_list.h"
#include "app/sheet/workbook.h"

namespace flarestock {

/// `today`: the day that the sheet says it was made on.
[[nodiscard]] Workbook dueRows(const std::vector<DueLine> &lines, const std::string &today);
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords duePaper(const std::vector<DueLine> &lines, const std::string &today,
                                  PaperWords paper);

} // namespace flarestock
