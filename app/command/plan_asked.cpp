// SPDX-License-Identifier: MIT

#include "app/command/plan_asked.h"

#include "app/stockroom/asked.h"
#include "model/exact/case_fold.h"

#include <CLI/CLI.hpp>

namespace flarestock {

namespace {

/// "question=answer" words into a map that may hold some already.
Result<void> readInto(std::map<std::string, std::string, std::less<>> &into,
                      const std::vector<std::string> &words, std::string_view option)
{
    for (const std::string &word : words) {
        const auto equals = word.find('=');
        const std::string name(trimmed(std::string_view(word).substr(0, equals)));
        if (equals == std::string::npos || name.empty())
            return problem(
                std::string(option), "\"" + word + "\" has no name before an equals sign",
                option == "--set" ? "Write --set fluid=E85." : "Write --pick prefilter=PF-100-10.");
        into[name] = trimmed(std::string_view(word).substr(equals + 1));
    }
    return {};
}

} // namespace

void addAnswerOptions(CLI::App &command, PlanAsked &asked)
{
    command.add_option("--set", asked.answers, "an answer: --set power=\"450 hp\"")
        ->allow_extra_args(false);
    command
        .add_option("--pick", asked.picks,
                    "a part, line or way that is decided: --pick prefilter=PF-100-10")
        ->allow_extra_args(false);
}

void addPlanOptions(CLI::App &command, PlanAsked &asked)
{
    asked.command = "flarestock " + command.get_name();
    command.add_option("TEMPLATE", asked.form, "a template of the shop");
    command.add_option("--shop", asked.shop, ShopHelp)->required();
    command.add_option("--build", asked.build, "a planned build of the shop, by its id");
    addAnswerOptions(command, asked);
    command.add_option("--prefer", asked.prefer, "shelf, joints or money");
    command.add_flag("--json", asked.json, JsonHelp);
}

Result<BuildPlan> planAsked(const PlanAsked &asked, const Workshop &workshop)
{
    if (asked.form.empty() == asked.build.empty())
        return problem(asked.command, "takes a template or --build, and not both",
                       "Say flarestock bill --list --shop FILE for the templates.");
    BuildPlan plan;
    plan.templateId = asked.form;
    if (!asked.build.empty()) {
        const auto planned = buildAsked(asked.build, workshop);
        if (!planned)
            return tl::unexpected(planned.error());
        plan = **planned;
    }
    if (!asked.prefer.empty())
        plan.preference = asked.prefer;
    if (auto read = readInto(plan.answers, asked.answers, "--set"); !read)
        return tl::unexpected(read.error());
    if (auto read = readInto(plan.picks, asked.picks, "--pick"); !read)
        return tl::unexpected(read.error());
    return plan;
}

void answerBuild(const PlanAsked &asked, CommandOutcome &outcome,
                 const std::function<void(const WorkedBuild &, const Workshop &)> &answer)
{
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto plan = planAsked(asked, **workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    const auto build = workBuild(**workshop, *plan);
    if (!build)
        return outcome.refuse(build.error());
    answer(*build, **workshop);
}

} // namespace flarestock
