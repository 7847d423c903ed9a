// SPDX-License-Identifier: MIT

#include "model/fluids/pump/inlet.h"

#include "model/fluids/bounds.h"
#include "model/fluids/line_flow.h"
#include "model/fluids/pump/atmosphere.h"

#include <utility>

namespace flarestock {

Result<InletMargin> inletMargin(const PumpInlet &inlet)
{
    if (auto wrong = firstImpossible({{"tank pressure", inlet.tankPa, Allowed::AnyNumber},
                                      {"vapour pressure", inlet.vapourPa, Allowed::NothingOrMore},
                                      {"density", inlet.densityKgM3},
                                      {"head", inlet.headM, Allowed::AnyNumber},
                                      {"loss", inlet.lossPa, Allowed::AnyNumber}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto atmosphere = atmospherePa(inlet.altitudeM);
    if (!atmosphere)
        return tl::unexpected<Problem>(atmosphere.error());
    if (*atmosphere + inlet.tankPa < 0)
        return problem("tank pressure", "is below a perfect vacuum",
                       "Give it over the air around: 0 for a vented tank.");
    const double metrePa = inlet.densityKgM3 * StandardGravityMS2;
    InletMargin margin;
    margin.atmospherePa = *atmosphere;
    margin.inletPa = *atmosphere + inlet.tankPa + metrePa * inlet.headM - inlet.lossPa;
    margin.marginPa = margin.inletPa - inlet.vapourPa;
    margin.npshM = margin.marginPa / metrePa;
    return margin;
}

} // namespace flarestock
