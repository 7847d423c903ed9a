// SPDX-License-Identifier: MIT
//
// `flarestock give-back`: what a build did not use goes from its car back to a place.

#include "app/command/shop_options.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct GiveBackAsked : ShopAsked {
    std::string build;
    std::string part;
    std::string quantity;
    std::string to;
    std::string lot;
    std::string condition;
    std::string now;
};

Result<Movement> givenBack(const GiveBackAsked &asked, const Workshop &workshop)
{
    const auto plan = buildAsked(asked.build, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto stock = stockAsked({asked.part, asked.quantity, (*plan)->car, asked.to}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    const Part &part = *stock->part;
    const auto key =
        piecesAsked({stock->from->id, asked.lot, asked.condition}, workshop.ledger, part);
    if (!key)
        return tl::unexpected(key.error());
    const auto issued = workshop.ledger.claim({part.number, (*plan)->id}).issued;
    if (stock->quantity > issued)
        return problem(part.number,
                       "was issued to " + (*plan)->id + " only as " + spoken(issued, part),
                       "Give back no more than that; for other pieces of the car use move.");
    Movement movement = movementOf(*key, stock->quantity, stock->to->id, Deed::Return);
    movement.document = (*plan)->id;
    if (!asked.now.empty()) {
        const auto now = parsePieceCondition(asked.now);
        if (!now)
            return tl::unexpected(now.error());
        movement.newCondition = *now;
    }
    return movement;
}

} // namespace

void addGiveBackCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<GiveBackAsked>();
    CLI::App *command = app.add_subcommand("give-back", "Puts back what a build did not use.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("PART", asked->part, "the part number")->required();
    command->add_option("QUANTITY", asked->quantity, "how much of it")->required();
    command->add_option("--to", asked->to, "place id: C4, trailer-2")->required();
    command->add_option("--lot", asked->lot, "lot, serial or piece");
    command->add_option("--condition", asked->condition, "as it is in the car, where that differs");
    command->add_option("--now", asked->now,
                        "what it is from now on: used and good, to be checked …");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            if (wasDone(shop, Deed::Return, asked->part))
                return;
            const auto movement = givenBack(*asked, *shop.workshop);
            if (!movement)
                return outcome.refuse(movement.error());
            appendAction(shop, numbered({*movement}, shop.by),
                         "given back: " + movement->part + " to " + movement->to);
        });
    });
}

} // namespace flarestock
