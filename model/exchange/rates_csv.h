// SPDX-License-Identifier: MIT
//
// rates.csv: what one of another currency is worth in the shop's, from which day on. The columns
// are described in demo-data/README.md.

#pragma once

#include "model/buying/plan/rates.h"
#include "model/exact/problem.h"

namespace flarestock {

/// Problem: no such table, a currency that is none or the shop's own, a rate that is not above
/// zero, a day that is none, the same currency and day twice.
[[nodiscard]] Result<Rates> readRates(std::string_view text, std::string name,
                                      const Currency &shops);

} // namespace flarestock
