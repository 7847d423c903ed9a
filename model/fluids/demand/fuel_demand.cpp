// SPDX-License-Identifier: MIT

#include "model/fluids/demand/fuel_demand.h"

#include "model/fluids/bounds.h"

#include <utility>

namespace flarestock {

Margin marginOf(Feed feed) noexcept
{
    static constexpr std::string_view Regulation =
        "14 CFR 23.955 (2014), piston engines of aeroplanes, at full power";
    return {feed == Feed::Pump ? 1.25 : 1.5, "published", Regulation};
}

Result<FuelDemand> fuelDemand(const FuelAsked &asked)
{
    if (auto wrong = firstImpossible({{"power", asked.powerW},
                                      {"specific consumption", asked.consumptionKgJ},
                                      {"density", asked.densityKgM3},
                                      {"margin", asked.margin}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (asked.margin < 1)
        return problem("margin", "is below 1",
                       "Give 1.25 for a quarter more than the engine takes.");
    FuelDemand demand;
    demand.massKgS = asked.powerW * asked.consumptionKgJ;
    demand.volumeM3S = demand.massKgS / asked.densityKgM3;
    demand.withMarginM3S = demand.volumeM3S * asked.margin;
    return demand;
}

} // namespace flarestock
