// SPDX-License-Identifier: MIT
//
// Part card: what the panel of one part says, as rows: its ports, where it lies, and below that in
// groups what is promised, what is away, what is kept, what limits it, what happened and who sells
// it. Pure functions of the snapshot; what happened comes with the movements that were read.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/stock/stock_book.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// So much of what happened is shown at first, and at most.
constexpr std::size_t EventsAtFirst = 8;
constexpr std::size_t EventsMost = 200;

struct CardAsked {
    const StockBook &book;
    const StockEntry &entry;
    Units units = Units::Metric;
    const std::vector<Movement> *movements = nullptr; ///< Nothing: not read yet.
    std::size_t events = EventsAtFirst;               ///< So many of them, the newest.
};

/// name port thread says
[[nodiscard]] QStringList portCells();
[[nodiscard]] std::vector<Row> portRows(const Part &part);

/// place amount detail isFree kind says; `kind` is "bin", "drawer", "car", "away" or "seen". The
/// key names the pieces: see lyingAt().
[[nodiscard]] QStringList lyingCells();
[[nodiscard]] std::vector<Row> lyingRows(const CardAsked &asked);
/// Which pieces a key of lyingRows() names; nothing where it names none.
[[nodiscard]] std::optional<BalanceKey> lyingAt(const StockEntry &entry, const QString &key);

/// head title detail figure flagged says back; rows of one head stand together. `back` is the id of
/// a movement that can be taken back; empty where there is none.
[[nodiscard]] QStringList cardCells();
[[nodiscard]] std::vector<Row> cardRows(const CardAsked &asked);

/// "adapter, aluminium, FKM"
[[nodiscard]] QString cardAbout(const StockEntry &entry);
/// "4 here − 1 promised − 1 to be checked = 2 free"; of hose its pieces besides: "12 ft + 3 ft 4
/// in".
[[nodiscard]] QString cardSum(const CardAsked &asked);

} // namespace flarestock
