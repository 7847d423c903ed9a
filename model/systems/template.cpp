// SPDX-License-Identifier: MIT

#include "model/systems/template.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace flarestock {

namespace {

/// The text with each {question} replaced by its answer. A brace that is not closed stays.
std::string filledIn(std::string_view text, const Answers &answers)
{
    std::string filled;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        const std::size_t close = text.find('}', std::min(open, text.size()));
        if (close == std::string_view::npos)
            break;
        filled += text.substr(0, open);
        const auto answer = answers.find(text.substr(open + 1, close - open - 1));
        assert(answer != answers.end());
        filled += answer->second;
        text.remove_prefix(close + 1);
    }
    return filled.append(text);
}

} // namespace

std::optional<std::string> Varying::with(const Answers &answers) const
{
    const auto found =
        std::find_if(alternatives.begin(), alternatives.end(),
                     [&answers](const Alternative &one) { return one.when.holds(answers); });
    if (found == alternatives.end())
        return std::nullopt;
    return filledIn(found->is, answers);
}

std::string_view text(Level level) noexcept
{
    static constexpr std::array<std::string_view, 3> Words = {"suction", "pressure", "return"};
    return Words[static_cast<std::size_t>(level)];
}

const Question *Template::question(std::string_view wanted) const noexcept
{
    const auto found =
        std::find_if(questions.begin(), questions.end(),
                     [wanted](const Question &question) { return question.id == wanted; });
    return found == questions.end() ? nullptr : &*found;
}

} // namespace flarestock
