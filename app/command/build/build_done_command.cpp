// SPDX-License-Identifier: MIT
//
// `flarestock build-done`: a build is done, or open again. Without a leak test that has passed it
// is not done; on brakes a second name has to stand below it.

#include "app/command/shop_options.h"
#include "app/stockroom/handing_out.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct BuildDoneAsked : ShopAsked {
    std::string build;
    bool open = false;
};

/// Nothing is written down twice.
void sayAlready(const BuildDoneAsked &asked, const std::string &id, CommandOutcome &outcome)
{
    if (asked.json)
        return outcome.print(QJsonObject{{QStringLiteral("build"), jsonText(id)},
                                         {QStringLiteral("already"), true}});
    outcome.print(id + (asked.open ? " is open already" : " is done already"));
}

void answerBuildDone(const BuildDoneAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    const std::string &id = (*plan)->id;
    const bool isDone = shop.workshop->notes.build(id).isDone();
    if (isDone != asked.open)
        return sayAlready(asked, id, outcome);
    if (asked.open)
        return appendAction(shop, openedAgain(**plan, shop.by), id + " is open again");
    const auto wrong =
        notDoneBecause(*shop.workshop, **plan, shop.workshop->notes.build(id).testsNow());
    if (!wrong)
        return outcome.refuse(wrong.error());
    if (!wrong->empty())
        return outcome.refuse(
            {id, "is not done: " + *wrong,
             "Make the test and write it down: flarestock leak-test " + id + "."});
    appendAction(shop, doneAction(*shop.workshop, **plan, std::nullopt, shop.by), id + " is done");
}

} // namespace

void addBuildDoneCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BuildDoneAsked>();
    CLI::App *command =
        app.add_subcommand("build-done", "Says that a build is done, once its leak test stands.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_flag("--open", asked->open, "it is open again");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerBuildDone(*asked, shop, outcome); });
    });
}

} // namespace flarestock
