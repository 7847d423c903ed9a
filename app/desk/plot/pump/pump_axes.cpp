// SPDX-License-Identifier: MIT

#include "app/desk/plot/pump/pump_axes.h"

#include "model/fluids/measure.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr double AirAbove = 1.04; ///< So that no curve runs along the edge.
constexpr double MarkWide = 60;
constexpr double MarkHigh = 30;

int marksOn(double pixels, double each, int most)
{
    return std::clamp(static_cast<int>(pixels / each), 3, most);
}

} // namespace

PumpAxes pumpAxes(const PumpCurves &curves, const QRectF &area, Units units)
{
    PumpAxes axes;
    axes.area = area;
    const char *pressure = units == Units::Inch ? "psi" : "bar";
    const char *flow = units == Units::Inch ? "gph" : "L/h";
    axes.pressureUnit = QString::fromLatin1(pressure);
    axes.flowUnit = QString::fromLatin1(flow);
    axes.onePa = 1 / in({Dimension::Pressure, 1, {}}, pressure);
    axes.oneM3S = 1 / in({Dimension::VolumeFlow, 1, {}}, flow);
    const Delivery &delivery = *curves.delivery;
    double mostPa = std::max(delivery.setPa.value_or(0), delivery.working->pressurePa);
    double mostM3S = std::max(delivery.wantedM3S, delivery.working->flowM3S);
    const auto cover = [&](const std::vector<OperatingPoint> &points) {
        for (const OperatingPoint &point : points) {
            mostPa = std::max(mostPa, point.pressurePa);
            mostM3S = std::max(mostM3S, point.flowM3S);
        }
    };
    for (const PumpCurves::One &one : curves.each)
        cover(one.points);
    cover(curves.together);
    cover(curves.system);
    axes.pressures = roundScale(0, mostPa / axes.onePa, marksOn(area.width(), MarkWide, 10));
    axes.flows =
        roundScale(0, mostM3S / axes.oneM3S * AirAbove, marksOn(area.height(), MarkHigh, 8));
    return axes;
}

} // namespace flarestock
