// SPDX-License-Identifier: MIT

#include "model/exact/nearest_word.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::size_t WordLengthMax = 64;
constexpr std::size_t ListedMax = 12;

} // namespace

std::size_t edits(std::string_view a, std::string_view b, std::size_t limit)
{
    if (a.size() > WordLengthMax || b.size() > WordLengthMax)
        return limit + 1;
    using Row = std::array<std::size_t, WordLengthMax + 1>;
    Row beforeLast{};
    Row last{};
    Row row{};
    for (std::size_t j = 0; j <= b.size(); ++j)
        last[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const char ofA = foldedLetter(a[i - 1]);
            const char ofB = foldedLetter(b[j - 1]);
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (ofA == ofB ? 0U : 1U)});
            if (i > 1 && j > 1 && ofA == foldedLetter(b[j - 2]) && foldedLetter(a[i - 2]) == ofB)
                row[j] = std::min(row[j], beforeLast[j - 2] + 1);
        }
        beforeLast = last;
        last = row;
    }
    return std::min(last[b.size()], limit + 1);
}

std::string_view nearestWord(std::string_view typed, std::span<const std::string_view> words)
{
    const std::size_t limit = std::clamp<std::size_t>(typed.size() / 3, 1, 3);
    std::size_t fewest = limit + 1;
    std::string_view nearest;
    for (const std::string_view word : words) {
        const std::size_t distance = edits(typed, word, limit);
        if (distance < fewest) {
            fewest = distance;
            nearest = word;
        }
    }
    return nearest;
}

std::string wordRemedy(std::string_view typed, std::span<const std::string_view> words)
{
    if (const auto near = nearestWord(typed, words); !near.empty())
        return "Perhaps \"" + std::string(near) + "\" is meant.";
    if (words.empty())
        return {};
    std::string remedy = "Write ";
    for (std::size_t i = 0; i < std::min(words.size(), ListedMax); ++i) {
        if (i > 0)
            remedy += i + 1 == words.size() ? " or " : ", ";
        remedy += words[i];
    }
    return remedy + (words.size() > ListedMax ? " …" : ".");
}

} // namespace flarestock
