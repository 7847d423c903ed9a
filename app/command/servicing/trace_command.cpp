// SPDX-License-Identifier: MIT
//
// `flarestock trace`: where a lot, a serial or a part came from and went, and what to do about it.

#include "app/command/servicing/car_sheet.h"
#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/garage/lots/lot_trace.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct TraceAsked : ShopAsked {
    std::string what;
};

QJsonArray arrayOf(const std::set<std::string> &all)
{
    QJsonArray array;
    for (const std::string &one : all)
        array.append(jsonText(one));
    return array;
}

QJsonArray arrayOf(const std::set<LotKey> &all)
{
    QJsonArray array;
    for (const LotKey &one : all)
        array.append(QJsonObject{
            {QStringLiteral("part"), jsonText(one.part)},
            {QStringLiteral("lot"), one.lot.empty() ? QJsonValue() : jsonText(one.lot)}});
    return array;
}

QJsonObject documentOf(const LiesNow &lies, const Workshop &workshop)
{
    const Part *part = workshop.part(lies.key.part);
    return {
        {QStringLiteral("part"), jsonText(lies.key.part)},
        {QStringLiteral("lot"), textOrNull(lies.key.lot)},
        {QStringLiteral("place"), jsonText(lies.key.place)},
        {QStringLiteral("kind"), jsonText(text(lies.place->kind))},
        {QStringLiteral("condition"), jsonText(text(lies.key.condition))},
        {QStringLiteral("quantity"), jsonText(amountText(lies.quantity, lies.key.part, workshop))},
        {QStringLiteral("unit"), part ? jsonText(text(part->unit)) : QJsonValue()},
        {QStringLiteral("position"), textOrNull(lies.position)}};
}

QJsonObject documentOf(const TraceAct &act, const Workshop &workshop)
{
    QJsonObject said = documentOf(act.lies, workshop);
    said.insert(QStringLiteral("do"), jsonText(act.todo));
    said.insert(QStringLiteral("system"), textOrNull(act.system));
    said.insert(QStringLiteral("event"), textOrNull(act.event));
    said.insert(QStringLiteral("by"), textOrNull(act.by));
    said.insert(QStringLiteral("freeInstead"), textOrNull(act.free));
    return said;
}

QJsonObject documentOf(const LotTrace &trace, const Workshop &workshop)
{
    QJsonArray cameIn;
    for (const CameIn &one : trace.cameIn) {
        QJsonObject said = movementDocument(one.movement, workshop);
        said.insert(QStringLiteral("opening"), one.opening);
        cameIn.append(said);
    }
    QJsonArray now;
    for (const LiesNow &one : trace.now)
        now.append(documentOf(one, workshop));
    QJsonArray cars;
    for (const CarriedBy &one : trace.cars)
        cars.append(QJsonObject{{QStringLiteral("car"), jsonText(one.car)},
                                {QStringLiteral("has"), one.has},
                                {QStringLiteral("positions"), arrayOf(one.positions)},
                                {QStringLiteral("builds"), arrayOf(one.builds)}});
    QJsonArray acts;
    for (const TraceAct &one : trace.acts)
        acts.append(documentOf(one, workshop));
    return {{QStringLiteral("pieces"), arrayOf(trace.pieces)},
            {QStringLiteral("sources"), arrayOf(trace.sources)},
            {QStringLiteral("withoutLot"), arrayOf(trace.unnamed)},
            {QStringLiteral("cameIn"), cameIn},
            {QStringLiteral("now"), now},
            {QStringLiteral("cars"), cars},
            {QStringLiteral("hoses"), arrayOf(trace.hoses)},
            {QStringLiteral("acts"), acts}};
}

std::string listOf(const std::set<std::string> &all)
{
    std::string text;
    for (const std::string &one : all)
        text += (text.empty() ? "" : ", ") + one;
    return text;
}

std::string cameFrom(const LotTrace &trace, const Workshop &workshop)
{
    std::string text;
    for (const CameIn &one : trace.cameIn) {
        const Movement &movement = one.movement;
        text += "  came in " + dayOf(movement.at) + " from " + movement.from + ": " +
                pieceText({movement.part, movement.newLot.value_or(movement.lot)}) + ", " +
                amountText(movement.quantity, movement.part, workshop) +
                (movement.document.empty() ? "" : " (" + movement.document + ")") + "\n";
    }
    for (const CarriedBy &one : trace.cars)
        text += "  " + one.car + (one.has ? " has it" : " had it") +
                (one.builds.empty() ? "" : ", for " + listOf(one.builds)) + "\n";
    if (!trace.hoses.empty())
        text += "  made-up hoses of it: " + listOf(trace.hoses) + "\n";
    for (const LotKey &one : trace.unnamed)
        text += "  some of it went among " + one.part + " without a lot: look at all of them\n";
    return text;
}

std::string sheetOf(const LotTrace &trace, const Workshop &workshop)
{
    using Side = TextTable::Side;
    using Shown = TextTable::Shown;
    TextTable table({{"do", Side::Left},
                     {"piece", Side::Left},
                     {"quantity", Side::Right},
                     {"at", Side::Left},
                     {"position", Side::Left, Shown::WhereFilled},
                     {"system", Side::Left, Shown::WhereFilled},
                     {"before", Side::Left, Shown::WhereFilled},
                     {"free instead", Side::Left, Shown::WhereFilled}});
    for (const TraceAct &act : trace.acts) {
        const Part *part = workshop.part(act.lies.key.part);
        table.add({act.todo, pieceText({act.lies.key.part, act.lies.key.lot}),
                   part ? spoken(act.lies.quantity, *part) : std::to_string(act.lies.quantity),
                   act.lies.key.place, act.lies.position, act.system,
                   act.event.empty() ? "" : act.event + ", " + act.by, act.free});
    }
    return cameFrom(trace, workshop) +
           (trace.acts.empty()
                ? "  nothing of it is here any more\n"
                : "  only if it is bad, what is most dangerous first:\n" + table.text());
}

void answerTrace(const TraceAsked &asked, OpenShop &shop)
{
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    const auto movements = shop.file.movements();
    if (!movements)
        return shop.outcome.refuse(movements.error());
    const auto trace = traceOf(asked.what, *garage, *movements, dayOf(shop.by.at));
    if (!trace)
        return shop.outcome.refuse(trace.error());
    if (asked.json)
        return shop.outcome.print(documentOf(*trace, *shop.workshop));
    shop.outcome.out += sheetOf(*trace, *shop.workshop);
}

} // namespace

void addTraceCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TraceAsked>();
    CLI::App *command = app.add_subcommand(
        "trace", "Where a lot, a serial or a part came from and went, and what to do about it.");
    command->add_option("WHAT", asked->what, "a lot, a serial, the tag of a hose, or a part")
        ->required();
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerTrace(*asked, shop); });
    });
}

} // namespace flarestock
