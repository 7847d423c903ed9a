// SPDX-License-Identifier: MIT

#include "model/systems/sizing/hose_bores.h"

#include "model/exact/case_fold.h"
#include "model/fluids/line/dash_bore.h"
#include "model/parts/fluid_allowed.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

constexpr double Millimetre = 1e-3;

/// Dash size to the narrowest bore that is entered; 0 where none is.
std::map<int, double> entered(const HoseWanted &wanted, const Catalogue &catalogue)
{
    std::map<int, double> bores;
    for (const Part *part : catalogue.ofKind(Kind::Hose)) {
        const auto *hose = part->as<HoseFacts>();
        if (!hose ||
            !(wanted.construction.empty() || sameFolded(hose->construction, wanted.construction)) ||
            !allowsFluid(*part, wanted.fluid))
            continue;
        double &bore = bores[hose->dash];
        const double here = hose->boreMm.value_or(0) * Millimetre;
        bore = bore > 0 && here > 0 ? std::min(bore, here) : std::max(bore, here);
    }
    return bores;
}

} // namespace

std::vector<DashBore> hoseBores(const std::vector<int> &dashes, const HoseWanted &wanted,
                                const Catalogue *catalogue)
{
    const auto known = catalogue ? entered(wanted, *catalogue) : std::map<int, double>();
    std::vector<DashBore> bores;
    for (const int dash : dashes) {
        const auto found = known.find(dash);
        const bool offered = !catalogue || found != known.end();
        const bool measured = found != known.end() && found->second > 0;
        const auto usual = assumedBore(dash, DashNumbering::AsTube);
        if (measured)
            bores.push_back({dash, found->second, offered, false});
        else if (usual)
            bores.push_back({dash, usual->boreM, offered, true});
    }
    return bores;
}

} // namespace flarestock
