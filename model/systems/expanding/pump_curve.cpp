// SPDX-License-Identifier: MIT

#include "model/systems/expanding/pump_curve.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace flarestock {

namespace {

constexpr double RunningVolts = 13.5;
constexpr double SamePressure = 0.005; // 43.5 psi and 3 bar are meant to be the same.

std::vector<PumpFacts::Point> nearestCurve(const PumpFacts &pump)
{
    double volts = pump.curve.front().volts;
    for (const PumpFacts::Point &point : pump.curve)
        if (std::abs(point.volts - RunningVolts) < std::abs(volts - RunningVolts))
            volts = point.volts;
    std::vector<PumpFacts::Point> curve;
    for (const PumpFacts::Point &point : pump.curve)
        if (point.volts == volts)
            curve.push_back(point);
    std::sort(curve.begin(), curve.end(), [](const auto &a, const auto &b) {
        return std::pair(a.pressureKpa, a.flowLh) < std::pair(b.pressureKpa, b.flowLh);
    });
    return curve;
}

} // namespace

std::optional<double> pumpFlowLh(const PumpFacts &pump, double pressureKpa)
{
    if (pump.curve.empty())
        return std::nullopt;
    const auto curve = nearestCurve(pump);
    for (const PumpFacts::Point &point : curve)
        if (std::abs(point.pressureKpa - pressureKpa) <= SamePressure * pressureKpa)
            return point.flowLh;
    for (std::size_t i = 1; i < curve.size(); ++i) {
        const PumpFacts::Point &low = curve[i - 1];
        const PumpFacts::Point &high = curve[i];
        if (pressureKpa < low.pressureKpa || pressureKpa > high.pressureKpa)
            continue;
        const double part = (pressureKpa - low.pressureKpa) / (high.pressureKpa - low.pressureKpa);
        return low.flowLh + part * (high.flowLh - low.flowLh);
    }
    return std::nullopt;
}

std::optional<double> mostFlowLh(const PumpFacts &pump)
{
    if (pump.curve.empty())
        return std::nullopt;
    double most = 0;
    for (const PumpFacts::Point &point : nearestCurve(pump))
        most = std::max(most, point.flowLh);
    return most;
}

} // namespace flarestock
