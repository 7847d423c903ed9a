// SPDX-License-Identifier: MIT
//
// Fresh text: how a new template begins: out of little that can be drawn at once, or out of
// another.

#pragma once

#include <set>
#include <string>

namespace flarestock {

using TakenIds = std::set<std::string, std::less<>>;

/// A tank, a line and who is fed, with the questions that the line asks; under an id that is none
/// of `taken`.
[[nodiscard]] std::string freshText(const TakenIds &taken);
/// A text under another id and title, all else to the byte. A text that is no TOML stays as it is.
[[nodiscard]] std::string copiedText(const std::string &text, const TakenIds &taken);

} // namespace flarestock
