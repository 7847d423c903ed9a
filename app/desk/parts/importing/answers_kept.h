// SPDX-License-Identifier: MIT
//
// Answers kept: what was answered and left out of a list that is taken in, for a desk that ends in
// the midst of it. An answer belongs to its question: where the shop has changed meanwhile so that
// another one is asked, it is asked anew, and so is what comes after it.

#pragma once

#include "model/exchange/typed/list_reading.h"

#include <QVariantMap>

#include <set>

namespace flarestock {

/// What is said of a list so far.
struct ListAnswers {
    std::vector<bool> answers;     ///< Of the first questions: taken as it is understood.
    std::set<std::size_t> leftOut; ///< By line.

    [[nodiscard]] bool isEmpty() const { return answers.empty() && leftOut.empty(); }
};

/// By which the same text is told again.
[[nodiscard]] QString digestOf(const std::string &text);
/// As many answers as there are questions, at most; empty where nothing was said.
[[nodiscard]] QVariantMap keptOfList(const ListAnswers &given, const std::vector<AskedRow> &asking);
[[nodiscard]] ListAnswers answersKept(const QVariantMap &kept, const std::vector<AskedRow> &asking);

} // namespace flarestock
