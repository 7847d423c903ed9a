// SPDX-License-Identifier: MIT
//
// A string of a TOML text that does not end, and a character that is not ASCII outside its strings
// and comments. TOML 1.0 has none there; the parsing library's check for such blanks is undefined
// for many of them (toml++ 3.3, is_non_ascii_horizontal_whitespace; found by fuzzing), so it must
// not see them.

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace flarestock {

/// The byte of the first one; nothing where there is none, or where a string does not end before.
/// Exact for a text that is TOML; in a broken one the library may see other strings than this.
[[nodiscard]] std::optional<std::size_t> firstStrayCharacter(std::string_view text) noexcept;

/// The quote of the first string that does not end, on its line or, of a long one, at all; nothing
/// where each does. In a broken text the library may stop before.
[[nodiscard]] std::optional<std::size_t> firstOpenQuote(std::string_view text) noexcept;

/// The text with an X for each letter beyond ASCII, so that lines and columns stay. What is wrong
/// with its form is found in it without danger; a text whose stand-in is TOML has its strings where
/// firstStrayCharacter() sees them.
[[nodiscard]] std::string asciiStandIn(std::string_view text);

} // namespace flarestock
