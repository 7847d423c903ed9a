// SPDX-License-Identifier: MIT
//
// Figures that are typed: with the decimal sign and the groups of the person's locale, as the model
// reads them, which is with a point and without groups.
//
// A German's "1.500" is one and a half to who is used to points, and fifteen hundred to everybody
// else: it is not guessed, but said with both.
//
//   figuresTyped("1.234,5 psi")   // "1234.5 psi" under de_DE
//   figuresTyped("1,234.5 psi")   // the same under en_US
//   figuresTyped("1.500")         // under de_DE a problem: "… Write 1,5 or 1500."

#pragma once

#include "model/exact/problem.h"

#include <QLocale>
#include <QString>
#include <QVariantMap>

#include <string>

namespace flarestock {

/// What was typed, each figure in it as the model reads it. What is no figure of the locale's stays
/// as it was typed, so that a refusal speaks of that; a point is taken for a decimal sign wherever
/// it can be nothing else.
/// Problem, in the desk's language: a figure with one point and three digits behind it, where the
/// locale groups by points.
[[nodiscard]] Result<std::string> figuresTyped(const QString &typed,
                                               const QLocale &locale = QLocale());
/// The same of a field of a form, which asks about figures of two readings before (Form): such a
/// one stays as it was typed.
[[nodiscard]] std::string figuresTyped(const QVariantMap &values, const char *field);
/// What was typed into a field that is for words, without blanks around it.
[[nodiscard]] std::string wordsIn(const QVariantMap &values, const char *field);

} // namespace flarestock
