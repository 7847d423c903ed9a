// SPDX-License-Identifier: MIT
//
// Ratings: pieces that are rated for less than the system does, and pieces of which nobody says
// what they stand. The cause is the piece, whichever of its joints show it, so it is said once.

#include "model/checks/joint_parts.h"
#include "model/checks/joint_rating.h"
#include "model/checks/rules/rules.h"
#include "model/fluids/demand/usual_duty.h"

#include <algorithm>
#include <cmath>

namespace flarestock::rules {

namespace {

constexpr double CarburettorMostKpa = 15 * 6.894757293168361; // 15 psi

/// A part of the build, and where it was met first.
struct Met {
    const Part *part = nullptr;
    std::string where;
};

void meet(std::vector<Met> &all, const Part *part, const std::string &where)
{
    const bool counts = part != nullptr && part->kind != Kind::Tank && part->kind != Kind::Tool;
    const auto known = [part](const Met &met) { return met.part == part; };
    if (counts && std::none_of(all.begin(), all.end(), known))
        all.push_back({part, where});
}

/// Everything of the build under pressure (or all of it), each part once, in flow order.
std::vector<Met> partsUnder(const Expansion &expansion, bool pressureOnly)
{
    std::vector<Met> all;
    for (const auto &run : expansion.runs) {
        if (pressureOnly && run.run->level != Level::Pressure)
            continue;
        for (const auto &id : {run.from, run.to}) {
            const auto *station = expansion.station(id);
            meet(all, station == nullptr ? nullptr : station->part, id);
        }
        meet(all, run.line, run.id);
    }
    for (const auto &joint : expansion.joints) {
        if (pressureOnly && !isUnderPressure(joint, expansion))
            continue;
        for (const Part *part : partsOf(joint, expansion))
            meet(all, part, joint.id);
    }
    return all;
}

/// What the system works at, and who says so.
struct Working {
    double value = 0;
    std::string source;
};

std::optional<Working> workingKpa(const BuildUnderCheck &build)
{
    if (const auto asked = build.systemPressure())
        return Working{asked->si / 1000, "the template's demand"};
    const auto usual = usualDuty(build.isBrakes() ? "brakes" : build.expansion().system);
    if (!usual || !usual->pressureKpa)
        return std::nullopt;
    return Working{*usual->pressureKpa, std::string(usual->source)};
}

std::string kpa(double value)
{
    return std::to_string(std::lround(value)) + " kPa";
}

void ratedBelow(const Met &met, const Working &working, Findings &found)
{
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::Pressure,
                     .about = met.part->number + " is rated for " +
                              kpa(*met.part->ratings.pressureKpa) + ", the system runs at " +
                              kpa(working.value),
                     .where = met.where,
                     .text = "A joint stands what its weakest piece stands.",
                     .source = "SAE J517 scope: the lower of hose and connector; the rating is the "
                               "maker's, as entered; the pressure: " +
                               working.source,
                     .remedy = "Use a part that is rated for the pressure.",
                     .mend = {}});
}

/// A stop on brakes, part by part; else once for the build.
void unratedParts(const std::vector<Met> &unrated, const Working &working,
                  const BuildUnderCheck &build, Findings &found)
{
    Finding finding{.severity = Severity::Stop,
                    .matter = Matter::Pressure,
                    .about = {},
                    .where = {},
                    .text = "The system works at about " + kpa(working.value) + " (" +
                            working.source + "), and nobody says whether that is too much.",
                    .source = "the catalogue; SAE J517 scope for why every piece needs its figure",
                    .remedy = "Ask the maker, and enter his figure.",
                    .mend = {}};
    if (build.isBrakes()) {
        for (const Met &met : unrated) {
            finding.about = met.part->number + ": no working pressure is published, in the brakes";
            finding.where = met.where;
            found.push_back(finding);
        }
        return;
    }
    std::vector<std::string> numbers;
    for (const Met &met : unrated)
        numbers.push_back(met.part->number);
    finding.severity = working.value <= CarburettorMostKpa ? Severity::Note : Severity::Caution;
    finding.about = "No working pressure is published for " + listed(numbers);
    finding.where = unrated.size() == 1 ? unrated.front().where : std::string();
    found.push_back(std::move(finding));
}

} // namespace

void workingPressures(const BuildUnderCheck &build, Findings &found)
{
    const auto working = workingKpa(build);
    if (!working)
        return;
    std::vector<Met> unrated;
    for (const Met &met : partsUnder(build.expansion(), true)) {
        const auto rated = met.part->ratings.pressureKpa;
        if (rated && *rated < working->value)
            ratedBelow(met, *working, found);
        if (!rated && holdsPressure(met.part->kind))
            unrated.push_back(met);
    }
    if (!unrated.empty())
        unratedParts(unrated, *working, build, found);
}

void workingTemperatures(const BuildUnderCheck &build, Findings &found)
{
    const auto usual = usualDuty(build.isBrakes() ? "brakes" : build.expansion().system);
    if (!usual || !usual->temperatureC)
        return;
    for (const Met &met : partsUnder(build.expansion(), false)) {
        const auto highest = met.part->ratings.highC;
        if (!highest || *highest >= *usual->temperatureC)
            continue;
        found.push_back({.severity = Severity::Caution,
                         .matter = Matter::Pressure,
                         .about = met.part->number + " is made for " +
                                  std::to_string(std::lround(*highest)) +
                                  " °C, the fluid reaches " +
                                  std::to_string(std::lround(*usual->temperatureC)) + " °C",
                         .where = met.where,
                         .text = "A joint stands the heat that its tenderest piece stands; and no "
                                 "maker gives full pressure at the highest temperature.",
                         .source = "the maker's limit, as entered; FAA AC 43.13-1B, table 9-3, for "
                                   "pressure and heat together; the temperature: " +
                                   std::string(usual->source),
                         .remedy = "Use a part for that temperature, or keep it from the heat.",
                         .mend = {}});
    }
}

} // namespace flarestock::rules
