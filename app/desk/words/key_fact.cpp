// SPDX-License-Identifier: MIT

#include "app/desk/words/key_fact.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

struct FactWords {
    Q_DECLARE_TR_FUNCTIONS(KeyFact)
};

QString ratingFact(const MicronRating &rating)
{
    QString size = FactWords::tr("%1 µm").arg(saidNumber(rating.micron));
    switch (rating.basis) {
    case RatingBasis::Nominal:
        return FactWords::tr("%1 nominal").arg(size);
    case RatingBasis::Absolute:
        return FactWords::tr("%1 absolute").arg(size);
    case RatingBasis::Unstated:
        break;
    }
    return size;
}

/// Of those at the highest voltage the one at 3 bar, by which pumps for injection are named (common
/// practice, no source); of a pump that is not made for that, the one in the middle.
const PumpFacts::Point &usualPoint(const std::vector<PumpFacts::Point> &curve)
{
    constexpr double UsualKpa = 300;
    const auto first =
        std::find_if(curve.begin(), curve.end(), [&curve](const PumpFacts::Point &one) {
            return one.volts == curve.back().volts;
        });
    const auto usual = std::find_if(first, curve.end(), [](const PumpFacts::Point &one) {
        return std::abs(one.pressureKpa - UsualKpa) < 1;
    });
    return usual != curve.end() ? *usual : *(first + (curve.end() - first - 1) / 2);
}

QString pumpFact(const PumpFacts &pump, Units units)
{
    if (pump.curve.empty())
        return said(pump.position);
    const PumpFacts::Point &point = usualPoint(pump.curve);
    return FactWords::tr("%1, %2").arg(saidFlow(point.flowLh, units),
                                       saidPressure(point.pressureKpa, units));
}

QString sizesOf(const Part &part)
{
    QStringList sizes;
    for (const PartPort &port : part.ports) {
        const QString size = said(port.port.size);
        if (!sizes.contains(size) && sizes.size() < 3)
            sizes.append(size);
    }
    return sizes.join(QStringLiteral(" / "));
}

} // namespace

QString keyFact(const Part &part, Units units)
{
    if (const auto *filter = part.as<FilterFacts>(); filter != nullptr && filter->rating)
        return ratingFact(*filter->rating);
    if (const auto *pump = part.as<PumpFacts>())
        return pumpFact(*pump, units);
    if (const auto *regulator = part.as<RegulatorFacts>();
        regulator != nullptr && regulator->lowKpa && regulator->highKpa)
        return saidPressures(*regulator->lowKpa, *regulator->highKpa, units);
    if (const auto *user = part.as<FuelUserFacts>();
        user != nullptr && user->pressureLowKpa && user->pressureHighKpa)
        return saidPressures(*user->pressureLowKpa, *user->pressureHighKpa, units);
    if (const auto *vessel = part.as<VesselFacts>(); vessel != nullptr && vessel->litres)
        return saidVolume(*vessel->litres, units);
    return sizesOf(part);
}

} // namespace flarestock
