// SPDX-License-Identifier: MIT
//
// Pump curve: the flow of a pump at a pressure, as its maker publishes it. Read on the curve whose
// voltage is nearest to 13.5 V (a running car's; common practice, no source).

#pragma once

#include "model/parts/facts.h"

namespace flarestock {

/// In L/h: straight between two published points, the point itself within half a percent of its
/// pressure, and nothing outside the curve: a pump's flow is never extrapolated.
[[nodiscard]] std::optional<double> pumpFlowLh(const PumpFacts &pump, double pressureKpa);

/// The largest flow of that curve; nothing where none is published.
[[nodiscard]] std::optional<double> mostFlowLh(const PumpFacts &pump);

} // namespace flarestock
