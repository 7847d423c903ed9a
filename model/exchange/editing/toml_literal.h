// SPDX-License-Identifier: MIT
//
// How a value is written in a TOML text (TOML 1.0).

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

/// A basic string in quotes: `"5 ft 6 in"`; quotes, backslashes and control characters escaped.
[[nodiscard]] std::string tomlText(std::string_view text);
/// The same in the manner of the value that it replaces, as it stands there: a literal one in
/// `'…'`, one over several lines in three quotes. A text that cannot stand so is a basic string.
[[nodiscard]] std::string tomlTextLike(std::string_view was, std::string_view text);
/// `["-6", "-8"]`
[[nodiscard]] std::string tomlTexts(const std::vector<std::string> &texts);

} // namespace flarestock
