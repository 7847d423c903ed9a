// SPDX-License-Identifier: MIT
//
// All builds: what each planned build of a shop comes to, as a bar. Every one is worked out by
// itself, as the desk shows it when it is opened; that takes its time and is done away from the
// window.

#pragma once

#include "app/desk/plot/cost/cost_bars.h"
#include "model/exchange/template_toml.h"

namespace flarestock {

struct CostedBuild {
    CostBar bar;        ///< By the build's title; opens "build|<id>".
    std::string system; ///< "fuel", "oil" …, of its template.
};

/// Of the shop that the build on the desk was worked out in; that one as it is on the desk, which
/// may be more than the shop has. Builds that cannot be worked out are left out. Empty where there
/// is no shop.
[[nodiscard]] std::vector<CostedBuild> costOfBuilds(const WorkedOut &onDesk, const BuildPlan &plan);

} // namespace flarestock
