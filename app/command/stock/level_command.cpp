// SPDX-License-Identifier: MIT
//
// `flarestock level`: how much is there of what the shop does not count.

#include "app/command/shop_options.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct LevelAsked : ShopAsked {
    std::string part;
    std::string place;
    std::string level;
    std::string holds;
};

/// A part, or a tin of odds that is none and says what it holds.
Result<std::string> nameAsked(const LevelAsked &asked, const Workshop &workshop)
{
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return asked.holds.empty() ? Result<std::string>(tl::unexpected(part.error()))
                                   : Result<std::string>(asked.part);
    if (isLength((*part)->unit))
        return problem((*part)->number, "comes in lengths, and they are known",
                       "Count it: flarestock count.");
    const auto stock = workshop.shelf.find((*part)->number);
    if (stock != workshop.shelf.end() && isCounted(**part, stock->second))
        return problem(
            (*part)->number, "is counted: " + stock->second.onHand.spoken() + " on hand",
            "Count it: flarestock count. What is counted to 0 can be seen by its level.");
    return (*part)->number;
}

Result<LevelSeen> levelOf(const LevelAsked &asked, const OpenShop &shop)
{
    const auto name = nameAsked(asked, *shop.workshop);
    if (!name)
        return tl::unexpected(name.error());
    const auto place = stockPlaceAsked(asked.place, shop.workshop->ledger);
    if (!place)
        return tl::unexpected(place.error());
    const auto level = parseStockLevel(asked.level);
    if (!level)
        return tl::unexpected(level.error());
    return LevelSeen{*shop.by.action, *name,       (*place)->id, *level,
                     asked.holds,     shop.by.who, shop.by.at};
}

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
            const auto seen = levelOf(*asked, shop);
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
