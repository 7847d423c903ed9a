// SPDX-License-Identifier: MIT
//
// `flarestock check`: what there is to say of a build before it is built, without its bill.

#include "app/command/findings/finding_sheet.h"
#include "app/command/plan_asked.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct CheckAsked : PlanAsked {
    bool strict = false;
};

void answerCheck(const CheckAsked &asked, CommandOutcome &outcome)
{
    answerBuild(asked, outcome, [&](const WorkedBuild &build, const Workshop &) {
        if (asked.json)
            outcome.print(findingsDocument(build));
        else
            outcome.out += findingSheet(build);
        if (asked.strict && !build.isReady())
            outcome.ending = Ending::Attention;
    });
}

} // namespace

void addCheckCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CheckAsked>();
    CLI::App *command = app.add_subcommand(
        "check", "Says what is wrong with a template's or a planned build's parts, the worst "
                 "first: what, where, by how much, by which source, and what to do.");
    addPlanOptions(*command, *asked);
    command->add_flag("--strict", asked->strict, "exit status 1 on stops or shortages");
    command->callback([asked, &outcome] { answerCheck(*asked, outcome); });
}

} // namespace flarestock
