// SPDX-License-Identifier: MIT
//
// Order papers: an order written to files for its supplier: as a paper, as CSV, as a spreadsheet.
// Each file is whole or as it was before.

#pragma once

#include "app/command/shop_options.h"
#include "model/buying/order.h"

namespace flarestock {

struct PaperAsked {
    std::string pdf; ///< Files; empty: none.
    std::string csv;
    std::string xlsx;
    std::string paper = "A4"; ///< Or "Letter".
};

/// Problem: no such paper; a file cannot be written.
[[nodiscard]] Result<void> writePapers(const PaperAsked &asked, const Order &order,
                                       const OpenShop &shop);

} // namespace flarestock
