// SPDX-License-Identifier: MIT
//
// Load rows: what to bring into the drawers from which bin, and what to take out of them, as lists
// of which each line is ticked; and what was ticked as an action of the journal.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/pen.h"
#include "app/desk/trailer/drawers/trailer_book.h"
#include "app/desk/words/units.h"

#include <set>

namespace flarestock {

/// section place part what take lot note isToBuy ticked says. A line that is to be bought has no
/// place and cannot be ticked.
[[nodiscard]] QStringList loadCells();
struct LoadShown {
    const TrailerBook &book;
    const std::set<QString> &ticked; ///< Keys of rows.
    Units units = Units::Metric;
};
[[nodiscard]] std::vector<Row> loadRows(const LoadShown &shown);
/// section place part what take lot note isToBuy ticked says: `place` is where it goes to, empty
/// where no bin keeps it; `note` why it does not belong there.
[[nodiscard]] std::vector<Row> unloadRows(const LoadShown &shown);

/// What is ticked, out of the newest state of the shop. Problem: the list is another by now.
[[nodiscard]] Pen::MadeBy loadedBy(const LoadAsked &asked, const std::set<QString> &ticked);
/// `otherwise`: the place of what no bin keeps. Problem: also that nothing is said of that.
struct UnloadDeed {
    LoadAsked asked;
    std::set<QString> ticked;
    std::string otherwise;
};
[[nodiscard]] Pen::MadeBy takenOutBy(const UnloadDeed &deed);

} // namespace flarestock
