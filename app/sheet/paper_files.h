// SPDX-License-Identifier: MIT
//
// Paper files: what is written to files for people outside the shop: as a paper, as CSV, as a
// spreadsheet. One way for all, commands and desk: each says what stands on them. Each file is
// whole or as it was before.
//
//   if (const auto can = canWritePapers(asked, shop.file); !can) …   // before anything is written
//   writePapers(asked, shop.file, {[&](PaperWords paper) { return orderPaper(…); }, …});

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"

#include <functional>

namespace flarestock {

struct PaperAsked {
    std::string pdf; ///< Files; empty: none.
    std::string csv;
    std::string xlsx;
    std::string paper = "A4";        ///< Or "Letter".
    Speaking speech = plainSpeech(); ///< Of the paper; tables are said plainly.

    [[nodiscard]] bool isAny() const { return !pdf.empty() || !csv.empty() || !xlsx.empty(); }
};

/// One of them by the ending of its file: ".csv", ".xlsx", else a paper.
[[nodiscard]] PaperAsked paperInto(const std::string &file);

struct PaperMaking {
    std::function<PaperWords(PaperWords paper)> paper; ///< Is given one that comes from the shop.
    std::function<Workbook()> sheet;
    std::function<std::string()> csv = {}; ///< Not said: the sheet's own rows.
};

/// Problem: no such size of paper, a letterhead that does not read, a file that cannot be written.
[[nodiscard]] Result<void> canWritePapers(const PaperAsked &asked, const ShopFile &file);
/// Problem: the same; no paper could be made.
[[nodiscard]] Result<void> writePapers(const PaperAsked &asked, const ShopFile &file,
                                       const PaperMaking &making);

} // namespace flarestock
