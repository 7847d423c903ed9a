// SPDX-License-Identifier: MIT
//
// `flarestock leak-test`: writes down a leak test of a build. `flarestock build-done` asks for it.

#include "app/command/shop_options.h"

#include "model/fluids/measure.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct LeakTestAsked : ShopAsked {
    std::string build;
    std::string medium;
    std::string pressure;
    std::string held;
    std::string result;
    std::string second;
    std::string note;
};

Result<LeakTest> testOf(const LeakTestAsked &asked, const OpenShop &shop)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto pressure = Measure::parse(asked.pressure, Dimension::Pressure);
    if (!pressure)
        return tl::unexpected(pressure.error());
    if (asked.result != "passed" && asked.result != "failed")
        return problem(asked.result, "is no result of a leak test", "Write passed or failed.");
    if (asked.who.empty())
        return problem("a leak test", "has nobody's name below it", "Say who made it: --who.");
    LeakTest test;
    test.id = *shop.by.action;
    test.build = (*plan)->id;
    test.medium = asked.medium;
    test.pressure = asked.pressure;
    test.held = asked.held;
    test.passed = asked.result == "passed";
    test.who = asked.who;
    test.second = asked.second;
    test.note = asked.note;
    test.at = shop.by.at;
    return test;
}

} // namespace

void addLeakTestCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<LeakTestAsked>();
    CLI::App *command = app.add_subcommand("leak-test", "Writes down a leak test of a build.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("--medium", asked->medium, "air, nitrogen, water, the fluid itself")
        ->required();
    command->add_option("--pressure", asked->pressure, "\"60 psi\", \"4 bar\"")->required();
    command->add_option("--held", asked->held, "for how long: \"10 min\"")->required();
    command->add_option("--result", asked->result, "passed or failed")->required();
    command->add_option("--second", asked->second, "who has seen it too; brakes need one");
    command->add_option("--note", asked->note, "what else was seen");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome, [&](OpenShop &shop) {
            const auto test = testOf(*asked, shop);
            if (!test)
                return outcome.refuse(test.error());
            appendAction(shop, Action{{test->asRecord()}, {}},
                         "leak test of " + test->build + " written down: " + asked->result);
        });
    });
}

} // namespace flarestock
