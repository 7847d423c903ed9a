// SPDX-License-Identifier: MIT
//
// Plan words: the options of a purchase plan, for `flarestock plan` and for the orders drafted from
// one, and what they ask for.

#pragma once

#include "app/buyer/planned.h"

namespace CLI {
class App;
}

namespace flarestock {

struct PlanWords {
    std::string prefer = "cheapest";
    std::string by;
    std::string today;
    std::string needs;
    std::vector<std::string> builds;
};

/// --prefer, --by, --today, --build, --needs.
void addPlanOptions(CLI::App &command, PlanWords &asked);

/// Problem: no such aim or build; no day; a table that does not read.
[[nodiscard]] Result<PlanWanted> planWanted(const PlanWords &asked, const Workshop &workshop,
                                            const ShopFile &file);

} // namespace flarestock
