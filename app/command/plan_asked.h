// SPDX-License-Identifier: MIT
//
// Plan asked: a template with answers and picks, or a planned build with what is typed on top, as
// the commands that work a build out take it.

#pragma once

#include "app/command/command.h"
#include "app/workshop/worked_build.h"

#include <functional>

namespace flarestock {

struct PlanAsked {
    std::string command; ///< For what is wrong with it: "flarestock bill".
    std::string form;    ///< Template; empty where a planned build is named.
    std::string build;
    std::string shop;
    std::string prefer;
    std::vector<std::string> answers; ///< "power=450 hp"
    std::vector<std::string> picks;   ///< "prefilter=PF-100-10"
    bool json = false;
};

/// --set, --pick.
void addAnswerOptions(CLI::App &command, PlanAsked &asked);

/// TEMPLATE, --shop, --build, --set, --pick, --prefer, --json.
void addPlanOptions(CLI::App &command, PlanAsked &asked);

/// Problem: neither or both of template and build, an unknown build, an answer or pick without a
/// name. Whether template, answers, picks and preference are known workBuild() says.
[[nodiscard]] Result<BuildPlan> planAsked(const PlanAsked &asked, const Workshop &workshop);

/// Opens the shop, works the plan out and shows both to `answer`; what is wrong is refused.
void answerBuild(const PlanAsked &asked, CommandOutcome &outcome,
                 const std::function<void(const WorkedBuild &, const Workshop &)> &answer);

} // namespace flarestock
