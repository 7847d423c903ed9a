// SPDX-License-Identifier: MIT
//
// outings.csv: how far the cars ran at events before the shop had a journal; `service CAR ran` says
// it later. The columns are described in demo-data/README.md.

#pragma once

#include "model/journal/movement.h"
#include "model/servicing/outing.h"

#include <span>

namespace flarestock {

/// Without id, who and at. Problem: no such table; a car that the shop does not have; a day or a
/// number that is none; neither runs nor hours.
[[nodiscard]] Result<std::vector<Outing>> readOutings(std::string_view text, std::string name,
                                                      std::span<const Place> places);

} // namespace flarestock
