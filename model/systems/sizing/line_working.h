// SPDX-License-Identifier: MIT
//
// Line working: what a line of a template asks of its size, out of the answers and bounds, and the
// smallest size that keeps to it.

#pragma once

#include "model/systems/sizing/working_out.h"

namespace flarestock {

struct LineQuestion {
    const Template &form;
    const Question &question;
    const Answers &answers;
    const KnownParts &known;
};

/// Sets all but `answer` and `own`; `worked` stays where nothing can be reckoned.
void workLineOut(const LineQuestion &asked, WorkedAnswer &made);

/// 8 of "-8".
[[nodiscard]] int dashOfChoice(std::string_view choice) noexcept;

/// In the unit of Dimension; nothing where it is not said or no such measure.
[[nodiscard]] std::optional<double> answeredSi(const Varying &varying, Dimension dimension,
                                               const Answers &answers);

/// The fluid that the answers name, or the template's own.
[[nodiscard]] std::optional<Fluid> fluidAnswered(const Template &form, const Answers &answers);

} // namespace flarestock
