// SPDX-License-Identifier: MIT
//
// `flarestock keep`: how much of a part a place is to hold.

#include "app/command/shop_options.h"
#include "app/stockroom/byhand/seeing.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct KeepAsked : ShopAsked, KeepWords {};

void answerKeep(const KeepAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto keeping = keepingOf(asked, *shop.workshop, shop.by);
    if (!keeping)
        return outcome.refuse(keeping.error());
    const Part &part = *shop.workshop->part(keeping->part);
    const std::string said =
        keeping->most == 0
            ? keeping->part + " is kept at " + keeping->place + " no more"
            : keeping->part + " is kept at " + keeping->place + ": " +
                  spoken(keeping->least, part) +
                  (keeping->most == keeping->least ? "" : " to " + spoken(keeping->most, part));
    appendAction(shop, Action{{keeping->asRecord()}, {}}, said,
                 {{QStringLiteral("part"), jsonText(keeping->part)},
                  {QStringLiteral("place"), jsonText(keeping->place)},
                  {QStringLiteral("min"), jsonText(amountText(keeping->least, part))},
                  {QStringLiteral("max"), jsonText(amountText(keeping->most, part))},
                  {QStringLiteral("unit"), jsonText(text(part.unit))}});
}

} // namespace

void addKeepCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<KeepAsked>();
    CLI::App *command = app.add_subcommand(
        "keep", "Says how much of a part a place is to hold; stock --below lists what lacks.");
    command->add_option("PART", asked->part, "its part number")->required();
    command->add_option("--place", asked->place, "place id: C4, trailer-2")->required();
    command->add_option("--min", asked->least, "below so much it is filled up; 0 ends it")
        ->required();
    command->add_option("--max", asked->most, "up to so much; the minimum where not said");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerKeep(*asked, shop, outcome); });
    });
}

} // namespace flarestock
