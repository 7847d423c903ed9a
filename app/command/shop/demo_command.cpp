// SPDX-License-Identifier: MIT
//
// `flarestock demo`: makes the demo shop.

#include "app/command/shop/made_shop.h"

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

} // namespace

void addDemoCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<DemoAsked>();
    CLI::App *command =
        app.add_subcommand("demo", "Makes a shop file with an invented shop, to try things on.");
    command->add_option("--to", asked->to, "the file to make; it must not be there yet")
        ->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] {
        sayMade(asked->to, makeDemoShop(asked->to, nowMilliseconds()), asked->json, outcome);
    });
}

} // namespace flarestock
