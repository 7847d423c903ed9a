// SPDX-License-Identifier: MIT
//
// Answers as fields: one row for each question that the template asks now, and one for what the
// builder would rather have where a joint can be made in several ways.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <QMap>

namespace flarestock {

/// The id of the field for BuildPlan::preference; no question can have it (a blank is in it).
[[nodiscard]] QString preferenceField();
/// BuildPlan::preference of a choice of that field; "shelf" where there is no such choice.
[[nodiscard]] std::string preferenceOf(int choice);

/// title form choices answer problem otherwise; `otherwise`: the answer in the person's own units.
[[nodiscard]] QStringList answerCells();

/// What was typed last into a field and refused, by question id.
struct RefusedAnswer {
    QString typed;
    QString problem;
};
using RefusedAnswers = QMap<QString, RefusedAnswer>;

[[nodiscard]] std::vector<Row> answerRows(const WorkedOut &worked, const BuildPlan &plan,
                                          const RefusedAnswers &refused, Units units);

/// Whether what was typed or chosen lets the answer be worked out again: nothing in a field of a
/// measure, the first choice of a size.
[[nodiscard]] bool letsBeWorkedOut(const Question &question, const QString &typed);

/// What a field means: the person's decimal sign made a point; a bare number takes the unit that
/// stands beside it. Problem: no number, no unit, another dimension, outside the bounds.
[[nodiscard]] Result<std::string> meant(const Question &question, const QString &typed,
                                        const std::string &now);

} // namespace flarestock
