// SPDX-License-Identifier: MIT
//
// Carry words: how many spares to carry, as sentences with the sum behind them, as a document and
// as CSV.

#pragma once

#include "app/trailer/carry_line.h"
#include "model/spares/carry/kit.h"

#include <QJsonObject>

namespace flarestock {

[[nodiscard]] QJsonObject carryDocument(const CarryLine &line);
/// Several lines; each ended by '\n'.
[[nodiscard]] std::string carrySentences(const CarryLine &line);

/// What each part of a kit was reckoned from, in the order of the plan's.
struct SaidKit {
    const KitPlan &plan;
    const std::vector<KitPart> &parts;
    const std::vector<CarryLine> &lines;
    std::string currency; ///< Empty where only numbers were given.
    double certainty = 0;
    std::int64_t besides = 0; ///< 10^-6: what is counted and not by chance costs so much.
};
[[nodiscard]] QJsonObject kitDocument(const SaidKit &kit);
[[nodiscard]] std::string kitSentences(const SaidKit &kit);

} // namespace flarestock
