// SPDX-License-Identifier: MIT
//
// `flarestock build-done`: a build is done, or open again. Without a leak test that has passed it
// is not done; on brakes a second name has to stand below it. What else speaks against it is said.

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

/// "2 findings stop it, 1 line is short": empty where nothing speaks against it.
std::string againstIt(const LeftUndone &left)
{
    std::string all;
    const auto add = [&all](std::size_t count, const char *one, const std::string &many) {
        if (count > 0)
            all += (all.empty() ? "" : ", ") + (count == 1 ? one : std::to_string(count) + many);
    };
    add(left.stops, "1 finding stops it", " findings stop it");
    add(left.shortLines, "1 line is short", " lines are short");
    add(left.notReserved, "1 line is not reserved", " lines are not reserved");
    add(left.notPicked, "1 is to be picked yet", " are to be picked yet");
    return all;
}

/// The shop decides, and is told what it decides against.
void sayDone(OpenShop &shop, const BuildPlan &plan, const WorkedBuild &built)
{
    const LeftUndone left = leftUndone(built, promisesLacking(built, *shop.workshop, plan),
                                       pickList(built, *shop.workshop, plan));
    std::string said = plan.id + " is done";
    if (left != LeftUndone())
        said += ", though " + againstIt(left);
    appendAction(shop, doneAction(*shop.workshop, plan, std::nullopt, shop.by), said,
                 {{QStringLiteral("stops"), static_cast<qint64>(left.stops)},
                  {QStringLiteral("short"), static_cast<qint64>(left.shortLines)},
                  {QStringLiteral("notReserved"), static_cast<qint64>(left.notReserved)},
                  {QStringLiteral("notPicked"), static_cast<qint64>(left.notPicked)}});
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
    const auto built = workBuild(*shop.workshop, **plan);
    if (!built)
        return outcome.refuse(built.error());
    const std::string wrong = notDoneBecause(shop.workshop->notes.build(id).testsNow(),
                                             built->expansion.system == "brakes");
    if (!wrong.empty())
        return outcome.refuse(
            {id, "is not done: " + wrong,
             "Make the test and write it down: flarestock leak-test " + id + "."});
    sayDone(shop, **plan, *built);
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
