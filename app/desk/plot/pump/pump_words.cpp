// SPDX-License-Identifier: MIT

#include "app/desk/plot/pump/pump_words.h"

#include "app/desk/words/spoken.h"
#include "model/checks/rules/flow/flow_judgement.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

struct PumpWords {
    Q_DECLARE_TR_FUNCTIONS(PumpAndLines)
};

QString pumpsOf(const FlowShown &shown, const PumpCurves &curves)
{
    QStringList names;
    for (const PumpAtWork &pump : curves.delivery->pumps)
        names.append(shown.station(pump.station));
    names.removeDuplicates();
    return names.join(QStringLiteral(" + "));
}

QString meetingSays(const FlowShown &shown, const PumpCurves &curves)
{
    const Delivery &delivery = *curves.delivery;
    const QString at = PumpWords::tr("%1 at %2")
                           .arg(shown.flowOf(delivery.working->flowM3S),
                                shown.pressure(delivery.working->pressurePa));
    switch (delivery.reach) {
    case CurveReach::BelowItsBeginning:
        return PumpWords::tr("the lines want less pressure than the curve begins with: it gives %1 "
                             "at least")
            .arg(at);
    case CurveReach::BeyondItsEnd:
        return PumpWords::tr("the lines want more pressure than the curve ends with: beyond %1 "
                             "nobody knows what it gives")
            .arg(at);
    case CurveReach::Within:
    case CurveReach::NotKnown:
        break;
    }
    if (delivery.wantedM3S <= 0)
        return PumpWords::tr("pump and lines meet at %1").arg(at);
    const QString asked = shown.flowOf(delivery.wantedM3S);
    return rules::isShort(delivery)
               ? PumpWords::tr("the %1 does not carry it: %2, and %3 are asked")
                     .arg(pumpsOf(shown, curves), at, asked)
               : PumpWords::tr("the %1 carries it: %2, and %3 are asked")
                     .arg(pumpsOf(shown, curves), at, asked);
}

QString restSays(const FlowShown &shown, const PumpCurves &curves)
{
    const Delivery &delivery = *curves.delivery;
    if (delivery.balance)
        return delivery.balance->surplusM3S >= 0
                   ? PumpWords::tr("%1 more comes into the %2 than leaves it")
                         .arg(shown.flowOf(delivery.balance->surplusM3S),
                              shown.station(delivery.to))
                   : PumpWords::tr("%1 less comes into the %2 than leaves it")
                         .arg(shown.flowOf(-delivery.balance->surplusM3S),
                              shown.station(delivery.to));
    if (curves.burntM3S <= 0 || curves.restM3S() <= 0)
        return {};
    const QString rest = shown.flowOf(curves.restM3S());
    const QString burnt = shown.flowOf(curves.burntM3S);
    return delivery.end == DeliveryEnd::Bypass
               ? PumpWords::tr("at full power %1 are burnt and %2 go back to the tank; at idle all")
                     .arg(burnt, rest)
               : PumpWords::tr("at full power %1 are burnt; %2 are in reserve").arg(burnt, rest);
}

QString numbersOf(const FlowShown &shown, const std::vector<std::string> &stations)
{
    QStringList numbers;
    for (const std::string &id : stations)
        if (const PlacedStation *station = shown.build().station(id);
            station != nullptr && station->part != nullptr)
            numbers.append(said(station->part->number));
    numbers.removeDuplicates();
    return numbers.join(QStringLiteral(", "));
}

} // namespace

QString pumpTitle(const FlowShown &shown, const PumpCurves &curves)
{
    return PumpWords::tr("What the %1 gives and what its lines want").arg(pumpsOf(shown, curves));
}

QString pumpSays(const FlowShown &shown, const PumpCurves &curves)
{
    return asSentences({meetingSays(shown, curves), restSays(shown, curves)});
}

QString restWords(const PumpCurves &curves)
{
    return curves.delivery->end == DeliveryEnd::Bypass ? PumpWords::tr("back to the tank")
                                                       : PumpWords::tr("in reserve");
}

PlotLayout pumpMissing(const FlowShown &shown, const PumpCurves *curves, const PlotSpace &space)
{
    PlotLayout plot;
    plot.space = space;
    if (curves != nullptr && !curves->without.empty()) {
        plot.whyNone = PumpWords::tr("Nobody has entered what %1 gives at which pressure.")
                           .arg(numbersOf(shown, curves->without));
        plot.whatToDo =
            PumpWords::tr("Enter it in Parts (Alt+6), on its card under \"pump curve\", as its "
                          "maker publishes it: two pressures at least, at the car's voltage.");
    } else if (curves != nullptr) {
        plot.whyNone = PumpWords::tr("Nobody says what pressure is wanted at the %1.")
                           .arg(shown.station(curves->delivery->to));
        plot.whatToDo =
            PumpWords::tr("The template has to say it there (Ctrl+T); what the lines take stands "
                          "in the pressure along the line (Ctrl+2).");
    } else if (!shown.flow.gravityFeeds.empty()) {
        plot.whyNone = PumpWords::tr("No pump: the level in the tank brings the fuel.");
        plot.whatToDo = PumpWords::tr("How far it reaches stands in the pressure along the line "
                                      "(Ctrl+2).");
    } else if (!shown.flow.runs.empty()) {
        plot.whyNone =
            PumpWords::tr("Of this pump its flow counts, %1: it pushes cold as it pushes "
                          "warm.")
                .arg(shown.flowOf(shown.flow.runs.front().flowM3S));
        plot.whatToDo = PumpWords::tr("What the lines take of it stands in the pressure along the "
                                      "line (Ctrl+2).");
    } else {
        plot = nothingFlows(shown, space);
    }
    plot.title = PumpWords::tr("Pump and its lines");
    return plot;
}

} // namespace flarestock
