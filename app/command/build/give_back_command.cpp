// SPDX-License-Identifier: MIT
//
// `flarestock give-back`: what a build did not use goes from its car back to a place.

#include "app/command/shop_options.h"
#include "app/stockroom/handing_out.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct GiveBackAsked : ShopAsked {
    GiveBackWords words;
};

} // namespace

void addGiveBackCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<GiveBackAsked>();
    CLI::App *command = app.add_subcommand("give-back", "Puts back what a build did not use.");
    command->add_option("BUILD", asked->words.build, "its id")->required();
    command->add_option("PART", asked->words.part, "the part number")->required();
    command->add_option("QUANTITY", asked->words.quantity, "how much of it")->required();
    command->add_option("--to", asked->words.to, "place id: C4, trailer-2")->required();
    command->add_option("--lot", asked->words.lot, "lot, serial or piece");
    command->add_option("--condition", asked->words.condition,
                        "as it is in the car, where that differs");
    command->add_option("--now", asked->words.now,
                        "what it is from now on: used and good, to be checked …");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            if (wasDone(shop, Deed::Return, asked->words.part))
                return;
            const auto movement = givenBack(asked->words, *shop.workshop);
            if (!movement)
                return outcome.refuse(movement.error());
            appendAction(shop, changed({*movement}, *shop.workshop, shop.by),
                         "given back: " + movement->part + " to " + movement->to);
        });
    });
}

} // namespace flarestock
