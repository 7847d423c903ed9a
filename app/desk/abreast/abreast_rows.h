// SPDX-License-Identifier: MIT
//
// Abreast rows: the builds as heads of columns, by their days, and the parts that they want as
// rows, each with a cell for each build. What changes against the days as they stand is marked.

#pragma once

#include "app/desk/abreast/abreast_book.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// What is shown, and what it is held against: the same book where no day is tried.
struct Abreast {
    const AbreastBook &now;
    const AbreastBook &before;
    Units units = Units::Metric;
};

/// title car day was word mark says; `was`: its day in the shop where another is tried; `mark`: one
/// of Standing.
[[nodiscard]] QStringList abreastHeadCells();
[[nodiscard]] std::vector<Row> abreastHeads(const Abreast &abreast);

/// Which parts are shown.
enum class AbreastShown : std::uint8_t {
    Contested, ///< Wanted by more than one build, or short for one.
    All,
    Changed, ///< With another cell than as the days stand.
};

/// part what stock coming group contested changed cells says. A cell of `cells`, in the order of
/// the heads, is a map: need got more before changed reserved here coming lacks pieces late says;
/// of a build that wants none of it only `says` and what it wanted before.
[[nodiscard]] QStringList abreastLineCells();
[[nodiscard]] std::vector<Row> abreastLines(const Abreast &abreast);
/// Those of them that are shown, with all that was typed in what it says of the part.
[[nodiscard]] std::vector<Row> abreastShown(const std::vector<Row> &lines, AbreastShown shown,
                                            const QString &typed);

} // namespace flarestock
