// SPDX-License-Identifier: MIT
//
// Claim rows: what a supplier owes, a row a claim, as a sheet and as a letter to him.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"

namespace flarestock {

using ClaimsSaid = std::vector<const ClaimStanding *>;

[[nodiscard]] Workbook claimRows(const ClaimsSaid &claims, const Workshop &workshop,
                                 const std::string &today);
/// The letter. All claims are of one supplier (asserted), and there is one. `paper` comes from the
/// shop, and is empty besides.
[[nodiscard]] PaperWords claimLetter(const ClaimsSaid &claims, const Workshop &workshop,
                                     const std::string &today, PaperWords paper);

} // namespace flarestock
