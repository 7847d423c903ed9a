// SPDX-License-Identifier: MIT
//
// Fluid and material: parts whose maker does not allow the fluid; seals, liners and elements that
// it ruins. What the maker does not allow is said once, with the material as its reason.

#include "model/checks/rules/rules.h"
#include "model/exact/case_fold.h"
#include "model/fluids/attack/medium.h"
#include "model/parts/fluid_allowed.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

/// What of a part the fluid touches: "seal", "liner", "element".
struct Touched {
    std::string what;
    std::string material;
    Compatibility stands;
};

std::vector<Touched> touched(const Part &part, Fluid fluid)
{
    std::vector<Touched> materials;
    if (!part.seal.empty())
        materials.push_back({"seal", part.seal, compatibility(fluid, part.seal)});
    const auto *hose = part.as<HoseFacts>();
    if (hose != nullptr && !hose->liner.empty())
        materials.push_back({"liner", hose->liner, compatibility(fluid, hose->liner)});
    const auto *filter = part.as<FilterFacts>();
    if (filter != nullptr && !filter->medium.empty())
        materials.push_back({"element", filter->medium, mediumIn(fluid, filter->medium)});
    const auto *element = part.as<ElementFacts>();
    if (element != nullptr && !element->medium.empty())
        materials.push_back({"element", element->medium, mediumIn(fluid, element->medium)});
    return materials;
}

/// " Its NBR seal is ruined by it." Empty where the material is no reason.
std::string whyByMaterial(const Part &part, Fluid fluid)
{
    for (const auto &[what, material, stands] : touched(part, fluid)) {
        if (stands.bears == Bears::Never || stands.bears == Bears::Fair)
            return " Its " + material + " " + what +
                   (stands.bears == Bears::Never ? " is ruined by it." : " may not last in it.");
    }
    return {};
}

/// The filter that a spare element belongs to, where the same is already said of the filter.
bool isSaidOfItsFilter(const Part &element, const BuildUnderCheck &build, Fluid fluid)
{
    const auto *facts = element.as<ElementFacts>();
    if (facts == nullptr)
        return false;
    const auto &stations = build.expansion().stations;
    return std::any_of(stations.begin(), stations.end(), [&](const PlacedStation &station) {
        const auto *filter = station.part ? station.part->as<FilterFacts>() : nullptr;
        if (filter == nullptr || filter->element != element.number)
            return false;
        const bool ruined = mediumIn(fluid, facts->medium).bears == Bears::Never;
        return isForbiddenIn(*station.part, fluid) ||
               (sameFolded(filter->medium, facts->medium) &&
                (ruined || station.part->suits == element.suits));
    });
}

void byMaker(const BillLine &line, Fluid fluid, Findings &found)
{
    if (!isForbiddenIn(*line.part, fluid))
        return;
    std::string allowed;
    for (const auto other : line.part->suits)
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
    for (const auto &[what, material, stands] : touched(*line.part, fluid)) {
        if (stands.bears == Bears::Good || stands.bears == Bears::Unknown)
            continue;
        const bool never = stands.bears == Bears::Never;
        // The maker's own word overrides a class default that is only conditional; what he does not
        // allow has been said by byMaker(), and this is one more reason for the same.
        if (isNamedFor(*line.part, fluid) ? !never : !line.part->suits.empty())
            continue;
        const bool element = what == "element";
        found.push_back(
            {.severity = never ? Severity::Stop : Severity::Caution,
             .matter = Matter::FluidAndMaterial,
             .about = line.part->number + ": " + material + " " + what +
                      (never ? " is ruined by " : " may not last in ") + std::string(text(fluid)),
             .where = line.stations.empty() ? std::string() : line.stations.front(),
             .text = !never    ? "The class of material is only conditionally suited; makes vary."
                     : element ? "It swells and comes apart, and its shreds go down the line."
                               : "It swells or dissolves, and then the joint leaks.",
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
        if (!line.consumed || isSaidOfItsFilter(*line.part, build, *fluid))
            continue;
        byMaker(line, *fluid, found);
        byMaterial(line, *fluid, found);
    }
}

} // namespace flarestock::rules
