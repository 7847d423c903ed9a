// SPDX-License-Identifier: MIT
//
// fitted.csv: what is in the cars when the shop begins, at positions of the shop's own naming; what
// builds put there later is known from them. The columns are described in demo-data/README.md.

#pragma once

#include "model/journal/movement.h"
#include "model/parts/catalogue.h"
#include "model/servicing/serviced.h"

#include <span>

namespace flarestock {

/// Without id, who and at. Problem: no such table; a car or a part that the shop does not have (a
/// fluid is none, and may stand there); a day, a length or a number that is none; a position of a
/// car that stands twice.
[[nodiscard]] Result<std::vector<Serviced>> readFitted(std::string_view text, std::string name,
                                                       const Catalogue &catalogue,
                                                       std::span<const Place> places);

} // namespace flarestock
