// SPDX-License-Identifier: MIT
//
// Paper words: what stands on a paper, ready to be printed, whatever paper it is; and the PDF that
// flarestock-paper makes of them. A cell may have a second line, behind a line end.

#pragma once

#include "app/buyer/papers/speech.h"
#include "app/workshop/workshop.h"
#include "model/exchange/papers/letterhead_toml.h"

#include <QByteArray>
#include <QJsonArray>

namespace flarestock {

struct PaperWords {
    using Pair = std::pair<std::string, std::string>;
    struct Column {
        std::string title;
        double width = 1;   ///< Its share of the whole.
        bool right = false; ///< Its cells end at its right edge.
    };
    std::string size = "A4"; ///< Or "Letter".
    std::string title;
    std::string number = {}; ///< Also as a code that scans; may be empty.
    std::string made;        ///< The day that the file says it was made on: "2026-11-28".
    std::vector<std::string> from = {};
    std::vector<std::string> to = {};
    std::vector<Pair> facts = {};
    std::vector<Column> columns = {};
    std::vector<std::vector<std::string>> rows = {}; ///< As many cells as columns; at least one.
    std::vector<Pair> sums = {};                     ///< The last is the total.
    std::string note = {};
    std::string foot = {};
    Speaking speech = plainSpeech(); ///< In which the rest is said.
};

/// The shop's letterhead.toml; without one its title alone. Problem: it does not read.
[[nodiscard]] Result<Letterhead> letterheadOf(const ShopFile &file);
/// A paper that comes from the shop, in that size, with nothing on it yet but its head and foot.
[[nodiscard]] PaperWords paperFrom(const Letterhead &from, const std::string &size,
                                   const Speaking &speech);
/// What build a paper is about, as of a day, for which car and by when.
void putPlan(PaperWords &paper, const BuildPlan &plan, const std::string &day);
/// A supplier's name and address; his id where the shop has him no more.
[[nodiscard]] std::vector<std::string> addressOf(std::string_view supplier,
                                                 const Catalogue &catalogue);

/// The document that flarestock-paper reads.
[[nodiscard]] QByteArray paperDocument(const PaperWords &paper);
[[nodiscard]] QJsonArray textArray(const std::vector<std::string> &texts);
/// Such a document as a PDF. Problem: flarestock-paper does not lie beside this program, or says
/// what is wrong.
[[nodiscard]] Result<QByteArray> printed(const QByteArray &document);

} // namespace flarestock
