// SPDX-License-Identifier: MIT
//
// Whether a fluid may run through a part: as its maker says, and as its seal, liner and element
// bear it.

#pragma once

#include "model/parts/part.h"

namespace flarestock {

/// Whether its maker names the fluid; false where he names none.
[[nodiscard]] bool isNamedFor(const Part &part, Fluid fluid);
/// Whether its maker names fluids, and not this one.
[[nodiscard]] bool isForbiddenIn(const Part &part, Fluid fluid);

/// True where no fluid is named. A maker who names no fluids forbids none; a seal, liner or element
/// that the fluid ruins is out whatever he says.
[[nodiscard]] bool allowsFluid(const Part &part, std::optional<Fluid> fluid);

/// Whether its liner, where it is a hose, stands the fluid well by the table, not only on
/// conditions; of a liner that the table does not have, whether the maker names the fluid. True
/// where no fluid is named.
[[nodiscard]] bool standsWell(const Part &part, std::optional<Fluid> fluid);

} // namespace flarestock
