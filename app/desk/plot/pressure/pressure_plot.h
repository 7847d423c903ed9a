// SPDX-License-Identifier: MIT
//
// Pressure plot: the pressure along a line as a picture: a panel each for suction, pressure and
// return, the drop of every run at its place, the limits as named lines, findings where they are.

#pragma once

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/plot_layout.h"
#include "app/desk/plot/pressure/pressure_line.h"

namespace flarestock {

/// `line` is one of pressureLines() of the flow. Without one: why there is nothing to draw.
[[nodiscard]] PlotLayout pressurePlot(const FlowShown &shown, const PressureLine *line,
                                      const PlotSpace &space);

} // namespace flarestock
