// SPDX-License-Identifier: MIT
//
// Plan rows: a purchase plan as a sheet and as a paper: a row for each line of each order that it
// proposes, and for what its freight and tax come to, so that the rows add up to the plan's figure.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/buyer/planned.h"
#include "app/sheet/workbook.h"

namespace flarestock {

/// `today`: the day that orders go out on.
[[nodiscard]] Workbook planRows(const PurchasePlan &plan, const Workshop &workshop,
                                const std::string &today);
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords planPaper(const PurchasePlan &plan, const Workshop &workshop,
                                   const std::string &today, PaperWords paper);

/// Why more is bought than covers the need: "need 8: 10 cost 2.40 less than 8"; empty where it is
/// not.
[[nodiscard]] std::string whyMore(const PlannedLine &line);

} // namespace flarestock
