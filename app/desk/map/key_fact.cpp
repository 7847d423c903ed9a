// SPDX-License-Identifier: MIT

#include "app/desk/map/map_rows.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <cmath>

namespace flarestock {

namespace {

struct FactWords {
    Q_DECLARE_TR_FUNCTIONS(KeyFact)
};

/// At most one digit after the point, none where it is 0.
QString rounded(double value)
{
    return QLocale().toString(std::round(value * 10) / 10, 'g', 6);
}

QString pressures(double lowKpa, double highKpa)
{
    return FactWords::tr("%1–%2 bar").arg(rounded(lowKpa / 100), rounded(highKpa / 100));
}

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

QString pumpFact(const PumpFacts &pump)
{
    if (pump.curve.empty())
        return said(pump.position);
    const PumpFacts::Point &point = pump.curve.back();
    return FactWords::tr("%1 L/h, %2 bar")
        .arg(rounded(point.flowLh), rounded(point.pressureKpa / 100));
}

} // namespace

QString keyFact(const Part &part)
{
    if (const auto *filter = part.as<FilterFacts>(); filter != nullptr && filter->rating)
        return ratingFact(*filter->rating);
    if (const auto *pump = part.as<PumpFacts>())
        return pumpFact(*pump);
    if (const auto *regulator = part.as<RegulatorFacts>();
        regulator != nullptr && regulator->lowKpa && regulator->highKpa)
        return pressures(*regulator->lowKpa, *regulator->highKpa);
    if (const auto *user = part.as<FuelUserFacts>();
        user != nullptr && user->pressureLowKpa && user->pressureHighKpa)
        return pressures(*user->pressureLowKpa, *user->pressureHighKpa);
    if (const auto *vessel = part.as<VesselFacts>(); vessel != nullptr && vessel->litres)
        return FactWords::tr("%1 L").arg(rounded(*vessel->litres));
    QStringList sizes;
    for (const PartPort &port : part.ports) {
        const QString size = said(port.port.size);
        if (!sizes.contains(size) && sizes.size() < 3)
            sizes.append(size);
    }
    return sizes.join(QStringLiteral(" / "));
}

} // namespace flarestock
