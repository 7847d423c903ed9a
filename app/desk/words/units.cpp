// SPDX-License-Identifier: MIT

#include "app/desk/words/units.h"

#include "app/desk/words/spoken.h"
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

/// `exact` in steps of 1/`steps`, half to even.
Decimal inSteps(const Rational &exact, std::int32_t steps)
{
    const Decimal count = exact.times(Decimal(steps)).toDecimal(0, Rounding::HalfEven);
    return Rational(count, Decimal(steps)).toDecimal(4, Rounding::HalfEven); // 1/16 = 0.0625
}

Unit priceUnit(Units units)
{
    return units == Units::Inch ? Unit::Foot : Unit::Metre;
}

} // namespace

QString saidAmount(const Quantity &quantity, Units units)
{
    const Unit tape = units == Units::Inch ? Unit::Inch : Unit::Millimetre;
    const auto exact = isLength(quantity.unit) ? quantity.in(tape) : quantity.in(quantity.unit);
    if (!exact || !isLength(quantity.unit))
        return saidQuantity(quantity);
    const Decimal shown = inSteps(*exact, units == Units::Inch ? 16 : 10);
    const QString about = Rational(shown) == *exact ? QString() : QStringLiteral("≈ ");
    if (units == Units::Inch)
        return about + saidQuantity({shown, Unit::Inch});
    return about + UnitWords::tr("%1 mm").arg(saidNumber(shown.stripped()));
}

QString typedAmount(const Quantity &quantity, Units units)
{
    const Unit tape = units == Units::Inch ? Unit::Inch : Unit::Millimetre;
    const auto exact = isLength(quantity.unit) ? quantity.in(tape) : quantity.in(quantity.unit);
    if (!exact || !isLength(quantity.unit))
        return localised(said(quantity.spoken()));
    const Decimal shown = exact->toDecimal(6, Rounding::HalfEven); // 125 nm, as stock is counted
    const bool isSaid = Rational(shown) == *exact;
    return localised(said((isSaid ? Quantity{shown.stripped(), tape} : quantity).spoken()));
}

QString saidPriceUnit(Unit unit, Units units)
{
    if (!isLength(unit))
        return {};
    return units == Units::Inch ? UnitWords::tr("/ ft") : UnitWords::tr("/ m");
}

Rational pricePer(const Rational &price, Unit unit, Units units)
{
    if (!isLength(unit))
        return price;
    const auto inPriceUnit = Quantity{Decimal(1), unit}.in(priceUnit(units));
    return inPriceUnit ? price.over(*inPriceUnit) : price;
}

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

QString saidFinePressure(double kPa, Units units)
{
    if (units == Units::Inch) {
        const double psi = psis(kPa);
        return UnitWords::tr("%1 psi").arg(rounded(psi, std::abs(psi) < 10 ? 2 : 1));
    }
    if (std::abs(kPa) < 10)
        return UnitWords::tr("%1 mbar").arg(rounded(kPa * 10, std::abs(kPa) < 1 ? 1 : 0));
    return UnitWords::tr("%1 bar").arg(rounded(bars(kPa), 2));
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
