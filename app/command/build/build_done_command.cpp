// SPDX-License-Identifier: MIT
//
// `flarestock build-done`: a build is done, or open again. Without a leak test that has passed it
// is not done; on brakes a second name has to stand below it.

#include "app/command/shop_options.h"
#include "app/stockroom/picking.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct BuildDoneAsked : ShopAsked {
    std::string build;
    bool open = false;
};

/// What keeps it from being done, as a problem.
Result<void> mayBeDone(const OpenShop &shop, const BuildPlan &plan)
{
    const auto worked = workBuild(*shop.workshop, plan);
    if (!worked)
        return tl::unexpected(worked.error());
    const bool brakes = worked->expansion.system == "brakes";
    const auto wrong = notDoneBecause(shop.workshop->notes.build(plan.id).tests, brakes);
    if (!wrong.empty())
        return problem(plan.id, "is not done: " + wrong,
                       "Make the test and write it down: flarestock leak-test " + plan.id + ".");
    return {};
}

void answerBuildDone(const BuildDoneAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    if (!asked.open) {
        if (const auto may = mayBeDone(shop, **plan); !may)
            return outcome.refuse(may.error());
    }
    BuildDone done;
    done.id = *shop.by.action;
    done.build = (*plan)->id;
    done.car = (*plan)->car;
    done.open = asked.open;
    done.who = shop.by.who;
    done.why = shop.by.why;
    done.at = shop.by.at;
    Action action{{done.asRecord()}, {}};
    // What it was promised and did not take is free again.
    std::uint64_t n = 1;
    for (Promise &promise :
         asked.open ? std::vector<Promise>() : promisesLetGo(shop.workshop->ledger, (*plan)->id)) {
        promise.id = idWithin(done.id, n++);
        promise.who = shop.by.who;
        promise.why = "the build is done";
        promise.at = shop.by.at;
        action.records.push_back(promise.asRecord());
    }
    appendAction(shop, action, (*plan)->id + (asked.open ? " is open again" : " is done"));
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
