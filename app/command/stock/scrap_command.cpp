// SPDX-License-Identifier: MIT
//
// `flarestock scrap`: what is thrown away, and why.

#include "app/command/shop_options.h"
#include "app/stockroom/byhand/moving.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct ScrapAsked : ShopAsked, MoveWords {
    bool despitePromise = false;
};

void answerScrap(const ScrapAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (asked.why.empty())
        return outcome.refuse({asked.part, "is thrown away for no reason", "Say it: --why."});
    if (wasDone(shop, Deed::Scrap, asked.part))
        return;
    const auto movement = scrapped(asked, *shop.workshop);
    if (!movement)
        return outcome.refuse(movement.error());
    Action action = numbered({*movement}, shop.by);
    action.promised = asked.despitePromise ? Promised::MayGo : Promised::Stays;
    appendAction(shop, action, "scrapped: " + movement->part + " from " + movement->from);
}

} // namespace

void addScrapCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ScrapAsked>();
    CLI::App *command =
        app.add_subcommand("scrap", "Throws away so much of a part, with a reason.");
    command->add_option("PART", asked->part, "its part number")->required();
    command->add_option("QUANTITY", asked->quantity, "\"2\", or of hose \"8 in\"")->required();
    command->add_option("--from", asked->from, "place id: C4, trailer-2")->required();
    command->add_option("--lot", asked->lot, "lot, serial or piece");
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used");
    command->add_flag("--despite-promise", asked->despitePromise,
                      "although a build is promised it");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerScrap(*asked, shop, outcome); });
    });
}

} // namespace flarestock
