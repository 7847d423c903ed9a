// SPDX-License-Identifier: MIT

#include "model/systems/sizing/line_sizes.h"

#include "model/fluids/line_flow.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr double RoughnessM = 1.5e-6; // Drawn tubing (textbook table); smooth-bore hose at best.

} // namespace

std::vector<SizeTried> triedSizes(const LineAsked &asked, const std::vector<DashBore> &bores)
{
    LineFlow line;
    line.flowM3S = asked.flowM3S;
    line.lengthM = asked.lengthM;
    line.densityKgM3 = asked.densityKgM3;
    line.viscosityPaS = asked.viscosityPaS;
    line.roughnessM = RoughnessM;
    line.minorK = asked.minorK;
    line.riseM = asked.riseM;
    std::vector<SizeTried> tried;
    tried.reserve(bores.size());
    for (const DashBore &bore : bores) {
        line.boreM = bore.boreM;
        const LineLoss loss = lineLoss(line).value();
        const double drop = loss.dropPa + asked.otherPa;
        const bool keeps =
            (!asked.mostPa || drop <= *asked.mostPa) && loss.velocityMS <= asked.mostMS;
        tried.push_back({bore, drop, loss.velocityMS, keeps});
    }
    return tried;
}

const SizeTried *smallestThatKeeps(const std::vector<SizeTried> &sizes) noexcept
{
    const auto found = std::find_if(sizes.begin(), sizes.end(), [](const SizeTried &one) {
        return one.keeps && one.size.offered;
    });
    return found == sizes.end() ? nullptr : &*found;
}

} // namespace flarestock
