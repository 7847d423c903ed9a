// SPDX-License-Identifier: MIT
//
// The words of a condition: its tree, and the reader that makes it out of a text.

#pragma once

#include "model/fluids/measure.h"
#include "model/systems/condition.h"

#include <optional>

namespace flarestock {

struct Condition::Node {
    enum class Form : std::uint8_t {
        Is,
        IsNot,
        OneOf,
        Above,
        Below,
        AtLeast,
        AtMost,
        Not,
        And,
        Or
    };
    struct Value {
        std::string text;
        std::uint32_t column = 0;
        std::optional<Measure> measure; ///< Where it can be read as one.
    };
    Form form = Form::Is;
    std::string question; ///< For comparisons, as are the next two.
    std::uint32_t column = 0;
    std::vector<Value> values;
    std::vector<std::shared_ptr<const Node>> parts; ///< For Not (one), And, Or (two or more).

    [[nodiscard]] bool isComparison() const noexcept { return form < Form::Not; }
    [[nodiscard]] bool isBySize() const noexcept { return isComparison() && form > Form::OneOf; }
};

/// The words of a comparison: "is", "at least" …
[[nodiscard]] std::string_view comparisonWords(Condition::Node::Form form) noexcept;

/// Reads a whole condition; an empty text is a problem here.
[[nodiscard]] Result<std::shared_ptr<const Condition::Node>> readCondition(std::string_view text);

} // namespace flarestock
