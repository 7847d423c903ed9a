// SPDX-License-Identifier: MIT
//
// Service rows: what the area of service lists, as rows: which lists there are, the positions of a
// car as its liquids flow, and what is due across all cars by day and event. Pure functions of the
// garage book.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/service/piece_words.h"

namespace flarestock {

/// title detail mark says; the keys are "due", "car|" with a car's id, and "lot".
[[nodiscard]] QStringList sheetTabCells();
[[nodiscard]] std::vector<Row> sheetTabRows(const GarageBook &book);

/// Which positions are listed, and how.
struct PositionsAsked {
    std::string car;
    bool rings = false; ///< Also those of which nothing else is known.
    QString words;      ///< Only what says all of these words.
    Units units = Units::Metric;
};
/// head kind mark title piece since use washed standing share note says; `kind` is "station",
/// "element", "hose", "ring" or "own", `share` below zero where no interval counts, `note` what
/// protects a piece that cannot be opened. The key is the position.
[[nodiscard]] QStringList positionCells();
[[nodiscard]] std::vector<Row> positionRows(const GarageBook &book, const PositionsAsked &asked);

/// head mark title piece standing why takes lacks says; the key is "car|position|" and a number.
[[nodiscard]] QStringList dueCells();
[[nodiscard]] std::vector<Row> dueRows(const GarageBook &book, const QString &words, Units units);
/// What a key of dueRows() is about.
[[nodiscard]] CarPosition dueAt(const QString &key);

/// "1: car 1, pre-filter, element"; what is over or reached, and what comes next.
/// Of one car, or of all where it is empty.
[[nodiscard]] QString saidOverdue(const GarageBook &book, std::string_view car);
[[nodiscard]] QString saidDueNext(const GarageBook &book, std::string_view car);
[[nodiscard]] Standing::Mark markOverdue(const GarageBook &book, std::string_view car);

/// Whether a sentence has all of these words, however they are written.
[[nodiscard]] bool saysAll(const QString &sentence, const QString &words);
/// What protects a piece that cannot be opened and since when that was serviced, as a sentence;
/// empty of what can be opened.
[[nodiscard]] QString saidProtection(const FittedPiece &piece, const GarageBook &book,
                                     const std::string &car);
/// "EG-10-S 1, 1 short"
[[nodiscard]] QString saidTakes(const DueLine &line, Units units);

} // namespace flarestock
