// SPDX-License-Identifier: MIT
//
// Dash practice: what the trade's rule of thumb takes for a feed line by the engine's power. It is
// shown beside a size that was worked out and never decides one.
//
//   practiceOf(Fluid::Gasoline, 450)->text(); // "-6 (to about 500 hp)"

#pragma once

#include "model/fluids/fluid.h"

#include <optional>
#include <string>

namespace flarestock {

struct DashPractice {
    int dash = 0;            ///< For gasoline; of alcohol the least that the rule allows.
    int mostDash = 0;        ///< Of alcohol one size more; else the same.
    double horsepower = 0;   ///< Up to about so much, of gasoline …
    double orHorsepower = 0; ///< … or, as others say it, so much.
    bool alcohol = false;
    std::string_view status; ///< "common practice"
    std::string_view source; ///< Never empty: it says that there is none.

    [[nodiscard]] std::string text() const; ///< "-8 to -10 (alcohol one to two sizes …)"
};

/// model/fluids/data/dash_practice.csv. horsepower is mechanical, above 0. Nothing where the rule
/// says nothing: another fluid, or more power.
[[nodiscard]] std::optional<DashPractice> practiceOf(Fluid fluid, double horsepower);

} // namespace flarestock
