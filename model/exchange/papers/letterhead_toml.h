// SPDX-License-Identifier: MIT
//
// Letterhead: who the shop's papers are from (letterhead.toml). The format is described in
// demo-data/README.md.

#pragma once

#include "model/exact/problem.h"

#include <string>
#include <vector>

namespace flarestock {

struct Letterhead {
    std::string name;
    std::vector<std::string> lines; ///< Below it: street, town, how to reach the shop.
    std::string foot;               ///< At the foot of each page; may be empty.
};

/// Problem: with file, line, column and a caret: TOML that does not parse, an unknown or missing
/// key.
[[nodiscard]] Result<Letterhead> readLetterhead(std::string_view text, std::string file);

} // namespace flarestock
