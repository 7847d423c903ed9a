// SPDX-License-Identifier: MIT
//
// `flarestock trailer`: copies of the shop that go along without a network, and come back.

#include "app/command/shop_options.h"
#include "app/command/trailer/bringing_sheet.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct TrailerAsked : ShopAsked {
    std::string file; ///< The copy.
    std::string name;
    std::string with;
    std::vector<std::string> places;
    std::vector<std::string> decisions;
    bool goesOn = false;
    bool strict = false;
};

Said saidBy(const OpenShopFile &shop)
{
    return {*shop.by.action, shop.by.who, shop.by.why, shop.by.at};
}

void sayTrip(const Trip &trip, const std::string &said, OpenShopFile &shop)
{
    if (!shop.asked.json)
        return shop.outcome.print(said);
    QJsonObject document{{QStringLiteral("copy"), jsonText(trip.name)},
                         {QStringLiteral("trip"), jsonText(trip.trip)},
                         {QStringLiteral("record"), jsonText(trip.id.text())}};
    QJsonArray places;
    for (const std::string &place : trip.places)
        places.append(jsonText(place));
    document.insert(QStringLiteral("places"), places);
    shop.outcome.print(document);
}

void take(const TrailerAsked &asked, OpenShopFile &shop)
{
    const auto trip = Travelling::take(shop.file, asked.file,
                                       {asked.name, asked.with, asked.places}, saidBy(shop));
    if (!trip)
        return shop.outcome.refuse(trip.error());
    std::string places;
    for (const std::string &place : trip->places)
        places += (places.empty() ? "" : ", ") + place;
    sayTrip(*trip,
            "taken along as \"" + trip->name + "\": " + asked.file +
                (places.empty() ? ", with no place of its own"
                                : "; until it is brought back it has " + places),
            shop);
}

/// "count:BK-A@A1=shop": by the last equals sign, as a name may hold one.
Result<std::map<std::string, std::string>> decisionsOf(const std::vector<std::string> &typed)
{
    std::map<std::string, std::string> decisions;
    for (const std::string &one : typed) {
        const auto equals = one.rfind('=');
        if (equals == std::string::npos || equals == 0 || equals + 1 == one.size())
            return problem("--decide " + one, "is no decision",
                           "Write NAME=WORD, as flarestock trailer look lists them.");
        if (!decisions.emplace(one.substr(0, equals), one.substr(equals + 1)).second)
            return problem("--decide " + one, "decides on the same twice", "Say one word on it.");
    }
    return decisions;
}

void bring(const TrailerAsked &asked, bool looks, OpenShopFile &shop)
{
    auto decisions = decisionsOf(asked.decisions);
    if (!decisions)
        return shop.outcome.refuse(decisions.error());
    const auto back = Travelling::bring(shop.file, asked.file,
                                        {std::move(*decisions), asked.goesOn, looks}, saidBy(shop));
    if (!back)
        return shop.outcome.refuse(back.error());
    if (asked.json)
        shop.outcome.print(bringingDocument(*back));
    else
        printBringing(*back, shop.outcome);
    const bool isOpen = !openIn(*back).empty();
    if (isOpen && (!looks || asked.strict))
        shop.outcome.ending = Ending::Attention;
}

void list(OpenShopFile &shop)
{
    const auto trips = Travelling::trips(shop.file);
    const auto own = trips ? Travelling::ownTrip(shop.file)
                           : Result<std::optional<Trip>>(tl::unexpected(trips.error()));
    if (!own)
        return shop.outcome.refuse(own.error());
    if (shop.asked.json)
        shop.outcome.print(tripsDocument(*trips, *own));
    else
        printTrips(*trips, *own, shop.outcome);
}

using Answer = std::function<void(const TrailerAsked &, OpenShopFile &)>;
void answerBy(CLI::App &command, const std::shared_ptr<TrailerAsked> &asked,
              CommandOutcome &outcome, const Answer &answer)
{
    addShopOptions(command, *asked);
    command.callback([asked, &outcome, answer] {
        withShopFile(*asked, OpenMode::ReadWrite, outcome,
                     [&](OpenShopFile &shop) { answer(*asked, shop); });
    });
}

