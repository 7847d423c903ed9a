// SPDX-License-Identifier: MIT
//
// Elements: whether the spare is what its filter is sold with, whether it may be washed, and how
// long each lasts.

#include "model/checks/rules/rules.h"
#include "model/exact/case_fold.h"
#include "model/fluids/attack/medium.h"
#include "model/parts/fluid_allowed.h"

#include <algorithm>
#include <map>

namespace flarestock::rules {

namespace {

bool isOnBill(const BuildUnderCheck &build, const Part &part)
{
    const auto &lines = build.expansion().lines;
    return std::any_of(lines.begin(), lines.end(),
                       [&part](const BillLine &line) { return line.part == &part; });
}

/// Two bases differ only where both are said.
bool differs(const MicronRating &filter, const MicronRating &element)
{
    const bool saidBoth =
        filter.basis != RatingBasis::Unstated && element.basis != RatingBasis::Unstated;
    return filter.micron != element.micron || (saidBoth && filter.basis != element.basis);
}

bool differs(const FilterFacts &filter, const ElementFacts &element)
{
    return (filter.rating && differs(*filter.rating, element.rating)) ||
           (!filter.medium.empty() && !element.medium.empty() &&
            !sameFolded(filter.medium, element.medium));
}

/// What the fluid ruins is told as that, and is to be changed anyhow.
template <class Filtering>
bool isRuined(const BuildUnderCheck &build, const Filtering &facts)
{
    const auto fluid = build.expansion().fluid;
    return fluid && mediumIn(*fluid, facts.medium).bears == Bears::Never;
}

void notItsOwn(const BuildUnderCheck &build, const PlacedStation &station, const Part &part,
               Findings &found)
{
    const auto &filter = *station.part->as<FilterFacts>();
    const auto &element = *part.as<ElementFacts>();
    if (!differs(filter, element) || isRuined(build, filter) || isRuined(build, element))
        return;
    const std::string sold = filter.rating ? filter.rating->text() + " " : std::string();
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                              ": its element " + part.number + " is another than it is sold with",
                     .where = station.id,
                     .text = "It is sold with " + sold + filter.medium + "; the element is " +
                             element.rating.text() + " " + element.medium +
                             ". After the first change it filters otherwise.",
                     .source = "the two entries of the catalogue",
                     .remedy = "Correct the entry that is wrong, or name another element.",
                     .mend = {}});
}

/// An element that comes with its filter and stands on no line of the bill, where nothing is said
/// of its filter (fluidAndMaterial()).
void notForTheFluid(const BuildUnderCheck &build, const PlacedStation &station, const Part &part,
                    Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid || isOnBill(build, part) || allowsFluid(part, fluid) ||
        !allowsFluid(*station.part, fluid))
        return;
    const auto &medium = part.as<ElementFacts>()->medium;
    const auto stands = mediumIn(*fluid, medium);
    const bool ruined = stands.bears == Bears::Never;
    const std::string in(text(*fluid));
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::FluidAndMaterial,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                              ": its element " + part.number +
                              (ruined ? ", " + medium + ", is ruined by " : " is not made for ") +
                              in,
                     .where = station.id,
                     .text = ruined ? "It swells and comes apart, and its shreds go down the line."
                                    : "The housing is, the element in it is not.",
                     .source = ruined ? std::string(stands.source)
                                      : "the maker's list of fluids, as entered in the catalogue",
                     .remedy = "Use an element that is made for it.",
                     .mend = {}});
}

void washed(const PlacedStation &station, const Part &part, Findings &found)
{
    const auto &element = *part.as<ElementFacts>();
    const auto care = careOf(element.medium);
    if (!element.washable || care.washed || care.said.empty())
        return;
    found.push_back(
        {.severity = Severity::Caution,
         .matter = Matter::DirectionAndFilters,
         .about = part.number + ": entered as washable, of " + element.medium,
         .where = station.id,
         .text = BuildUnderCheck::capital(element.medium) + " is " + std::string(care.said) + ".",
         .source = std::string(care.source),
         .remedy = "Replace it, and correct the entry.",
         .mend = {}});
}

void addOnce(std::vector<std::string> &titles, const std::string &title)
{
    if (std::find(titles.begin(), titles.end(), title) == titles.end())
        titles.push_back(title);
}

/// How long each lasts, once for the build.
void life(const std::map<std::string, std::vector<std::string>, std::less<>> &byMedium,
          Findings &found)
{
    std::string said;
    for (const auto &[medium, titles] : byMedium) {
        const auto care = careOf(medium);
        if (!care.said.empty())
            said += BuildUnderCheck::capital(listed(titles)) + " (" + medium +
                    "): " + std::string(care.said) + ". ";
    }
    if (said.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::DirectionAndFilters,
                     .about = "How long the elements last",
                     .where = {},
                     .text = said + "Look at each after the first run and after a new tank, foam "
                                    "or hose, then at each event.",
                     .source = "common practice, no source",
                     .remedy = "Write down when each was changed, and take spares along.",
                     .mend = {}});
}

} // namespace

void elements(const BuildUnderCheck &build, Findings &found)
{
    std::map<std::string, std::vector<std::string>, std::less<>> byMedium;
    for (const auto &station : build.expansion().stations) {
        const auto *filter = station.part ? station.part->as<FilterFacts>() : nullptr;
        if (filter == nullptr)
            continue;
        if (!filter->medium.empty())
            addOnce(byMedium[folded(filter->medium)], station.station->title);
        const auto *part =
            filter->element.empty() ? nullptr : build.catalogue().find(filter->element);
        if (part == nullptr || part->as<ElementFacts>() == nullptr)
            continue;
        notItsOwn(build, station, *part, found);
        notForTheFluid(build, station, *part, found);
        washed(station, *part, found);
    }
    life(byMedium, found);
}

} // namespace flarestock::rules
