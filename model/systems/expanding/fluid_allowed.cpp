// SPDX-License-Identifier: MIT

#include "model/systems/expanding/fluid_allowed.h"

#include <algorithm>

namespace flarestock {

bool allowsFluid(const Part &part, std::optional<Fluid> fluid)
{
    if (!fluid)
        return true;
    return part.suits.empty() ||
           std::find(part.suits.begin(), part.suits.end(), *fluid) != part.suits.end();
}

} // namespace flarestock
