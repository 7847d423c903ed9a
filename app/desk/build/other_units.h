// SPDX-License-Identifier: MIT
//
// Other units: an answer stays as it was given; where that is in units that this person does not
// read, it is said in his beside it.
//
//   30 in   762 mm

#pragma once

#include "app/desk/words/units.h"
#include "model/fluids/measure.h"

#include <string>

namespace flarestock {

/// Of a length or a pressure; empty where it stands in these units already, is no measure or of
/// another dimension.
[[nodiscard]] QString saidInUnits(const std::string &answer, Dimension dimension, Units units);

} // namespace flarestock
