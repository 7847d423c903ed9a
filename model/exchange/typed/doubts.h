// SPDX-License-Identifier: MIT
//
// Doubts: what of a row can stand and is seldom meant, so that somebody is asked: a price that
// rises with the quantity, an offer in another currency than its supplier's others.
//
//   "5: 10.00; 20: 12.00"    EUR, of a supplier who asks in USD

#pragma once

#include "model/exchange/typed/typed_row.h"
#include "model/parts/catalogue.h"

namespace flarestock {

/// The currency in which a supplier asks: as his record says, else as all of his offers do; empty
/// where that is not one.
[[nodiscard]] std::string currencyAskedBy(const std::string &supplier, const Catalogue &catalogue);

/// Each as a fault of its cell, of an offer without a fault; `asks` is what its supplier asks in.
[[nodiscard]] std::vector<CellFault> doubtsOf(const RowCells &offer, const std::string &asks);

} // namespace flarestock
