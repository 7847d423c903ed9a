// SPDX-License-Identifier: MIT

#include "app/command/flow/flow_document.h"

#include "app/command/command.h"
#include "app/workshop/flow/flow_words.h"

#include <QJsonArray>

namespace flarestock {

namespace {

QJsonValue orNull(const std::optional<double> &figure)
{
    return figure ? QJsonValue(*figure) : QJsonValue();
}

QJsonArray listOf(const std::vector<std::string> &texts)
{
    QJsonArray list;
    for (const auto &text : texts)
        list.append(jsonText(text));
    return list;
}

QJsonObject liquidDocument(const Expansion &build, const SystemFlow &flow)
{
    return {
        {QStringLiteral("name"), jsonText(text(*build.fluid))},
        {QStringLiteral("temperatureC"), flow.liquidC},
        {QStringLiteral("densityKgM3"), flow.liquid->densityKgM3},
        {QStringLiteral("viscosityPaS"), flow.liquid->viscosityPaS},
        {QStringLiteral("vapourPa"), flow.vapour ? QJsonValue(flow.vapour->pascal) : QJsonValue()},
        {QStringLiteral("status"), jsonText(flow.liquid->status)},
        {QStringLiteral("source"), jsonText(flow.liquid->source)}};
}

QJsonObject conditionsDocument(const FlowConditions &conditions)
{
    return {{QStringLiteral("altitudeM"), conditions.altitudeM},
            {QStringLiteral("reidPa"), conditions.reidPa},
            {QStringLiteral("volts"), conditions.volts},
            {QStringLiteral("accelerationMS2"), conditions.accelerationMS2},
            {QStringLiteral("boostPa"), conditions.boostPa},
            {QStringLiteral("margin"), conditions.margin}};
}

QJsonObject runDocument(const Expansion &build, const RunFlow &run)
{
    const auto *placed = build.run(run.run);
    const bool line = run.boreM > 0;
    const auto inLine = [line](double figure) { return line ? QJsonValue(figure) : QJsonValue(); };
    return {{QStringLiteral("line"), jsonText(run.run)},
            {QStringLiteral("from"), jsonText(placed->from)},
            {QStringLiteral("to"), jsonText(placed->to)},
            {QStringLiteral("role"), jsonText(text(run.role))},
            {QStringLiteral("part"),
             placed->line == nullptr ? QJsonValue() : jsonText(placed->line->number)},
            {QStringLiteral("flowM3S"), run.flowM3S},
            {QStringLiteral("boreM"), inLine(run.boreM)},
            {QStringLiteral("boreAssumed"), run.line.straight && run.line.straight->boreAssumed},
            {QStringLiteral("velocityMS"), inLine(run.velocityMS)},
            {QStringLiteral("reynolds"), inLine(run.reynolds)},
            {QStringLiteral("regime"), line ? jsonText(text(run.regime)) : QJsonValue()},
            {QStringLiteral("frictionPa"), run.loss.frictionPa},
            {QStringLiteral("endsPa"), run.loss.minorPa},
            {QStringLiteral("filterPa"), run.loss.filterPa},
            {QStringLiteral("levelPa"), run.loss.levelPa},
            {QStringLiteral("accelerationPa"), run.loss.accelerationPa},
            {QStringLiteral("dropPa"), run.loss.dropPa},
            {QStringLiteral("dropLeastPa"), run.loss.dropLeastPa},
            {QStringLiteral("inFull"), !run.line.lossUnknown && !run.line.unfinished}};
}

QJsonValue sectionDocument(const LineSection &section)
{
    if (section.runs.empty())
        return {};
    return QJsonObject{{QStringLiteral("role"), jsonText(text(section.role))},
                       {QStringLiteral("from"), jsonText(section.from)},
                       {QStringLiteral("to"), jsonText(section.to)},
                       {QStringLiteral("lines"), listOf(section.runs)},
                       {QStringLiteral("flowM3S"), section.flowM3S},
                       {QStringLiteral("dropPa"), section.dropPa},
                       {QStringLiteral("dropLeastPa"), section.dropLeastPa},
                       {QStringLiteral("inFull"), !section.lossUnknown}};
}

QJsonObject pointDocument(const OperatingPoint &point)
{
    return {{QStringLiteral("flowM3S"), point.flowM3S},
            {QStringLiteral("pressurePa"), point.pressurePa}};
}

QJsonArray pointsDocument(const std::vector<OperatingPoint> &points)
{
    QJsonArray all;
    for (const auto &point : points)
        all.append(pointDocument(point));
    return all;
}

QJsonArray pumpsDocument(const Delivery &delivery)
{
    QJsonArray pumps;
    for (const auto &pump : delivery.pumps) {
        QJsonObject said{{QStringLiteral("station"), jsonText(pump.station)},
                         {QStringLiteral("flowM3S"), pump.flowM3S},
                         {QStringLiteral("pressurePa"),
                          delivery.working ? QJsonValue(pump.pressurePa) : QJsonValue()},
                         {QStringLiteral("suction"), sectionDocument(pump.suction)},
                         {QStringLiteral("inlet"), QJsonValue()}};
        if (pump.inlet)
            said[QStringLiteral("inlet")] =
                QJsonObject{{QStringLiteral("atmospherePa"), pump.inlet->atmospherePa},
                            {QStringLiteral("inletPa"), pump.inlet->inletPa},
                            {QStringLiteral("marginPa"), pump.inlet->marginPa},
                            {QStringLiteral("npshM"), pump.inlet->npshM}};
        pumps.append(said);
    }
    return pumps;
}

QJsonValue regulatorDocument(const Expansion &build, const Delivery &delivery)
{
    const auto held = heldBy(build, delivery);
    if (!held)
        return {};
    const auto &range = *held;
    return QJsonObject{{QStringLiteral("keepsUpPa"), range.floorPa},
                       {QStringLiteral("ownPa"), orNull(range.ownPa)},
                       {QStringLiteral("fromPa"), range.fromPa},
                       {QStringLiteral("toPa"), range.toPa},
                       {QStringLiteral("holds"),
                        delivery.setPa ? QJsonValue(range.holds(*delivery.setPa)) : QJsonValue()},
                       {QStringLiteral("overItsFlow"), range.overItsFlow}};
}

QJsonValue surgeTankDocument(const Delivery &delivery)
{
    if (!delivery.balance)
        return {};
    return QJsonObject{{QStringLiteral("leastLiftM3S"), delivery.balance->leastLiftM3S},
                       {QStringLiteral("surplusM3S"), delivery.balance->surplusM3S},
                       {QStringLiteral("emptyAfterS"), orNull(delivery.balance->emptyAfterS)}};
}

QJsonArray pressuresDocument(const Delivery &delivery)
{
    QJsonArray points;
    for (const auto &point : delivery.pressures)
        points.append(QJsonObject{{QStringLiteral("distanceM"), point.alongM},
                                  {QStringLiteral("pressurePa"), point.totalPa},
                                  {QStringLiteral("wallPressurePa"), point.wallPa},
                                  {QStringLiteral("at"), jsonText(point.at)}});
    return points;
}

QJsonValue curveDocument(const Delivery &delivery)
{
    if (!delivery.picture)
        return {};
    return QJsonObject{{QStringLiteral("pumps"), pointsDocument(delivery.picture->pumps)},
                       {QStringLiteral("system"), pointsDocument(delivery.picture->system)},
                       {QStringLiteral("operating"), pointDocument(delivery.picture->meeting)}};
}

QJsonObject deliveryDocument(const Expansion &build, const Delivery &delivery)
{
    QJsonArray bowls;
    for (const auto &bowl : delivery.bowls)
        bowls.append(sectionDocument(bowl));
    return {
        {QStringLiteral("to"), jsonText(delivery.to)},
        {QStringLiteral("end"), jsonText(text(delivery.end))},
        {QStringLiteral("setPa"), orNull(delivery.setPa)},
        {QStringLiteral("wantedM3S"), delivery.wantedM3S},
        {QStringLiteral("reach"), jsonText(text(delivery.reach))},
        {QStringLiteral("operating"),
         delivery.working ? QJsonValue(pointDocument(*delivery.working)) : QJsonValue()},
        {QStringLiteral("pumps"), pumpsDocument(delivery)},
        {QStringLiteral("line"), sectionDocument(delivery.line)},
        {QStringLiteral("onwards"), bowls},
        {QStringLiteral("return"), delivery.back ? sectionDocument(*delivery.back) : QJsonValue()},
        {QStringLiteral("regulator"), regulatorDocument(build, delivery)},
        {QStringLiteral("surgeTank"), surgeTankDocument(delivery)},
        {QStringLiteral("pressureAlong"), pressuresDocument(delivery)},
        {QStringLiteral("pumpCurve"), curveDocument(delivery)}};
}

QJsonObject gravityDocument(const GravityFeed &feed)
{
    const auto ifSaid = [&feed](double figure) {
        return feed.isLevelSaid ? QJsonValue(figure) : QJsonValue();
    };
    return {{QStringLiteral("user"), jsonText(feed.user)},
            {QStringLiteral("line"), sectionDocument(feed.line)},
            {QStringLiteral("wantedM3S"), feed.wantedM3S},
            {QStringLiteral("headPa"), ifSaid(feed.headPa)},
            {QStringLiteral("reachesM3S"), ifSaid(feed.reachesM3S)},
            {QStringLiteral("leavesPa"), ifSaid(-feed.line.dropPa)}};
}

} // namespace

QJsonObject flowDocument(const Expansion &build, const SystemFlow &flow)
{
    QJsonArray lines;
    for (const auto &run : flow.runs)
        lines.append(runDocument(build, run));
    QJsonArray deliveries;
    for (const auto &delivery : flow.deliveries)
        deliveries.append(deliveryDocument(build, delivery));
    QJsonArray feeds;
    for (const auto &feed : flow.gravityFeeds)
        feeds.append(gravityDocument(feed));
    return {{QStringLiteral("template"), jsonText(build.templateId)},
            {QStringLiteral("liquid"), liquidDocument(build, flow)},
            {QStringLiteral("conditions"), conditionsDocument(flow.conditions)},
            {QStringLiteral("engineM3S"), orNull(flow.engineM3S)},
            {QStringLiteral("lines"), lines},
            {QStringLiteral("deliveries"), deliveries},
            {QStringLiteral("gravityFeeds"), feeds},
            {QStringLiteral("assumed"), listOf(assumptions(build, flow))},
            {QStringLiteral("notKnown"), listOf(flow.unknown)}};
}

} // namespace flarestock
