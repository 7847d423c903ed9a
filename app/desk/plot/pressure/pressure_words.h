// SPDX-License-Identifier: MIT
//
// Pressure words: what the pressure along a line says: as a whole, of each run, of each station.

#pragma once

#include "app/desk/plot/flow_shown.h"
#include "app/desk/plot/pressure/pressure_line.h"

namespace flarestock {

/// "pressure, tank to regulator"
[[nodiscard]] QString pressureTitle(const FlowShown &shown, const PressureLine &line);
/// "43.5 psi at the regulator with 117 gph. Its line takes 6.74 psi, most of it …"
[[nodiscard]] QString pressureSays(const FlowShown &shown, const PressureLine &line);
/// "suction", "pressure", "return" …, over a panel.
[[nodiscard]] QString partTitle(PressurePart::Side side);
/// "-6, 11 ft, post-filter to rail: takes 5.13 psi, from 49.6 psi to 44.5 psi, with 117 gph"
[[nodiscard]] QString stepSays(const FlowShown &shown, const PressureStep &step);
/// A station at the end or the beginning of a part: "pump inlet: -0.35 psi, 3.59 psi from boiling".
struct StationAt {
    std::string station;
    PressurePart::Side side = PressurePart::Side::Pressure;
    double pa = 0;
    bool isBeginning = false;
};
[[nodiscard]] QString stationSays(const FlowShown &shown, const PressureLine &line,
                                  const StationAt &at);
/// Beside its line, with fewer and fewer letters: "set to 43.5 psi", "set".
[[nodiscard]] QStringList limitWords(const FlowShown &shown, const PressureLimit &limit);

} // namespace flarestock
