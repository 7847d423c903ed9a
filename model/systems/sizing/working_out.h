// SPDX-License-Identifier: MIT
//
// Working out: the default of a question from the answers above it. Fuel demand, pump pressure and
// line size by the calculations of model/fluids and the bounds that the findings judge by.

#pragma once

#include "model/parts/catalogue.h"
#include "model/systems/sizing/worked_answer.h"
#include "model/systems/template.h"

namespace flarestock {

/// What a shop knows beside the answers. Nothing of it has to be known.
struct KnownParts {
    const Catalogue *catalogue = nullptr; ///< Hose with its bores.
    const std::map<std::string, const Part *, std::less<>> *pumps = nullptr; ///< By station id.
    std::string prefix; ///< Of the stations of this template: "filters/".
};

/// `answers` holds the questions above it as they count and has some answer for all others.
/// The builder's own answer is not looked at: `own` stays false. Total: what cannot be worked out
/// is the fixed default, and `why` says so.
[[nodiscard]] WorkedAnswer workOut(const Template &form, const Question &question,
                                   const Answers &answers, const KnownParts &known);

} // namespace flarestock
