// SPDX-License-Identifier: MIT
//
// Pump curve: what a pump gives over its pressure and voltage, out of the points that its maker
// measured. Straight lines between them, never beyond them: a pump that was measured up to 5 bar
// says nothing of 6, and one flow rating without a pressure says nothing at all.
//
//   const auto pump = PumpCurve::of({{3e5, 13.5, 255 * litreH}, {4e5, 13.5, 235 * litreH}});
//   pump->flowM3S(3.7e5, 13.5); // 241 L/h

#pragma once

#include "model/exact/problem.h"

#include <map>
#include <vector>

namespace flarestock {

class PumpCurve {
public:
    struct Point {
        double pressurePa = 0; ///< Across the pump; 0 or more.
        double volts = 0;      ///< At the pump; 0 for one without a motor of its own.
        double flowM3S = 0;    ///< 0 or more.
    };

    /// Problem: no two points of one voltage, a figure outside its range, two points of one
    /// pressure and voltage, or flow that does not fall with pressure.
    [[nodiscard]] static Result<PumpCurve> of(const std::vector<Point> &points);

    struct PressureRange {
        double lowPa = 0;
        double highPa = 0;
    };
    /// Within what pressures it is known at that voltage. Between two measured voltages both must
    /// have been measured there. Problem: a voltage outside the measured ones, or no common range.
    [[nodiscard]] Result<PressureRange> pressureRange(double volts) const;

    /// Linear in pressure, then in voltage. Problem: as above, or a pressure outside the range.
    [[nodiscard]] Result<double> flowM3S(double pressurePa, double volts) const;

private:
    using FlowByPressure = std::map<double, double>;
    struct Beside {
        const FlowByPressure *lower = nullptr;
        const FlowByPressure *upper = nullptr; ///< The same where the voltage was measured.
        double share = 0;                      ///< Of the upper.
    };

    [[nodiscard]] Result<Beside> beside(double volts) const;

    std::map<double, FlowByPressure> m_byVolts;
};

} // namespace flarestock
