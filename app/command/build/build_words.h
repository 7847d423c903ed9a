// SPDX-License-Identifier: MIT
//
// Build words: what the commands that work a build out ask for, and the plan that it comes to.

#pragma once

#include "app/command/command.h"
#include "app/workshop/workshop.h"

namespace flarestock {

struct BuildWords {
    std::string form;
    std::string build;
    std::string shop;
    std::string prefer;
    std::vector<std::string> answers;
    std::vector<std::string> picks;
    bool json = false;
};

/// What stands under everything that is worked out of a build.
inline constexpr std::string_view Advice =
    "Advice from the data entered, not a safety certificate: the series' rulebook, the part\n"
    "maker's data and local codes come first; have fuel and brake work checked by someone\n"
    "qualified.\n";

/// TEMPLATE, --shop, --build, --set, --pick, --prefer, --json.
void addBuildOptions(CLI::App &command, BuildWords &asked);

/// The planned build, or a plan of the template alone, with what was typed on top. Problem: both or
/// neither of them, no such build, or words without a name; it names the command.
[[nodiscard]] Result<BuildPlan> planOf(const BuildWords &asked, std::string_view command,
                                       const Workshop &workshop);

} // namespace flarestock
