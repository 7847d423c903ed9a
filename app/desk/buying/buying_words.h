// SPDX-License-Identifier: MIT
//
// Buying words: what a buyer reads again and again: whom something is for, so much of a part, a
// day, who sells it.

#pragma once

#include "app/desk/words/units.h"
#include "app/workshop/workshop.h"
#include "model/exact/money.h"

#include <QCoreApplication>

namespace flarestock {

struct BuyingWords {
    Q_DECLARE_TR_FUNCTIONS(Buying)
};

/// The title of a build or of a place; its id where it has none.
[[nodiscard]] QString saidWhom(const std::string &whom, const Workshop &shop);
/// So much of a part, whose unit `amount` is in.
[[nodiscard]] QString saidMuch(const Decimal &amount, const Part &part, Units units);
/// "Sat 12 Dec" of a day in the year of `today`, else with its year; empty where there is none.
[[nodiscard]] QString saidDayOf(const std::string &day, const std::string &today);
/// The supplier's name; his id where the shop has him no more.
[[nodiscard]] QString saidSupplier(const std::string &id, const Catalogue &catalogue);
/// "2026-0003" as "order 2026-0003", "C-12" as "claim C-12".
[[nodiscard]] QString saidOrder(const std::string &number);
/// Days from one to the other; nothing where one of them is none.
[[nodiscard]] std::optional<int> daysBetween(const std::string &from, const std::string &to);
/// "today", "tomorrow", "in 6 days", "6 days ago"
[[nodiscard]] QString saidAway(int days);
/// A price with the digits that it has, and at least those of its currency: "46.50", "0.2964".
[[nodiscard]] QString saidPrice(const Decimal &price, const Currency &currency);
/// "5.95"; of a length with the unit that it is the price of: "0.5192 / in".
[[nodiscard]] QString saidPriceOf(const Decimal &price, const Currency &currency, Unit unit);
/// Whether all words that were typed stand in a text, whatever their case.
[[nodiscard]] bool hasWords(const QString &text, const QString &typed);

} // namespace flarestock
