// SPDX-License-Identifier: MIT
//
// The keys of a template's text and the words that may stand there, for whoever reads it and for
// whoever offers them.

#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace flarestock {

/// What a template's text consists of: its top, and tables under a header each.
enum class Paragraph : std::uint8_t { Top, Question, Station, Run, Module, Extra };
inline constexpr std::size_t ParagraphCount = 6;

using TemplateWords = std::span<const std::string_view>;

/// "question" …; the top has none.
[[nodiscard]] std::string_view headerOf(Paragraph paragraph) noexcept;
/// In the order in which the text is written: after the keys of the top, "question" …
[[nodiscard]] TemplateWords headers() noexcept;
/// In the order in which they are written.
[[nodiscard]] TemplateWords keysOf(Paragraph paragraph) noexcept;
/// The words of a key that has a few; none of any other.
[[nodiscard]] TemplateWords wordsOf(Paragraph paragraph, std::string_view key) noexcept;
/// Of a question: those of keysOf() that say how its default is worked out …
[[nodiscard]] TemplateWords workedOutKeys() noexcept;
/// … and those among them that this calculation takes, "worked-out" not named; none of an unknown
/// one.
[[nodiscard]] TemplateWords keysWorkedOutBy(std::string_view calculation) noexcept;

} // namespace flarestock
