// SPDX-License-Identifier: MIT
//
// Key fact: what a part is known for, in a few letters for its plate.

#pragma once

#include "app/desk/words/units.h"
#include "model/parts/part.h"

namespace flarestock {

/// "100 µm nominal", "460 L/h, 3 bar", "-8 / -6"; empty where nothing is known. Micron stays
/// micron.
[[nodiscard]] QString keyFact(const Part &part, Units units);

} // namespace flarestock
