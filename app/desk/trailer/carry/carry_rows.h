// SPDX-License-Identifier: MIT
//
// Carry rows: how many spares of each part, the sum behind one of them, and its picture: with what
// chance none, one, two … suffice.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/trailer/carry/carry_book.h"

namespace flarestock {

/// part what carry there missing spentBy covered isShort isKnown says; the key is the number.
[[nodiscard]] QStringList spareCells();
[[nodiscard]] std::vector<Row> spareRows(const CarryBook &book);

/// title detail: one line of the sum each, "rate", "until" … as its key.
[[nodiscard]] QStringList sumCells();
[[nodiscard]] std::vector<Row> sumRows(const CarryBook &book, const SparePart &part);

/// pieces chance percent isCarried isThere says; `chance` is 0 to 1. None of what is counted.
[[nodiscard]] QStringList barCells();
[[nodiscard]] std::vector<Row> barRows(const CarryBook &book, const SparePart &part);

/// "until what is ordered now can be here", "the next 3 events, until Millpond …".
[[nodiscard]] QString saidOccasion(const Occasion &occasion);
/// "Carry 4: nothing lacks with 98.5 %."
[[nodiscard]] QString saidCarry(const CarryBook &book, const SparePart &part);
/// What a kit costs and covers; empty where there is none.
[[nodiscard]] QString saidKit(const CarryBook &book);
/// "98.5 %"
[[nodiscard]] QString saidPercent(double probability);

} // namespace flarestock
