// SPDX-License-Identifier: MIT
//
// `flarestock place`: lists the places of a shop, or adds one.

#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/stockroom/byhand/new_place.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct PlaceAsked {
    std::string shop;
    std::string id;
    std::string title;
    std::string kind;
    bool json = false;
};

void listPlaces(const PlaceAsked &asked, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    const auto places = file->places();
    if (!places)
        return outcome.refuse(places.error());
    using Side = TextTable::Side;
    TextTable table({{"place", Side::Left}, {"kind", Side::Left}, {"what it is", Side::Left}});
    QJsonArray all;
    for (const Place &place : *places) {
        table.add({place.id, std::string(text(place.kind)), place.title});
        all.append(QJsonObject{{QStringLiteral("place"), jsonText(place.id)},
                               {QStringLiteral("kind"), jsonText(text(place.kind))},
                               {QStringLiteral("title"), jsonText(place.title)}});
    }
    if (asked.json)
        return outcome.print(QJsonObject{{QStringLiteral("places"), all}});
    outcome.out += table.text();
    outcome.print(counted(places->size(), "place"));
}

void addPlace(const PlaceAsked &asked, CommandOutcome &outcome)
{
    const auto place = placeOf({asked.id, asked.kind, asked.title});
    if (!place)
        return outcome.refuse(place.error());
    auto file = ShopFile::open(asked.shop, OpenMode::ReadWrite);
    if (!file)
        return outcome.refuse(file.error());
    if (const auto done = file->add(*place); !done)
        return outcome.refuse(done.error());
    if (asked.json)
        return outcome.print(QJsonObject{{QStringLiteral("place"), jsonText(place->id)}});
    outcome.print("added: " + place->id + ", " + std::string(text(place->kind)));
}

} // namespace

void addPlaceCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<PlaceAsked>();
    CLI::App *command = app.add_subcommand("place", "Lists the places of a shop, or adds one.");
    command->add_option("ID", asked->id, "a new place: C9, car-4; not said: all are listed");
    command->add_option("--kind", asked->kind,
                        "shelf, bin, drawer, car, supplier, scrap, in transit, used up, bench, "
                        "difference, borrower, repair");
    command->add_option("--title", asked->title, "what it is, in words");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] {
        asked->id.empty() ? listPlaces(*asked, outcome) : addPlace(*asked, outcome);
    });
}

} // namespace flarestock
