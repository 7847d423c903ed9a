// SPDX-License-Identifier: MIT
//
// `flarestock leak-test`: writes down a leak test of a build. `flarestock build-done` asks for it.

#include "app/command/shop_options.h"
#include "app/stockroom/handing_out.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct LeakTestAsked : ShopAsked {
    LeakTestWords words;
};

} // namespace

void addLeakTestCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<LeakTestAsked>();
    CLI::App *command = app.add_subcommand("leak-test", "Writes down a leak test of a build.");
    command->add_option("BUILD", asked->words.build, "its id")->required();
    command->add_option("--medium", asked->words.medium, "air, nitrogen, water, the fluid itself")
        ->required();
    command->add_option("--pressure", asked->words.pressure, "\"60 psi\", \"4 bar\"")->required();
    command->add_option("--held", asked->words.held, "for how long: \"10 min\"")->required();
    command->add_option("--result", asked->words.result, "passed or failed")->required();
    command->add_option("--second", asked->words.second, "who has seen it too; brakes need one");
    command->add_option("--note", asked->words.note, "what else was seen");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            const auto test = leakTestOf(asked->words, *shop.workshop, shop.by);
            if (!test)
                return outcome.refuse(test.error());
            appendAction(shop, Action{{test->asRecord()}, {}},
                         "leak test of " + test->build + " written down: " + asked->words.result);
        });
    });
}

} // namespace flarestock
