// SPDX-License-Identifier: MIT
//
// `flarestock demo`: makes the demo shop.

#include "app/command/command.h"

#include "app/workshop/clock.h"
#include "app/workshop/demo_shop.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct DemoAsked {
    std::string to;
    bool json = false;
};

void answerDemo(const DemoAsked &asked, CommandOutcome &outcome)
{
    const auto shop = makeDemoShop(asked.to, nowMilliseconds());
    if (!shop)
        return outcome.refuse(shop.error());
    const auto movements = shop->movements();
    if (!movements)
        return outcome.refuse(movements.error());
    const auto count = static_cast<qint64>(movements->size());
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("shop"), jsonText(asked.to)},
                        {QStringLiteral("title"), jsonText(shop->settings().title)},
                        {QStringLiteral("movements"), count}});
    outcome.print("made " + asked.to + ": " + shop->settings().title + ", " +
                  counted(movements->size(), "movement") + " of opening stock");
}

} // namespace

void addDemoCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<DemoAsked>();
    CLI::App *command =
        app.add_subcommand("demo", "Makes a shop file with an invented shop, to try things on.");
    command->add_option("--to", asked->to, "the file to make; it must not be there yet")
        ->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerDemo(*asked, outcome); });
}

} // namespace flarestock
