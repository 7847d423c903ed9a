// SPDX-License-Identifier: MIT
//
// Card fields: what is filled in on a card besides its ports: a field for each column that parts of
// its kind have, with an example, or the words that may be chosen.

#pragma once

#include "app/desk/rows/rows.h"
#include "model/exchange/typed/typed_row.h"

namespace flarestock {

/// What stands in the choice of a field while nothing is said: the first.
struct CardFields {
    const RowCells &cells; ///< As they stand in the fields.
    Kind kind = Kind::Adapter;
    bool isNew = true; ///< A card that is there keeps its number.
    /// What is wrong, by heading, in a person's words.
    const std::map<std::string, QString> &wrong;
};

/// title form choices value hint problem; `form` is "typed" or "choice". The key is the heading;
/// `value` is what stood in it when the field was made.
[[nodiscard]] QStringList cardFieldCells();
[[nodiscard]] std::vector<Row> cardFieldRows(const CardFields &card);
/// A cell of the catalogue as it stands in its field, figures as the person's country writes them.
[[nodiscard]] QString cellAsTyped(const std::string &heading, const std::string &cell);
/// The cell of what stands in a field. Problem: a figure that can be read in two ways.
[[nodiscard]] Result<std::string> cellOfTyped(const std::string &heading, const std::string &typed);
/// The text of a field's choice; empty where nothing is chosen.
[[nodiscard]] std::string chosenText(const std::string &heading, int choice);
/// The words that a field can hold, in the catalogue's spelling; none where it is typed. The first
/// choice on the screen stands before them where the field may be left out.
[[nodiscard]] std::vector<std::string> wordsOf(const std::string &heading);
/// What the field is called: "rated pressure".
[[nodiscard]] QString fieldTitle(const std::string &heading);

} // namespace flarestock
