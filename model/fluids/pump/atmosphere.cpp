// SPDX-License-Identifier: MIT

#include "model/fluids/pump/atmosphere.h"

#include "model/fluids/bounds.h"
#include "model/fluids/line_flow.h"

#include <cmath>
#include <utility>

namespace flarestock {

Result<double> atmospherePa(double altitudeM)
{
    if (auto wrong = beyond({"height", "m", -500, 11000}, altitudeM, "standard atmosphere"))
        return tl::unexpected<Problem>(*std::move(wrong));
    constexpr double SeaPa = 101325;
    constexpr double SeaK = 288.15;
    constexpr double LapseKM = 0.0065;
    constexpr double AirJKgK = 287.05287;
    return SeaPa *
           std::pow(1 - LapseKM * altitudeM / SeaK, StandardGravityMS2 / (LapseKM * AirJKgK));
}

} // namespace flarestock
