// SPDX-License-Identifier: MIT

#include "model/fluids/pump/operating_point.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace flarestock {

SystemCurve systemOf(WholeLine line, double endPa)
{
    return [line = std::move(line), endPa](double flowM3S) -> Result<double> {
        WholeLine flowing = line;
        flowing.flowM3S = flowM3S;
        const auto loss = wholeLineLoss(flowing);
        if (!loss)
            return tl::unexpected<Problem>(loss.error());
        return loss->dropPa + endPa;
    };
}

Result<double> flowTogether(const PumpSet &pumps, double pressurePa)
{
    if (pumps.pumps.empty())
        return problem("pump", "is missing", "Give one pump at least.");
    double flowM3S = 0;
    for (const PumpCurve &pump : pumps.pumps) {
        auto flow = pump.flowM3S(pressurePa, pumps.volts);
        if (!flow)
            return flow;
        flowM3S += *flow;
    }
    return flowM3S;
}

Result<PumpCurve::PressureRange> commonRange(const PumpSet &pumps)
{
    if (pumps.pumps.empty())
        return problem("pump", "is missing", "Give one pump at least.");
    auto common = pumps.pumps.front().pressureRange(pumps.volts);
    for (const PumpCurve &pump : pumps.pumps) {
        auto range = pump.pressureRange(pumps.volts);
        if (!range)
            return range;
        common->lowPa = std::max(common->lowPa, range->lowPa);
        common->highPa = std::min(common->highPa, range->highPa);
    }
    if (common->lowPa >= common->highPa)
        return problem("pumps", "were not measured at the same pressures",
                       "Enter more points of their curves.");
    return common;
}

Result<OperatingPoint> operatingPoint(const PumpSet &pumps, const SystemCurve &system)
{
    const auto range = commonRange(pumps);
    if (!range)
        return tl::unexpected<Problem>(range.error());
    const Curve wanting = [&pumps, &system](double pressurePa) -> Result<double> {
        auto flow = flowTogether(pumps, pressurePa);
        if (!flow)
            return flow;
        const auto wanted = system(*flow);
        return wanted ? Result<double>(*wanted - pressurePa) : wanted;
    };
    const auto found = crossing(wanting, {range->lowPa, range->highPa});
    if (!found)
        return tl::unexpected<Problem>(found.error());
    if (!found->at)
        return found->atLow < 0
                   ? problem("system", "wants less pressure than the pump's curve begins with",
                             "Enter a point of the curve at less pressure.")
                   : problem("system", "wants more pressure than the pump's curve ends with",
                             "Choose a stronger pump or a wider line, or enter a point of the "
                             "curve at more pressure.");
    return OperatingPoint{*found->at, flowTogether(pumps, *found->at).value()};
}

Result<PumpPicture> pumpPicture(const PumpSet &pumps, const SystemCurve &system, int points)
{
    assert(points >= 2);
    const auto meeting = operatingPoint(pumps, system);
    if (!meeting)
        return tl::unexpected<Problem>(meeting.error());
    PumpPicture picture;
    picture.meeting = *meeting;
    const auto range = commonRange(pumps).value();
    for (int at = 0; at < points; ++at) {
        const double pressurePa = std::lerp(range.lowPa, range.highPa, at / (points - 1.0));
        picture.pumps.push_back({pressurePa, flowTogether(pumps, pressurePa).value()});
    }
    const double most = picture.pumps.front().flowM3S;
    for (int at = 0; at < points; ++at) {
        const double flowM3S = most * at / (points - 1.0);
        const auto wanted = system(flowM3S);
        if (!wanted)
            return tl::unexpected<Problem>(wanted.error());
        picture.system.push_back({*wanted, flowM3S});
    }
    return picture;
}

} // namespace flarestock
