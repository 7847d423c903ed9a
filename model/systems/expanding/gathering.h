// SPDX-License-Identifier: MIT
//
// Gathering: the bill of an expansion whose stations, runs and joints stand. One line a part, its
// needs summed, each with its reason, in flow order.
//
// What goes on it: stations' parts; lines by the length, cut by cut; pieces and aids of joints;
// what fitting a part uses up, less what lies in its box (and was not found missing there); clamps;
// spare elements; the template's extras. Of sealant one bottle does for a build; of a tool, which
// comes back, one does for all copies.

#pragma once

#include "model/systems/expand.h"
#include "model/systems/expanding/allotment.h"
#include "model/systems/expanding/flattening.h"

namespace flarestock {

/// Sets `lines` of the expansion and adds to its notes.
/// Problem: a quantity that is not whole in its part's unit, or beyond what a journal can hold.
[[nodiscard]] Result<void> gatherBill(const ExpandRequest &request, const FlatSystem &system,
                                      Expansion &expansion);

} // namespace flarestock
