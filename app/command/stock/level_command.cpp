// SPDX-License-Identifier: MIT
//
// `flarestock level`: how much is there of what the shop does not count.

#include "app/command/shop_options.h"
#include "app/stockroom/byhand/seeing.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct LevelAsked : ShopAsked, LevelWords {};

} // namespace

void addLevelCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<LevelAsked>();
    CLI::App *command = app.add_subcommand(
        "level", "Says how much is there of what nobody counts: sealant, a tin of odds.");
    command
        ->add_option("PART", asked->part,
                     "its part number; with --holds also the name of a tin that is no part")
        ->required();
    command->add_option("--place", asked->place, "place id: K4, trailer-6")->required();
    command->add_option("--is", asked->level, "plenty, low or out")->required();
    command->add_option("--holds", asked->holds, "what lies in it: \"M5 to M8, stainless\"");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            const auto seen = levelOf(*asked, *shop.workshop, shop.by);
            if (!seen)
                return outcome.refuse(seen.error());
            appendAction(shop, Action{{seen->asRecord()}, {}},
                         seen->part + " at " + seen->place + ": " + std::string(text(seen->level)),
                         {{QStringLiteral("part"), jsonText(seen->part)},
                          {QStringLiteral("place"), jsonText(seen->place)},
                          {QStringLiteral("level"), jsonText(text(seen->level))}});
        });
    });
}

} // namespace flarestock
