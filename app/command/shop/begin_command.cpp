// SPDX-License-Identifier: MIT
//
// `flarestock begin`: makes a shop of one's own, out of a folder of CSV and TOML files.

#include "app/command/shop/made_shop.h"

#include "app/workshop/clock.h"
#include "app/workshop/whole/beginning.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct BeginAsked {
    std::string from;
    std::string to;
    bool json = false;
};

} // namespace

void addBeginCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BeginAsked>();
    CLI::App *command =
        app.add_subcommand("begin", "Makes a shop file out of a folder of CSV and TOML files.");
    command->add_option("--from", asked->from, "the folder; `export` writes one to begin by")
        ->required();
    command->add_option("--to", asked->to, "the file to make; it must not be there yet")
        ->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] {
        sayMade(asked->to, shopBegun(asked->from, asked->to, nowMilliseconds()), asked->json,
                outcome);
    });
}

} // namespace flarestock
