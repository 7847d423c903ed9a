// SPDX-License-Identifier: MIT

#include "app/desk/words/run_words.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

struct RunWords {
    Q_DECLARE_TR_FUNCTIONS(LineMap)
};

} // namespace

QString saidRunSize(const PlacedRun &run)
{
    int dash = run.dash;
    if (run.line != nullptr) {
        if (const auto *tubing = run.line->as<TubingFacts>())
            return said(tubing->tubeSize);
        if (const auto *hose = run.line->as<HoseFacts>())
            dash = hose->dash;
    }
    return dash != 0 ? QString(u'-' + QString::number(std::abs(dash))) : QString();
}

QString saidRunLength(const Quantity &length, Units units)
{
    const auto metres = length.in(Unit::Metre);
    if (units == Units::Inch || !metres)
        return saidAmount(length, units);
    const Decimal shown = metres->toDecimal(2, Rounding::HalfEven);
    if (shown >= Decimal(1))
        return RunWords::tr("%1 m").arg(saidNumber(shown));
    return RunWords::tr("%1 mm").arg(
        saidNumber(metres->times(Decimal(1000)).toDecimal(0, Rounding::HalfEven)));
}

} // namespace flarestock
