// SPDX-License-Identifier: MIT
//
// Pump words: what a pump and its lines come to together, and why nothing can be drawn of them.

#pragma once

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/pump/pump_curves.h"

namespace flarestock {

/// "Pump and its lines", "pumps and their lines".
[[nodiscard]] QString pumpTitle(const FlowShown &shown, const PumpCurves &curves);
/// "The pump carries it: 117 gph at 50.6 psi; 73 gph are asked. At full power 58 gph come back."
[[nodiscard]] QString pumpSays(const FlowShown &shown, const PumpCurves &curves);
/// What becomes of what the engine does not burn: "back to the tank", "in reserve".
[[nodiscard]] QString restWords(const PumpCurves &curves);
/// A picture of nothing: which figure is missing and where to enter it. `curves` may be nothing.
[[nodiscard]] PlotLayout pumpMissing(const FlowShown &shown, const PumpCurves *curves,
                                     const PlotSpace &space);

} // namespace flarestock
