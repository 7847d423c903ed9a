// SPDX-License-Identifier: MIT

#include "app/desk/plot/pressure/pressure_words.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

using Side = PressurePart::Side;

struct PressureWords {
    Q_DECLARE_TR_FUNCTIONS(PressureAlong)
};

double dropOf(const PressurePart &part)
{
    return part.steps.front().beginsPa() - part.steps.back().endsPa();
}

/// The run that takes most, where there are several.
const PressureStep *mostOf(const PressurePart &part)
{
    if (part.steps.size() < 2)
        return nullptr;
    return &*std::max_element(
        part.steps.begin(), part.steps.end(),
        [](const PressureStep &a, const PressureStep &b) { return a.dropPa() < b.dropPa(); });
}

QString takenBy(const FlowShown &shown, const PressurePart &part)
{
    const QString all = shown.pressure(dropOf(part));
    const PressureStep *most = mostOf(part);
    if (most == nullptr || most->dropPa() <= 0)
        return PressureWords::tr("the line takes %1").arg(all);
    return PressureWords::tr("the line takes %1, most of it %2 to %3: %4")
        .arg(all, shown.station(most->from), shown.station(most->to),
             shown.pressure(most->dropPa()));
}

/// "0.35 psi below the tank at the pump inlet, 3.59 psi from boiling"
QString inletSays(const FlowShown &shown, const PressureLine &line, const PressurePart &part)
{
    const double pa = part.steps.back().endsPa();
    const QString pump = shown.station(part.steps.back().to);
    QString says =
        pa < 0 ? PressureWords::tr("%1 below the air at the inlet of the %2")
                     .arg(shown.pressure(-pa), pump)
               : PressureWords::tr("%1 at the inlet of the %2").arg(shown.pressure(pa), pump);
    const auto &inlet = line.delivery->pumps.front().inlet;
    if (!inlet)
        return says;
    return inlet->marginPa > 0
               ? PressureWords::tr("%1, %2 from boiling").arg(says, shown.pressure(inlet->marginPa))
               : PressureWords::tr("%1: there it boils").arg(says);
}

QString gravitySays(const FlowShown &shown, const PressureLine &line)
{
    const GravityFeed &feed = *line.feed;
    if (!feed.isLevelSaid)
        return PressureWords::tr("nobody says how far the %1 stands above the %2; the line takes "
                                 "%3 with %4")
            .arg(shown.station(line.from), shown.station(line.to), shown.pressure(feed.line.dropPa),
                 shown.flowOf(feed.wantedM3S));
    if (feed.reachesM3S < feed.wantedM3S)
        return PressureWords::tr("the level in the %1 brings only %2 of %3 to the %4")
            .arg(shown.station(line.from), shown.flowOf(feed.reachesM3S),
                 shown.flowOf(feed.wantedM3S), shown.station(line.to));
    return PressureWords::tr("%1 at the %2 with %3, out of the %4 that the level is worth")
        .arg(shown.pressure(-feed.line.dropPa), shown.station(line.to),
             shown.flowOf(feed.wantedM3S), shown.pressure(feed.headPa));
}

QString lossSays(const FlowShown &shown, const PressurePart &part)
{
    return PressureWords::tr("the lines take %1 one after the other; what pressure they begin with "
                             "is not known")
        .arg(shown.pressure(dropOf(part)));
}

QString endSays(const FlowShown &shown, const PressureLine &line, const PressurePart &part)
{
    return PressureWords::tr("%1 at the %2 with %3")
        .arg(shown.pressure(part.steps.back().endsPa()), shown.station(line.to),
             shown.flowOf(line.delivery->line.flowM3S));
}

bool isInFull(const PressureLine &line)
{
    return std::all_of(line.parts.begin(), line.parts.end(), [](const PressurePart &part) {
        return std::all_of(part.steps.begin(), part.steps.end(),
                           [](const PressureStep &step) { return step.inFull; });
    });
}

QString findingSays(const FlowShown &shown, const std::string &where)
{
    const Finding *finding = shown.findingAt(where);
    if (finding == nullptr)
        return {};
    return PressureWords::tr("; %1: %2")
        .arg(inWords(text(finding->severity)), inWords(finding->about));
}

} // namespace

QString pressureTitle(const FlowShown &shown, const PressureLine &line)
{
    return PressureWords::tr("Pressure, %1 to %2")
        .arg(shown.station(line.from), shown.station(line.to));
}

