// SPDX-License-Identifier: MIT
//
// Condition: a sentence about the answers that decides whether a station, run or value applies.
//
//   fluid is E85 and power above 500 hp
//   not (delivery is carburettor) or tank is one of cell, saddle tank
//
// Comparisons: `is`, `is not`, `is one of` (values by commas), `above`, `below`, `at least`, `at
// most` (measures and counts). `not` binds before `and`, `and` before `or`; parentheses group.
// A value runs to the next `and`, `or`, comma or parenthesis, so it may hold blanks; one that holds
// such a word stands in single quotes: fitting is 'nut and sleeve'. Case does not matter.

#pragma once

#include "model/exact/problem.h"
#include "model/systems/answers.h"

#include <functional>
#include <memory>
#include <string_view>
#include <vector>

namespace flarestock {

class Condition {
public:
    Condition() = default; ///< Always true.
    /// An empty text is always true. Problem: with the column in `text` at which reading stopped
    /// (line is 0); also a comparison by size with what is no measure, and nesting beyond 64.
    [[nodiscard]] static Result<Condition> parse(std::string_view text);

    [[nodiscard]] bool isAlways() const noexcept { return !m_root; }
    [[nodiscard]] std::string text() const; ///< Canonical; "" where always true.
    /// The ids of the questions that it asks about, each once, with the column where it first
    /// stands.
    struct Mention {
        std::string question;
        std::uint32_t column = 0;
        std::vector<std::string> values;         ///< What it is compared with …
        std::vector<std::uint32_t> valueColumns; ///< … and the column of each.
        bool measured = false;                   ///< Compared by size (`above` …).
    };
    [[nodiscard]] std::vector<Mention> mentions() const;
    /// `answers` holds every mentioned question (a template checks that when it is read; asserted).
    /// Two measures are the same where they differ by less than one part in 10^9.
    [[nodiscard]] bool holds(const Answers &answers) const;

    struct Node;

private:
    std::shared_ptr<const Node> m_root;
};

} // namespace flarestock
