// SPDX-License-Identifier: MIT
//
// Pick rows: what a hand takes out of which bin for a build, on a sheet for a spreadsheet program
// and on paper, with a box to tick for each thing and the cautions that belong to the work.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"
#include "app/stockroom/picking.h"

namespace flarestock {

/// `day`: that the sheet says it was made on.
[[nodiscard]] Workbook pickRows(const PickList &list, const std::string &day);
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords pickPaper(const PickList &list, const BuildPlan &plan,
                                   const std::string &day, PaperWords paper);

} // namespace flarestock
