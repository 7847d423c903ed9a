// SPDX-License-Identifier: MIT

#include "model/parts/kind.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, KindCount> KindWords = {"hose",
                                                               "hose end",
                                                               "tubing",
                                                               "tube nut",
                                                               "tube sleeve",
                                                               "adapter",
                                                               "tee",
                                                               "manifold",
                                                               "bulkhead",
                                                               "cap",
                                                               "plug",
                                                               "filter",
                                                               "element",
                                                               "pump",
                                                               "regulator",
                                                               "check valve",
                                                               "rollover valve",
                                                               "tank",
                                                               "sender",
                                                               "gauge",
                                                               "rail",
                                                               "carburettor",
                                                               "injector",
                                                               "cooler",
                                                               "engine",
                                                               "master cylinder",
                                                               "calliper",
                                                               "brake valve",
                                                               "bracket",
                                                               "clamp",
                                                               "ring",
                                                               "washer",
                                                               "sealant",
                                                               "wire",
                                                               "fuse",
                                                               "relay",
                                                               "tool"};
static_assert(static_cast<std::size_t>(Kind::Tool) + 1 == KindCount, "KindCount counts the kinds");
static_assert(!KindWords.back().empty(), "every kind has a word");

/// Lower case, with blanks for hyphens and underscores and no two blanks side by side.
std::string kindWord(std::string_view typed)
{
    std::string word;
    for (const char letter : trimmed(typed)) {
        const char plain = letter == '-' || letter == '_' || letter == '\t' ? ' ' : letter;
        if (plain != ' ' || (!word.empty() && word.back() != ' '))
            word += foldedLetter(plain);
    }
    return word;
}

} // namespace

std::string_view text(Kind kind) noexcept
{
    assert(static_cast<std::size_t>(kind) < KindCount);
    return KindWords[static_cast<std::size_t>(kind)];
}

bool isUsedByMeasure(Kind kind) noexcept
{
    return kind == Kind::Sealant;
}

Result<Kind> parseKind(std::string_view text)
{
    const std::string word = kindWord(text);
    const auto *const found = std::find(KindWords.begin(), KindWords.end(), word);
    if (found != KindWords.end())
        return static_cast<Kind>(found - KindWords.begin());
    if (word.empty())
        return problem("kind", "is empty", wordRemedy(word, KindWords));
    return problem("kind", "\"" + std::string(text) + "\" is no kind of part",
                   wordRemedy(word, KindWords));
}

} // namespace flarestock
