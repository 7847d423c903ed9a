// SPDX-License-Identifier: MIT
//
// Spoken: the model's exact values as a person reads them on the desk, in that person's locale.
//
// The model prints in the C locale; only here do numbers get grouping and the person's decimal
// sign. Digits are moved as text, so that nothing passes through a double on the way.
//
//   saidMoney(bill.total)   // "1,184.36 USD", "1.184,36 USD" under de_DE

#pragma once

#include "model/exact/money.h"
#include "model/exact/problem.h"
#include "model/exact/quantity.h"

#include <QDate>
#include <QLocale>
#include <QString>

#include <string_view>

namespace flarestock {

/// UTF-8 of the model as a QString.
[[nodiscard]] QString said(std::string_view utf8);

/// The decimals of a text such as "43.5 psi" with the person's decimal sign.
[[nodiscard]] QString localised(const QString &text, const QLocale &locale = QLocale());
/// The inverse, for what was typed: "43,5 psi" becomes "43.5 psi" where the comma is the sign.
[[nodiscard]] QString unlocalised(const QString &text, const QLocale &locale = QLocale());

/// Every digit of the number, whole part grouped in threes.
[[nodiscard]] QString saidNumber(const Decimal &number, const QLocale &locale = QLocale());
[[nodiscard]] QString saidMoney(const Money &money, const QLocale &locale = QLocale());
/// "5 ft 6 in", "3": as the shop says it.
[[nodiscard]] QString saidQuantity(const Quantity &quantity, const QLocale &locale = QLocale());
/// "Sat 12 Dec 2026" of an ISO date; the text itself where it is none.
[[nodiscard]] QString saidDate(std::string_view iso, const QLocale &locale = QLocale());

/// The same of a day; without its year "Sat 12 Dec".
enum class WithYear : bool { No, Yes };
[[nodiscard]] QString saidDate(const QDate &day, WithYear year = WithYear::Yes,
                               const QLocale &locale = QLocale());
/// A text in which each "2026-12-12" is such a date.
[[nodiscard]] QString withSaidDays(const QString &text, const QLocale &locale = QLocale());

/// A text of ours in which decimals and days stand as the model prints them: "may be used until
/// 2026-12-12".
[[nodiscard]] QString saidFigures(const QString &text, const QLocale &locale = QLocale());

/// A problem as one sentence, without what it advises for who types commands.
[[nodiscard]] QString saidProblem(const Problem &problem);

} // namespace flarestock
