// SPDX-License-Identifier: MIT
//
// Temperatures: pieces that are made for less heat than the fluid usually has. By the maker's
// limit, part by part; where he gives none, by the class of seal or liner, each class once.

#include "model/checks/parts_met.h"
#include "model/checks/rules/rules.h"
#include "model/fluids/attack/seal_heat.h"
#include "model/fluids/demand/usual_duty.h"

#include <cmath>
#include <map>

namespace flarestock::rules {

namespace {

std::string celsius(double value)
{
    return std::to_string(std::lround(value)) + " °C";
}

void byMaker(const Met &met, double fluidC, const UsualDuty &duty, Findings &found)
{
    const double highest = *met.part->ratings.highC;
    if (highest >= fluidC)
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::Pressure,
                     .about = met.part->number + " is made for " + celsius(highest) +
                              ", the fluid reaches " + celsius(fluidC),
                     .where = met.where,
                     .text = "A joint stands the heat that its tenderest piece stands; and no "
                             "maker gives full pressure at the highest temperature.",
                     .source = "the maker's limit, as entered; FAA AC 43.13-1B, table 9-3, for "
                               "pressure and heat together; the temperature: " +
                               std::string(duty.source),
                     .remedy = "Use a part for that temperature, or keep it from the heat.",
                     .mend = {}});
}

/// Seal and liner, what of a part softens first.
std::vector<std::string> softOf(const Part &part)
{
    std::vector<std::string> soft{part.seal};
    const auto *hose = part.as<HoseFacts>();
    if (hose != nullptr && hose->liner != part.seal)
        soft.push_back(hose->liner);
    return soft;
}

/// Of what the maker gives no limit for: parts by the class of their seal or liner.
void byClass(const BuildUnderCheck &build, double fluidC, const UsualDuty &duty, Findings &found)
{
    std::map<std::string, std::vector<std::string>> soft;
    for (const auto &line : build.expansion().lines) {
        if (line.part->ratings.highC)
            continue;
        for (const auto &material : softOf(*line.part)) {
            const auto heat = sealHeat(material);
            if (heat && heat->highC < fluidC)
                soft[material].push_back(line.part->number);
        }
    }
    for (const auto &[material, numbers] : soft) {
        const auto heat = sealHeat(material);
        found.push_back(
            {.severity = Severity::Caution,
             .matter = Matter::FluidAndMaterial,
             .about = material + " stands up to " + celsius(heat->highC) + ", the fluid reaches " +
                      celsius(fluidC) + ": " + listed(numbers),
             .where = {},
             .text = "Hotter than its class allows it hardens, and weeps when it is "
                     "cold again.",
             .source = std::string(heat->source) + "; the temperature: " + std::string(duty.source),
             .remedy = "Use the parts with another material, or ask their maker.",
             .mend = {}});
    }
}

} // namespace

void workingTemperatures(const BuildUnderCheck &build, Findings &found)
{
    const auto duty = usualDuty(build.isBrakes() ? "brakes" : build.expansion().system);
    if (!duty || !duty->temperatureC)
        return;
    for (const Met &met : partsMet(build.expansion(), Reach::All))
        if (met.part->ratings.highC)
            byMaker(met, *duty->temperatureC, *duty, found);
    byClass(build, *duty->temperatureC, *duty, found);
}

} // namespace flarestock::rules
