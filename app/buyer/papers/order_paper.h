// SPDX-License-Identifier: MIT
//
// Order paper: an order as the words that stand on its paper.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "model/buying/order.h"

namespace flarestock {

/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords orderPaper(const Order &order, const Catalogue &catalogue,
                                    PaperWords paper);

} // namespace flarestock
