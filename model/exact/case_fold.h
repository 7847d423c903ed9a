// SPDX-License-Identifier: MIT
//
// Folding of case and blanks, for words that people type: part numbers, headings, kinds.
//
// ASCII only, on purpose: folding must not depend on a locale, and "µ" has no upper case that
// anybody means. Every other byte stays as it is.

#pragma once

#include <string>
#include <string_view>

namespace flarestock {

[[nodiscard]] constexpr char foldedLetter(char letter) noexcept
{
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

/// "AD-66" gives "ad-66".
[[nodiscard]] inline std::string folded(std::string_view text)
{
    std::string small(text);
    for (char &letter : small)
        letter = foldedLetter(letter);
    return small;
}

/// Whether two texts are the same but for case.
[[nodiscard]] constexpr bool sameFolded(std::string_view a, std::string_view b) noexcept
{
    if (a.size() != b.size())
        return false;
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (foldedLetter(a[i]) != foldedLetter(b[i]))
            return false;
    }
    return true;
}

/// Without the blanks and tabs at both ends.
[[nodiscard]] constexpr std::string_view trimmed(std::string_view text) noexcept
{
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t'))
        text.remove_suffix(1);
    return text;
}

} // namespace flarestock
