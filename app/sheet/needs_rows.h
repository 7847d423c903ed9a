// SPDX-License-Identifier: MIT
//
// Needs rows: what is short, a row for each part of each build or place that lacks it, as a sheet
// and as a paper.

#pragma once

#include "app/buyer/needs.h"
#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"

namespace flarestock {

/// `today`: the day that the sheet says it was made on.
[[nodiscard]] Workbook needsRows(const ShopNeeds &needs, const std::string &today);
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords needsPaper(const ShopNeeds &needs, const std::string &today,
                                    PaperWords paper);

/// Those of which something is short.
[[nodiscard]] std::vector<const NeedLine *> lacking(const ShopNeeds &needs);
/// "2 of order 2026-0003 on 2026-12-01, 1 of claim C-4 on 2026-12-05"
[[nodiscard]] std::string comingText(const std::vector<NeedLine::Coming> &coming);
/// By when to order it, in words; empty where nothing is short.
[[nodiscard]] std::string orderByText(const NeedLine &line);
/// The build or place; "car-2: pre-filter, element" of what is due to a car.
[[nodiscard]] std::string wantedBy(const NeedLine &line);
/// "AD-3-3, AD-4-4"
[[nodiscard]] std::string commas(const std::vector<std::string> &words);

} // namespace flarestock
