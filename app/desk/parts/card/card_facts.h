// SPDX-License-Identifier: MIT
//
// Card facts: what the maker publishes of a part, each as a name and a figure in the person's
// units. What he does not say is not there.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "model/parts/part.h"

namespace flarestock {

/// title value says
[[nodiscard]] QStringList factCells();
[[nodiscard]] std::vector<Row> factRows(const Part &part, Units units);

/// The standard that the figures of a port's size are from; empty where it has none.
[[nodiscard]] QString portSource(const Port &port);

} // namespace flarestock
