// SPDX-License-Identifier: MIT
//
// Completing: all answers of a template, those that nobody gave by their defaults, and what was
// worked out for it.

#pragma once

#include "model/systems/sizing/working_out.h"

namespace flarestock {

struct CompletedAnswers {
    Answers answers;
    std::vector<WorkedAnswer> worked; ///< Of the questions that are asked, in their order.
};

/// As completed() (expand.h), with what the shop knows.
[[nodiscard]] Result<CompletedAnswers> completedWith(const Template &form, const Answers &given,
                                                     const KnownParts &known);

} // namespace flarestock
