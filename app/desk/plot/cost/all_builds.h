// SPDX-License-Identifier: MIT
//
// All builds: what each build of a shop that is not done comes to, as a bar. They take their pieces
// by their days, the earliest first (app/buyer/needs.h), so that no piece is here for two of them;
// that takes its time and is done away from the window.

#pragma once

#include "app/desk/plot/cost/cost_bars.h"
#include "model/exchange/template_toml.h"

namespace flarestock {

struct CostedBuild {
    CostBar bar;        ///< By the build's title; opens "build|<id>".
    std::string system; ///< "fuel", "oil" …, of its template.
};

/// Of the shop that the build on the desk was worked out in; that one as it is on the desk, which
/// may be more than the shop has. By day. Builds that cannot be worked out are left out. Empty
/// where there is no shop.
[[nodiscard]] std::vector<CostedBuild> costOfBuilds(const WorkedOut &onDesk, const BuildPlan &plan);

} // namespace flarestock
