// SPDX-License-Identifier: MIT
//
// Lot rows: what was found of a lot, as rows.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/service/piece_words.h"
#include "app/garage/lots/lot_trace.h"

namespace flarestock {

struct LotShown {
    const LotTrace &trace;
    const GarageBook &book;
    Units units = Units::Metric;
};
/// mark todo title amount where detail free says
[[nodiscard]] QStringList lotActCells();
[[nodiscard]] std::vector<Row> lotActRows(const LotShown &shown);
/// Where it came from and went; the columns are those of a card's lines.
[[nodiscard]] std::vector<Row> lotCameRows(const LotShown &shown);

} // namespace flarestock
