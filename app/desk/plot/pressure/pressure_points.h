// SPDX-License-Identifier: MIT
//
// Pressure points: what keys and fingers reach on the picture of a pressure line: each station
// with its pressure, each run with what it takes.

#pragma once

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/pressure/pressure_panels.h"

namespace flarestock {

/// In flow order. They open what they stand for on the line map.
[[nodiscard]] std::vector<PlotPoint> pressurePoints(const FlowShown &shown,
                                                    const PressureLine &line,
                                                    const std::vector<PressurePanel> &panels);

} // namespace flarestock
