// SPDX-License-Identifier: MIT

#include "model/parts/fluid_allowed.h"

#include "model/fluids/attack/medium.h"
#include "model/fluids/compatibility.h"

#include <algorithm>

namespace flarestock {

bool isNamedFor(const Part &part, Fluid fluid)
{
    return std::find(part.suits.begin(), part.suits.end(), fluid) != part.suits.end();
}

bool isForbiddenIn(const Part &part, Fluid fluid)
{
    return !part.suits.empty() && !isNamedFor(part, fluid);
}

bool allowsFluid(const Part &part, std::optional<Fluid> fluid)
{
    if (!fluid)
        return true;
    if (compatibility(*fluid, part.seal).bears == Bears::Never)
        return false;
    if (const auto *hose = part.as<HoseFacts>();
        hose && compatibility(*fluid, hose->liner).bears == Bears::Never)
        return false;
    if (const auto *filter = part.as<FilterFacts>();
        filter && mediumIn(*fluid, filter->medium).bears == Bears::Never)
        return false;
    if (const auto *element = part.as<ElementFacts>();
        element && mediumIn(*fluid, element->medium).bears == Bears::Never)
        return false;
    return !isForbiddenIn(part, *fluid);
}

bool standsWell(const Part &part, std::optional<Fluid> fluid)
{
    const auto *hose = part.as<HoseFacts>();
    if (!fluid || !hose)
        return true;
    const Bears bears = compatibility(*fluid, hose->liner).bears;
    if (bears == Bears::Unknown)
        return isNamedFor(part, *fluid);
    return bears == Bears::Good;
}

} // namespace flarestock
