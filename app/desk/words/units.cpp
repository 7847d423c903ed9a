// SPDX-License-Identifier: MIT

#include "app/desk/words/units.h"

#include "model/fluids/measure.h"

#include <QCoreApplication>

#include <cmath>

namespace flarestock {

namespace {

struct UnitWords {
    Q_DECLARE_TR_FUNCTIONS(Units)
};

/// At most so many digits after the point, none of them a closing 0.
QString rounded(double value, int digits)
{
    const double step = std::pow(10, digits);
    return QLocale().toString(std::round(value * step) / step, 'g', 8);
}

double bars(double kPa)
{
    return in({Dimension::Pressure, kPa * 1e3, {}}, "bar");
}

double psis(double kPa)
{
    return in({Dimension::Pressure, kPa * 1e3, {}}, "psi");
}

} // namespace

Units unitsOf(const QLocale &locale)
{
    return locale.measurementSystem() == QLocale::ImperialUSSystem ? Units::Inch : Units::Metric;
}

QString saidPressure(double kPa, Units units)
{
    return units == Units::Inch ? UnitWords::tr("%1 psi").arg(rounded(psis(kPa), 1))
                                : UnitWords::tr("%1 bar").arg(rounded(bars(kPa), 1));
}

QString saidPressures(double lowKPa, double highKPa, Units units)
{
    return units == Units::Inch
               ? UnitWords::tr("%1–%2 psi").arg(rounded(psis(lowKPa), 1), rounded(psis(highKPa), 1))
               : UnitWords::tr("%1–%2 bar")
                     .arg(rounded(bars(lowKPa), 1), rounded(bars(highKPa), 1));
}

QString saidFlow(double litresAnHour, Units units)
{
    if (units == Units::Metric)
        return UnitWords::tr("%1 L/h").arg(rounded(litresAnHour, 1));
    const Measure flow{Dimension::VolumeFlow, litresAnHour * 1e-3 / 3600, {}};
    return UnitWords::tr("%1 gph").arg(rounded(in(flow, "gph"), 0));
}

QString saidVolume(double litres, Units units)
{
    return units == Units::Metric ? UnitWords::tr("%1 L").arg(rounded(litres, 1))
                                  : UnitWords::tr("%1 gal").arg(rounded(
                                        in({Dimension::Volume, litres * 1e-3, {}}, "gal"), 1));
}

QString saidBore(double mm, Units units)
{
    return units == Units::Metric
               ? UnitWords::tr("%1 mm bore").arg(rounded(mm, 1))
               : UnitWords::tr("%1 in bore")
                     .arg(rounded(in({Dimension::Length, mm * 1e-3, {}}, "in"), 2));
}

} // namespace flarestock
