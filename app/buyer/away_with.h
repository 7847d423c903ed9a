// SPDX-License-Identifier: MIT
//
// Away with: what is counted on for a build or a car and lies at places that a travelling copy has
// for its own: nobody can take it here before that copy is brought back.

#pragma once

#include "app/buyer/needs.h"
#include "model/journal/notes/trip.h"

namespace flarestock {

/// A sentence for each part of which what lies here is not enough.
[[nodiscard]] std::vector<std::string> countedOnAway(const ShopNeeds &needs,
                                                     const Workshop &workshop, const Trips &trips);

} // namespace flarestock
