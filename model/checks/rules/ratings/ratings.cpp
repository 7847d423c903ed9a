// SPDX-License-Identifier: MIT
//
// Ratings: pieces that are rated for less than the system does, and pieces of which nobody says
// what they stand. The cause is the piece, whichever of its joints show it, so it is said once.

#include "model/checks/joint_rating.h"
#include "model/checks/parts_met.h"
#include "model/checks/rules/rules.h"
#include "model/fluids/demand/usual_duty.h"

#include <algorithm>
#include <cmath>

namespace flarestock::rules {

namespace {

constexpr double CarburettorMostKpa = 15 * 6.894757293168361; // 15 psi

/// What the system works at, and who says so.
struct Working {
    double value = 0;
    std::string source;
};

std::optional<Working> workingKpa(const BuildUnderCheck &build)
{
    if (const auto asked = build.systemPressure()) {
        const double boost = conditionsOf(build.expansion()).boostPa;
        return Working{(asked->si + boost) / 1000,
                       boost > 0 ? "the template's demand, with boost" : "the template's demand"};
    }
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
    numbers.reserve(unrated.size());
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
    for (const Met &met : partsMet(build.expansion(), Reach::UnderPressure)) {
        const auto rated = met.part->ratings.pressureKpa;
        if (rated && *rated < working->value)
            ratedBelow(met, *working, found);
        if (!rated && holdsPressure(met.part->kind))
            unrated.push_back(met);
    }
    if (!unrated.empty())
        unratedParts(unrated, *working, build, found);
}

} // namespace flarestock::rules
