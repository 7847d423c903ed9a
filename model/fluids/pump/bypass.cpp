// SPDX-License-Identifier: MIT

#include "model/fluids/pump/bypass.h"

#include "model/fluids/bounds.h"

#include <algorithm>
#include <utility>

namespace flarestock {

Result<BypassRange> bypassRange(const BypassRegulator &regulator, const WholeLine &returnLine)
{
    if (auto wrong = firstImpossible(
            {{"lowest setting", regulator.lowPa, Allowed::NothingOrMore},
             {"highest setting", regulator.highPa},
             {"loss wide open", regulator.wideOpenPa.value_or(0), Allowed::NothingOrMore},
             {"flow of the regulator", regulator.mostM3S.value_or(1)}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (regulator.highPa < regulator.lowPa)
        return problem("regulator", "ends below where it begins", "Give the lower setting first.");
    const auto loss = wholeLineLoss(returnLine);
    if (!loss)
        return tl::unexpected<Problem>(loss.error());
    BypassRange range;
    range.floorPa = loss->dropPa + regulator.wideOpenPa.value_or(0);
    range.ownPa = regulator.wideOpenPa;
    range.fromPa = std::max(regulator.lowPa, range.floorPa);
    range.toPa = regulator.highPa;
    range.overItsFlow = regulator.mostM3S && returnLine.flowM3S > *regulator.mostM3S;
    range.boreAssumed = loss->boreAssumed;
    return range;
}

} // namespace flarestock
