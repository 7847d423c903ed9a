// SPDX-License-Identifier: MIT
//
// Load rows: what to bring into the trailer and what to take out of it, on a sheet for a
// spreadsheet program and on paper, with a box to tick for each thing.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"
#include "app/trailer/loading.h"

namespace flarestock {

/// A row for each thing to bring or to buy. `day`: as of which the list is.
[[nodiscard]] Workbook loadRows(const std::vector<LoadLine> &lines, const std::string &day);
[[nodiscard]] Workbook unloadRows(const std::vector<UnloadLine> &lines, const std::string &day);

/// What the list on a paper is for.
struct LoadFor {
    std::string day;              ///< As of which it is.
    const Event *event = nullptr; ///< nullptr: for no event.
};
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords loadPaper(const std::vector<LoadLine> &lines, const LoadFor &what,
                                   PaperWords paper);
[[nodiscard]] PaperWords unloadPaper(const std::vector<UnloadLine> &lines, const LoadFor &what,
                                     PaperWords paper);

} // namespace flarestock
