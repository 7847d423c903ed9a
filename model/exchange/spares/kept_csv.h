// SPDX-License-Identifier: MIT
//
// kept.csv: how much of a part a place is to hold when the shop begins; `keep` says it later. The
// columns are described in demo-data/README.md.

#pragma once

#include "model/journal/notes/keeping.h"
#include "model/parts/catalogue.h"

#include <span>

namespace flarestock {

/// Without id, who and when. Problem: no such table, a part or a place of stock that the shop does
/// not have, a maximum below the minimum, a number that its unit cannot have, the same twice.
[[nodiscard]] Result<std::vector<Keeping>> readKept(std::string_view text, std::string name,
                                                    const Catalogue &catalogue,
                                                    std::span<const Place> places);

} // namespace flarestock
