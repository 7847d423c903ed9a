// SPDX-License-Identifier: MIT

#include "model/fluids/pump/pump_curve.h"

#include "model/fluids/bounds.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <utility>

namespace flarestock {

namespace {

constexpr double Kilopascal = 1e3;

double between(const std::map<double, double> &flowByPressure, double pressurePa)
{
    const auto after = flowByPressure.lower_bound(pressurePa);
    if (after->first == pressurePa)
        return after->second;
    const auto before = std::prev(after);
    return std::lerp(before->second, after->second,
                     (pressurePa - before->first) / (after->first - before->first));
}

/// What is wrong with the points of one voltage.
std::optional<Problem> impossible(const std::map<double, double> &flowByPressure)
{
    if (flowByPressure.size() < 2)
        return Problem{"pump curve", "has a single point at a voltage",
                       "Enter the flow at two pressures at least for each voltage."};
    double before = flowByPressure.begin()->second;
    for (auto point = std::next(flowByPressure.begin()); point != flowByPressure.end(); ++point) {
        if (point->second > before)
            return Problem{"pump curve", "gives more at more pressure",
                           "Look at the flows and pressures entered."};
        before = point->second;
    }
    return std::nullopt;
}

} // namespace

Result<PumpCurve> PumpCurve::of(const std::vector<Point> &points)
{
    PumpCurve curve;
    for (const Point &point : points) {
        if (auto wrong = firstImpossible({{"pressure", point.pressurePa, Allowed::NothingOrMore},
                                          {"voltage", point.volts, Allowed::NothingOrMore},
                                          {"flow", point.flowM3S, Allowed::NothingOrMore}}))
            return tl::unexpected<Problem>(*std::move(wrong));
        if (!curve.m_byVolts[point.volts].emplace(point.pressurePa, point.flowM3S).second)
            return problem("pump curve", "has two flows at one pressure and voltage",
                           "Keep one of them.");
    }
    if (curve.m_byVolts.empty())
        return problem("pump curve", "has no points", "Enter the flow at two pressures at least.");
    for (const auto &[volts, flowByPressure] : curve.m_byVolts)
        if (auto wrong = impossible(flowByPressure))
            return tl::unexpected<Problem>(*std::move(wrong));
    return curve;
}

Result<PumpCurve::Beside> PumpCurve::beside(double volts) const
{
    const ValidRange measured{"voltage", "V", m_byVolts.begin()->first, m_byVolts.rbegin()->first};
    if (auto wrong = beyond(measured, volts, "pump curve"))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto upper = m_byVolts.lower_bound(volts);
    if (upper->first == volts)
        return Beside{&upper->second, &upper->second, 0};
    const auto lower = std::prev(upper);
    return Beside{&lower->second, &upper->second,
                  (volts - lower->first) / (upper->first - lower->first)};
}

Result<PumpCurve::PressureRange> PumpCurve::pressureRange(double volts) const
{
    const auto found = beside(volts);
    if (!found)
        return tl::unexpected<Problem>(found.error());
    const auto &[lower, upper, share] = *found;
    const PressureRange range{std::max(lower->begin()->first, upper->begin()->first),
                              std::min(lower->rbegin()->first, upper->rbegin()->first)};
    if (range.lowPa >= range.highPa)
        return problem("pump curve", "was not measured at the same pressures at both voltages",
                       "Ask for a voltage at which it was measured.");
    return range;
}

Result<double> PumpCurve::flowM3S(double pressurePa, double volts) const
{
    const auto range = pressureRange(volts);
    if (!range)
        return tl::unexpected<Problem>(range.error());
    const ValidRange measured{"pressure", "kPa", range->lowPa / Kilopascal,
                              range->highPa / Kilopascal};
    // The bare comparison first: a division may round the very end out of the range.
    if (!(pressurePa >= range->lowPa && pressurePa <= range->highPa))
        if (auto wrong = beyond(measured, pressurePa / Kilopascal, "pump curve"))
            return tl::unexpected<Problem>(*std::move(wrong));
    const auto [lower, upper, share] = beside(volts).value();
    return std::lerp(between(*lower, pressurePa), between(*upper, pressurePa), share);
}

} // namespace flarestock
