// SPDX-License-Identifier: MIT
//
// Lot acts: what to do about a lot that was traced if it is bad, what is most dangerous first. Who
// looks one up has not said that it is.

#pragma once

#include "app/garage/lots/lot_trace.h"

namespace flarestock {

/// Brakes before fuel before the rest; of a car the one with the nearest event first; then what was
/// lent or is out, then what lies in stock.
[[nodiscard]] std::vector<TraceAct> actsFor(const LotTrace &trace, const Garage &garage,
                                            const std::string &today);

} // namespace flarestock