QString pressureSays(const FlowShown &shown, const PressureLine &line)
{
    QStringList says;
    if (line.part(Side::Gravity) != nullptr)
        says.append(gravitySays(shown, line));
    if (const PressurePart *part = line.part(Side::Pressure))
        says << endSays(shown, line, *part) << takenBy(shown, *part);
    if (const PressurePart *part = line.part(Side::Onwards))
        says.append(PressureWords::tr("%1 at the %2")
                        .arg(shown.pressure(part->steps.back().endsPa()),
                             shown.station(part->steps.back().to)));
    if (const PressurePart *part = line.part(Side::Suction))
        says.append(inletSays(shown, line, *part));
    if (const PressurePart *part = line.part(Side::Loss))
        says.append(lossSays(shown, *part));
    if (const PressurePart *part = line.part(Side::Return))
        says.append(PressureWords::tr("the return keeps up %1").arg(shown.pressure(dropOf(*part))));
    if (!isInFull(line))
        says.append(PressureWords::tr("what is not known counts nothing: see the findings"));
    return asSentences(says);
}

QString partTitle(PressurePart::Side side)
{
    switch (side) {
    case Side::Suction:
        return PressureWords::tr("suction");
    case Side::Pressure:
    case Side::Onwards:
        return PressureWords::tr("pressure");
    case Side::Return:
        return PressureWords::tr("return");
    case Side::Gravity:
        return PressureWords::tr("by its level");
    case Side::Loss:
        break;
    }
    return PressureWords::tr("taken by the lines");
}

QString stepSays(const FlowShown &shown, const PressureStep &step)
{
    const RunFlow *flow = shown.flow.run(step.run);
    const QString taken = step.dropPa() >= 0
                              ? PressureWords::tr("takes %1").arg(shown.pressure(step.dropPa()))
                              : PressureWords::tr("brings %1").arg(shown.pressure(-step.dropPa()));
    QString says =
        PressureWords::tr("%1: %2, from %3 to %4, with %5")
            .arg(shown.run(step.run), taken, shown.pressure(step.beginsPa()),
                 shown.pressure(step.endsPa()), shown.flowOf(flow == nullptr ? 0 : flow->flowM3S));
    if (!step.inFull)
        says += PressureWords::tr("; not all of it is known");
    return says + findingSays(shown, step.run);
}

QString stationSays(const FlowShown &shown, const PressureLine &line, const StationAt &at)
{
    const QString name = shown.station(at.station);
    QString says = PressureWords::tr("%1: %2").arg(name, shown.pressure(at.pa));
    const bool isPump =
        line.delivery != nullptr && line.delivery->pumps.front().station == at.station;
    if (isPump && at.side == Side::Suction)
        says = inletSays(shown, line, *line.part(Side::Suction));
    else if (isPump && at.side == Side::Pressure && at.isBeginning)
        says = PressureWords::tr("outlet of the %1: %2").arg(name, shown.pressure(at.pa));
    else if (line.delivery != nullptr && at.station == line.to && at.side == Side::Return)
        says = PressureWords::tr("%1, on its way back: %2").arg(name, shown.pressure(at.pa));
    else if (const PressurePart *part = line.part(Side::Pressure);
             part != nullptr && at.station == line.to)
        for (const PressureLimit &limit : part->limits)
            if (limit.what == PressureLimit::What::LeastSet ||
                limit.what == PressureLimit::What::MostSet)
                says += QString(QStringLiteral("; ") + limitWords(shown, limit).front());
    return says + findingSays(shown, at.station);
}

QStringList limitWords(const FlowShown &shown, const PressureLimit &limit)
{
    const QString pressure = shown.pressure(limit.pa);
    switch (limit.what) {
    case PressureLimit::What::Boils:
        return {PressureWords::tr("it boils: %1").arg(pressure), PressureWords::tr("boils")};
    case PressureLimit::What::TooNear:
        return {PressureWords::tr("too near to boiling: %1").arg(pressure),
                PressureWords::tr("too near"), PressureWords::tr("near")};
    case PressureLimit::What::Set:
        return {PressureWords::tr("set to %1").arg(pressure), PressureWords::tr("set")};
    case PressureLimit::What::LeastSet:
        return {PressureWords::tr("it holds %1 at least").arg(pressure)};
    case PressureLimit::What::MostSet:
        break;
    }
    return {PressureWords::tr("it holds %1 at most").arg(pressure)};
}

} // namespace flarestock
