// SPDX-License-Identifier: MIT
//
// `flarestock move`: so much of a part from one place to another.

#include "app/command/shop_options.h"
#include "app/stockroom/byhand/moving.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct MoveAsked : ShopAsked, MoveWords {
    bool despitePromise = false;
};

void answerMove(const MoveAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto before = shop.file.movement(*shop.by.action);
    if (!before)
        return outcome.refuse(before.error());
    const auto movement = moved(asked, *shop.workshop, shop.by.at, *before);
    if (!movement)
        return outcome.refuse(movement.error());
    Action action = numbered({*movement}, shop.by);
    action.promised = asked.despitePromise ? Promised::MayGo : Promised::Stays;
    const auto done = shop.file.append(action);
    if (!done)
        return outcome.refuse(done.error());
    const auto &appended = done->front();
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("movement"), jsonText(appended.movement.text())},
                        {QStringLiteral("already"), appended.already}});
    outcome.print((appended.already ? "was moved already: " : "moved: ") + movement->part +
                  " from " + movement->from + " to " + movement->to + ", movement " +
                  appended.movement.text());
}

} // namespace

void addMoveCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<MoveAsked>();
    CLI::App *command = app.add_subcommand("move", "Moves so much of a part to another place.");
    command->add_option("PART", asked->part, "its part number")->required();
    command->add_option("QUANTITY", asked->quantity, "\"2\", or of hose \"5 ft 6 in\"")->required();
    command->add_option("--from", asked->from, "place id: C4, trailer-2")->required();
    command->add_option("--to", asked->to, "place id")->required();
    command->add_option("--lot", asked->lot,
                        "lot, serial or piece; not needed where only one lies there");
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used");
    command->add_option("--now", asked->now,
                        "what it is from now on; from a place to itself only that changes");
    command->add_option("--until", asked->until,
                        "of what is lent, borrowed or out for repair: the day that it comes back");
    command->add_flag("--despite-promise", asked->despitePromise,
                      "although a build is promised it");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerMove(*asked, shop, outcome); });
    });
}

} // namespace flarestock
