// SPDX-License-Identifier: MIT
//
// `flarestock take-back`: undoes an action by a movement the other way for each of its own.

#include "app/command/shop_options.h"
#include "app/stockroom/undone/taking_back.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct TakeBackAsked : ShopAsked {
    std::string movement;
};

Result<Action> actionBack(const TakeBackAsked &asked, const OpenShop &shop)
{
    const auto id = MovementId::parse(asked.movement);
    if (!id)
        return tl::unexpected(id.error());
    return movementTakenBack(*id, shop.file, *shop.workshop, shop.by);
}

} // namespace

void addTakeBackCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<TakeBackAsked>();
    CLI::App *command = app.add_subcommand(
        "take-back", "Takes back a movement and all that was done together with it, or a promise.");
    command
        ->add_option("MOVEMENT", asked->movement,
                     "its id, as it was printed, or as the history shows it")
        ->required();
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            const auto action = actionBack(*asked, shop);
            if (!action)
                return outcome.refuse(action.error());
            appendAction(shop, *action,
                         "taken back: " + (action->movements.empty()
                                               ? counted(action->records.size(), "record")
                                               : counted(action->movements.size(), "movement")));
        });
    });
}

} // namespace flarestock
