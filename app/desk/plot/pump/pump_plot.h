// SPDX-License-Identifier: MIT
//
// Pump plot: flow over pressure: the curve of each pump and of all together, what the lines want,
// the point where they meet; at its right what the engine burns of that, and the rest.

#pragma once

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/plot_layout.h"
#include "app/desk/plot/pump/pump_curves.h"

namespace flarestock {

/// `curves` is one of pumpCurves() of the flow, or nothing. Without a curve, or without a pressure
/// that is wanted: why there is nothing to draw.
[[nodiscard]] PlotLayout pumpPlot(const FlowShown &shown, const PumpCurves *curves,
                                  const PlotSpace &space);

} // namespace flarestock
