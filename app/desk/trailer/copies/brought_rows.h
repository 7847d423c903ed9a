// SPDX-License-Identifier: MIT
//
// Brought rows: what a copy would bring, and where it and the shop cannot both be right, as
// questions with words to choose from.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "app/workshop/workshop.h"
#include "model/storage/trailer/travelling.h"

namespace flarestock {

/// what detail says: a movement each.
[[nodiscard]] QStringList broughtCells();
[[nodiscard]] std::vector<Row> broughtRows(const BroughtBack &back, const Workshop &shop,
                                           Units units);

/// What was chosen on a disagreement: one of its choices, and what stands behind that.
struct Decided {
    int choice = -1; ///< Nothing yet.
    QString more;    ///< Of a choice that wants a name behind it.
};
using DecidedByName = std::map<std::string, Decided>;

/// Whose words and measures things are said in.
struct SaidBy {
    const Workshop &shop;
    Units units = Units::Metric;
};

/// what choices chosen wantsMore more isDecided says; the key is the disagreement's name.
[[nodiscard]] QStringList questionCells();
[[nodiscard]] std::vector<Row> questionRows(const std::vector<Disagreement> &all,
                                            const DecidedByName &decided, const SaidBy &by);
/// The words that are said on them, as a bringing takes them; of those that are decided.
[[nodiscard]] std::map<std::string, std::string> wordsOf(const std::vector<Disagreement> &all,
                                                         const DecidedByName &decided);

/// "5 movements, 1 record, 1 new place"; "nothing new".
[[nodiscard]] QString saidCame(const BroughtBack &back);

} // namespace flarestock
