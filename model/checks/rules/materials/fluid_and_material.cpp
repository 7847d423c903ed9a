// SPDX-License-Identifier: MIT
//
// Fluid and material: parts whose maker does not allow the fluid, seals and liners that it ruins.

#include "model/checks/rules/rules.h"
#include "model/fluids/compatibility.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

/// What of a part the fluid touches, by its material: "seal", "liner".
std::vector<std::pair<std::string, std::string>> touched(const Part &part)
{
    std::vector<std::pair<std::string, std::string>> materials;
    if (!part.seal.empty())
        materials.emplace_back("seal", part.seal);
    const auto *hose = part.as<HoseFacts>();
    if (hose != nullptr && !hose->liner.empty())
        materials.emplace_back("liner", hose->liner);
    return materials;
}

/// " Its NBR seal is ruined by it." Empty where the material is no reason.
std::string whyByMaterial(const Part &part, Fluid fluid)
{
    for (const auto &[what, material] : touched(part)) {
        const auto bears = compatibility(fluid, material).bears;
        if (bears == Bears::Never || bears == Bears::Fair)
            return " Its " + material + " " + what +
                   (bears == Bears::Never ? " is ruined by it." : " may not last in it.");
    }
    return {};
}

void byMaker(const BillLine &line, Fluid fluid, Findings &found)
{
    const auto &suits = line.part->suits;
    if (suits.empty() || std::find(suits.begin(), suits.end(), fluid) != suits.end())
        return;
    std::string allowed;
    for (const auto other : suits)
        allowed += (allowed.empty() ? "" : ", ") + std::string(text(other));
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::FluidAndMaterial,
                     .about = line.part->number + " is not made for " + std::string(text(fluid)),
                     .where = line.stations.empty() ? std::string() : line.stations.front(),
                     .text = "Its maker allows " + allowed + "." + whyByMaterial(*line.part, fluid),
                     .source = "the maker's list of fluids, as entered in the catalogue",
                     .remedy = "Use a part that is made for it.",
                     .mend = {}});
}

void byMaterial(const BillLine &line, Fluid fluid, Findings &found)
{
    for (const auto &[what, material] : touched(*line.part)) {
        const auto stands = compatibility(fluid, material);
        if (stands.bears == Bears::Good || stands.bears == Bears::Unknown)
            continue;
        const bool never = stands.bears == Bears::Never;
        const auto &suits = line.part->suits;
        const bool allowed = std::find(suits.begin(), suits.end(), fluid) != suits.end();
        // The maker's own word overrides a class default that is only conditional; what he does not
        // allow has been said by byMaker(), and this is one more reason for the same.
        if (allowed ? !never : !suits.empty())
            continue;
        found.push_back(
            {.severity = never ? Severity::Stop : Severity::Caution,
             .matter = Matter::FluidAndMaterial,
             .about = line.part->number + ": " + material + " " + what +
                      (never ? " is ruined by " : " may not last in ") + std::string(text(fluid)),
             .where = line.stations.empty() ? std::string() : line.stations.front(),
             .text = never ? "It swells or dissolves, and then the joint leaks."
                           : "The class of material is only conditionally suited; compounds vary.",
             .source = std::string(stands.source),
             .remedy = never ? "Use the same part with another " + what + "."
                             : "Ask its maker for this fluid, or use another " + what + ".",
             .mend = {}});
    }
}

} // namespace

void fluidAndMaterial(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid)
        return;
    for (const auto &line : build.expansion().lines) {
        if (!line.consumed)
            continue;
        byMaker(line, *fluid, found);
        byMaterial(line, *fluid, found);
    }
}

} // namespace flarestock::rules
