// SPDX-License-Identifier: MIT

#include "app/desk/words/key_fact.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

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

QString pumpFact(const PumpFacts &pump, Units units)
{
    if (pump.curve.empty())
        return said(pump.position);
    const PumpFacts::Point &point = pump.curve.back();
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
