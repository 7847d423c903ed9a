// SPDX-License-Identifier: MIT
//
// Needs as a table of one's own: `part`, `quantity` (in the part's unit), `day` (needed by; may be
// empty or left out), `for` (whom; the same).

#pragma once

#include "model/netting/shortage.h"
#include "model/parts/catalogue.h"

namespace flarestock {

/// Problem: no such table, a part that is none of the catalogue, a quantity that is not above zero,
/// a day that is none.
[[nodiscard]] Result<std::vector<Shortage>> readNeeds(std::string_view text, std::string name,
                                                      const Catalogue &catalogue);

} // namespace flarestock
