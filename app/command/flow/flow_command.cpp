// SPDX-License-Identifier: MIT
//
// `flarestock flow`: what flows in every line of a template or a planned build and what it takes,
// where its pumps work, what its regulators can hold; and the data of the pictures of it.

#include "app/command/findings/finding_sheet.h"
#include "app/command/flow/flow_document.h"
#include "app/command/flow/flow_sheet.h"
#include "app/command/plan_asked.h"
#include "app/workshop/flow/flow_words.h"
#include "app/workshop/worked_build.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

Problem nothingFlows(const Expansion &build, const SystemFlow &flow)
{
    return {build.templateId, "has no flow to work out: " + whyNothingFlows(flow),
            "Ask for the flow of a template that states a power or a pump's flow."};
}

void answerFlow(const PlanAsked &asked, CommandOutcome &outcome)
{
    answerBuild(asked, outcome, [&](const WorkedBuild &build, const Workshop &) {
        const auto &expansion = build.expansion;
        const auto flow = drawnFlow(expansion);
        if (flow.runs.empty())
            return outcome.refuse(nothingFlows(expansion, flow));
        if (asked.json)
            outcome.print(flowDocument(expansion, flow));
        else
            outcome.out += flowSheet(expansion, flow) + "\n" + std::string(Advice);
    });
}

} // namespace

void addFlowCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<PlanAsked>();
    CLI::App *command = app.add_subcommand(
        "flow", "Says what flows in each line of a build, what it takes, and where pumps work.");
    addPlanOptions(*command, *asked);
    command->callback([asked, &outcome] { answerFlow(*asked, outcome); });
}

} // namespace flarestock