void addTake(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "take", "Makes a copy of the shop for another machine; its places are its own while it is "
                "away.");
    command->add_option("--to", asked->file, "the new file")->required();
    command
        ->add_option("--places", asked->places,
                     "a place that goes along; several times; not said: all drawers")
        ->allow_extra_args(false);
    command->add_option("--name", asked->name, "what the copy is called; else as its file");
    command->add_option("--with", asked->with, "who has it");
    answerBy(*command, asked, outcome, take);
}

void addBring(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "bring", "Takes in what is new in a copy, all or nothing, each entry once; exit status 1 "
                 "where something has to be decided first.");
    command->add_option("FILE", asked->file, "the copy")->required();
    command
        ->add_option("--decide", asked->decisions,
                     "NAME=WORD on what disagrees, as look lists it; several times")
        ->allow_extra_args(false);
    command->add_flag("--goes-on", asked->goesOn,
                      "it stays away with its places, and will be brought again");
    answerBy(*command, asked, outcome,
             [](const TrailerAsked &typed, OpenShopFile &shop) { bring(typed, false, shop); });
}

void addLook(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "look", "Says what a copy would bring and what disagrees; writes nothing.");
    command->add_option("FILE", asked->file, "the copy")->required();
    command->add_option("--decide", asked->decisions, "as if that were decided: NAME=WORD")
        ->allow_extra_args(false);
    command->add_flag("--strict", asked->strict, "exit status 1 where something has to be decided");
    answerBy(*command, asked, outcome,
             [](const TrailerAsked &typed, OpenShopFile &shop) { bring(typed, true, shop); });
}

void addRelease(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "release", "Says that the shop uses a place although it is away with a copy.");
    command->add_option("COPY", asked->name, "its name, as trailer list says it")->required();
    command->add_option("--places", asked->places, "a place of it; several times")
        ->required()
        ->allow_extra_args(false);
    answerBy(*command, asked, outcome, [](const TrailerAsked &typed, OpenShopFile &shop) {
        const auto trip = Travelling::release(shop.file, typed.name, typed.places, saidBy(shop));
        if (!trip)
            return shop.outcome.refuse(trip.error());
        sayTrip(*trip, "released: the shop uses it although it is with \"" + trip->name + '"',
                shop);
    });
}

void addEnd(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "end",
        "Says that a copy does not come back, or need not: its places are the shop's again.");
    command->add_option("COPY", asked->name, "its name, as trailer list says it")->required();
    answerBy(*command, asked, outcome, [](const TrailerAsked &typed, OpenShopFile &shop) {
        const auto trip = Travelling::end(shop.file, typed.name, saidBy(shop));
        if (!trip)
            return shop.outcome.refuse(trip.error());
        sayTrip(*trip,
                "ended: \"" + trip->name +
                    "\" is away no more; were it brought all the same, what "
                    "is new in it would come",
                shop);
    });
}

void addList(CLI::App &trailer, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TrailerAsked>();
    CLI::App *command = trailer.add_subcommand(
        "list", "Lists the copies that went along: who has them, since when, with which places.");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback(
        [asked, &outcome] { withShopFile(*asked, OpenMode::ReadOnly, outcome, list); });
}

} // namespace

void addTrailerCommand(CLI::App &app, CommandOutcome &outcome)
{
    CLI::App *trailer = app.add_subcommand(
        "trailer", "Copies of the shop that go along without a network, and come back.");
    trailer->require_subcommand(1);
    addTake(*trailer, outcome);
    addBring(*trailer, outcome);
    addLook(*trailer, outcome);
    addList(*trailer, outcome);
    addRelease(*trailer, outcome);
    addEnd(*trailer, outcome);
}

} // namespace flarestock
