// SPDX-License-Identifier: MIT

#include "app/desk/plot/pump/pump_curves.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr int PumpPoints = 40;

/// A pump with a motor runs at the car's voltage, one that the engine drives has none.
std::vector<OperatingPoint> readCurve(const PumpCurve &curve, double volts)
{
    auto range = curve.pressureRange(volts);
    if (!range) {
        volts = 0;
        range = curve.pressureRange(volts);
    }
    std::vector<OperatingPoint> points;
    if (!range)
        return points;
    for (int at = 0; at < PumpPoints; ++at) {
        const double pressurePa = std::min(
            std::lerp(range->lowPa, range->highPa, at / (PumpPoints - 1.0)), range->highPa);
        if (const auto flow = curve.flowM3S(pressurePa, volts))
            points.push_back({pressurePa, *flow});
    }
    return points;
}

} // namespace

double PumpCurves::restM3S() const
{
    return delivery->working ? std::max(0.0, delivery->working->flowM3S - burntM3S) : 0;
}

std::vector<PumpCurves> pumpCurves(const SystemFlow &flow)
{
    std::vector<PumpCurves> all;
    for (const Delivery &delivery : flow.deliveries) {
        PumpCurves curves;
        curves.delivery = &delivery;
        for (const PumpAtWork &pump : delivery.pumps) {
            auto points = pump.curve ? readCurve(*pump.curve, flow.conditions.volts)
                                     : std::vector<OperatingPoint>();
            if (points.size() > 1)
                curves.each.push_back({pump.station, std::move(points)});
            else
                curves.without.push_back(pump.station);
        }
        if (delivery.picture) {
            curves.system = delivery.picture->system;
            if (delivery.pumps.size() > 1)
                curves.together = delivery.picture->pumps;
        }
        if (flow.engineM3S && delivery.end != DeliveryEnd::Vessel && flow.conditions.margin > 0)
            curves.burntM3S = delivery.wantedM3S / flow.conditions.margin;
        all.push_back(std::move(curves));
    }
    return all;
}

} // namespace flarestock
