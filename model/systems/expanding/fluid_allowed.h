// SPDX-License-Identifier: MIT
//
// Whether a fluid may run through a part: as its maker says, and as its seal and liner bear it.

#pragma once

#include "model/parts/part.h"

namespace flarestock {

/// True where no fluid is named. A maker who names no fluids forbids none; a seal or liner that the
/// fluid ruins is out whatever he says.
[[nodiscard]] bool allowsFluid(const Part &part, std::optional<Fluid> fluid);

} // namespace flarestock
