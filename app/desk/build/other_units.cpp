// SPDX-License-Identifier: MIT

#include "app/desk/build/other_units.h"

#include "app/desk/words/spoken.h"

#include <QRegularExpression>

#include <cmath>

namespace flarestock {

namespace {

/// Whether a unit of the other kind stands in it.
bool isOfOthers(const QString &answer, Units units)
{
    static const QRegularExpression inches(QStringLiteral("(in|ft|yd|\"|'|psi)\\s*$"));
    static const QRegularExpression metric(QStringLiteral("(\\bm|mm|cm|bar|Pa)\\s*$"));
    return answer.contains(units == Units::Metric ? inches : metric);
}

} // namespace

QString saidInUnits(const std::string &answer, Dimension dimension, Units units)
{
    if ((dimension != Dimension::Length && dimension != Dimension::Pressure) ||
        !isOfOthers(said(answer), units))
        return {};
    const auto measure = Measure::parse(answer, dimension);
    if (!measure)
        return {};
    if (dimension == Dimension::Pressure)
        return saidPressure(measure->si / 1000, units);
    constexpr double InOneMetre = 1e7; // As fine as the decimal that it becomes.
    const auto fine = static_cast<std::int64_t>(std::llround(measure->si * InOneMetre));
    return saidAmount({Decimal::scaled(fine, 4).stripped(), Unit::Millimetre}, units);
}

} // namespace flarestock
