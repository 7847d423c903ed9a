// SPDX-License-Identifier: MIT
//
// Pump axes: pressure to the right, flow upwards, both from nothing on, in the person's units.

#pragma once

#include "app/desk/plot/pump/pump_curves.h"
#include "app/desk/plot/round_scale.h"
#include "app/desk/words/units.h"

#include <QPointF>
#include <QRectF>

namespace flarestock {

struct PumpAxes {
    QRectF area; ///< Between the axes.
    QString pressureUnit;
    QString flowUnit;
    double onePa = 1; ///< One unit of each, in SI.
    double oneM3S = 1;
    RoundScale pressures;
    RoundScale flows;

    [[nodiscard]] double x(double pa) const
    {
        return pressures.at(pa / onePa, area.left(), area.right());
    }
    [[nodiscard]] double y(double m3S) const
    {
        return flows.at(m3S / oneM3S, area.bottom(), area.top());
    }
    [[nodiscard]] QPointF at(const OperatingPoint &point) const
    {
        return {x(point.pressurePa), y(point.flowM3S)};
    }
};

/// Axes over all that is drawn of the curves; their working point is known.
[[nodiscard]] PumpAxes pumpAxes(const PumpCurves &curves, const QRectF &area, Units units);

} // namespace flarestock
