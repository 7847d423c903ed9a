// SPDX-License-Identifier: MIT
//
// Receipt rows: what came in, a row for each part, place and lot, as a sheet and as a slip that
// goes with the box to its bin; with what lacks and what is still to come.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"

namespace flarestock {

struct SlipOfReceipt {
    struct Row {
        const Part *part = nullptr;
        std::int64_t quantity = 0; ///< Smallest units.
        std::string to;            ///< Place id.
        std::string lot;           ///< May be empty.
        PieceCondition condition = PieceCondition::New;
        std::int64_t value = 0; ///< 10^-6 of the shop's currency.
        std::string note;
    };
    std::string supplier; ///< Id, or the place that it came from.
    std::string order;    ///< Its number; empty: of none.
    std::string document; ///< Delivery note.
    std::string day;      ///< "2026-11-28"
    std::vector<Row> rows;
    std::vector<std::string> besides; ///< Sentences: claims, what is still to come.
};

[[nodiscard]] Workbook receiptRows(const SlipOfReceipt &came, const Workshop &workshop);
/// `paper` comes from the shop, and is empty besides.
[[nodiscard]] PaperWords receivingSlip(const SlipOfReceipt &came, const Workshop &workshop,
                                       PaperWords paper);

} // namespace flarestock
