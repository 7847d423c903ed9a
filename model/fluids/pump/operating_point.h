// SPDX-License-Identifier: MIT
//
// Operating point: at what pressure a pump, or several side by side, gives just the flow that the
// system takes at that pressure; and the two curves for the picture of it.
//
//   const PumpSet pumps{{*pump, *pump}, 13.5};
//   operatingPoint(pumps, systemOf(feedLine, 300e3))->pressurePa;

#pragma once

#include "model/fluids/crossing.h"
#include "model/fluids/line/whole_line.h"
#include "model/fluids/pump/pump_curve.h"

#include <vector>

namespace flarestock {

/// Pumps side by side between the same two lines, each with its own check valve.
struct PumpSet {
    std::vector<PumpCurve> pumps; ///< One at least.
    double volts = 0;             ///< At each of them.
};

/// Pressure across the pumps that the system wants at a flow in m³/s; it does not fall with flow.
using SystemCurve = Curve;

/// The loss of the line at that flow on top of what its end wants (regulator, boost, level of the
/// carburettor).
[[nodiscard]] SystemCurve systemOf(WholeLine line, double endPa);

/// All their flows at that pressure. Problem: no pump, or outside the curve of one of them.
[[nodiscard]] Result<double> flowTogether(const PumpSet &pumps, double pressurePa);

/// Within what pressures all of them are known. Problem: no pump, a voltage that was not measured,
/// or no common range.
[[nodiscard]] Result<PumpCurve::PressureRange> commonRange(const PumpSet &pumps);

struct OperatingPoint {
    double pressurePa = 0;
    double flowM3S = 0;
};

/// Within the measured curves only. Problem: as above, the system's own, or a system that wants
/// less than the curves begin with or more than they end with.
[[nodiscard]] Result<OperatingPoint> operatingPoint(const PumpSet &pumps,
                                                    const SystemCurve &system);

struct PumpPicture {
    std::vector<OperatingPoint> pumps;  ///< By rising pressure.
    std::vector<OperatingPoint> system; ///< By rising flow, from nothing to what the pumps give.
    OperatingPoint meeting;
};

/// points of each curve, 2 at least (asserted). Problem: as operatingPoint.
[[nodiscard]] Result<PumpPicture> pumpPicture(const PumpSet &pumps, const SystemCurve &system,
                                              int points = 50);

} // namespace flarestock
