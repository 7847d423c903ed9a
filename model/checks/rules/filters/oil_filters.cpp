// SPDX-License-Identifier: MIT
//
// Oil filters: a bypass where the engine would starve without one, none where dirt would go round
// the element, and what its beta says of the oil.

#include "model/checks/rules/rules.h"
#include "model/fluids/filter/beta.h"

#include <cmath>

namespace flarestock::rules {

namespace {

constexpr int StrainerFromMicron = 74; // 200 mesh: coarser is a strainer.

std::string title(const PlacedStation &station)
{
    return BuildUnderCheck::capital(BuildUnderCheck::named(station));
}

Finding about(const PlacedStation &station, std::string what)
{
    return {.severity = Severity::Caution,
            .matter = Matter::DirectionAndFilters,
            .about = title(station) + ": " + std::move(what),
            .where = station.id,
            .text = {},
            .source = {},
            .remedy = {},
            .mend = {}};
}

void noBypass(const PlacedStation &station, const FilterFacts &filter, Findings &found)
{
    const bool fine = filter.rating && filter.rating->micron < Decimal(StrainerFromMicron);
    if (filter.bypassKpa || !fine)
        return;
    auto finding = about(station, "has no bypass");
    finding.text = "Cold oil or a full element then holds the oil back, and the bearings run dry "
                   "or the element tears.";
    finding.source = "common practice, no source; finer than 200 mesh (74 µm) is a filter, coarser "
                     "a strainer (handbooks of hydraulics)";
    finding.remedy = "Use a filter head with a bypass; engines commonly have 8 to 30 psid.";
    found.push_back(std::move(finding));
}

void opensAtOnce(const PlacedStation &station, const FilterFacts &filter, Findings &found)
{
    if (!filter.bypassKpa || !filter.cleanLossKpa || *filter.bypassKpa > *filter.cleanLossKpa)
        return;
    auto finding = about(station, "its bypass opens while it is clean");
    finding.text = "It opens at " + std::to_string(std::lround(*filter.bypassKpa)) +
                   " kPa, and the clean element takes " +
                   std::to_string(std::lround(*filter.cleanLossKpa)) + " kPa at its rated flow.";
    finding.source = "the maker's figures, as entered in the catalogue";
    finding.remedy = "Use a larger element, or a bypass that opens later.";
    found.push_back(std::move(finding));
}

/// What the beta says, and of which sizes it says nothing.
void beta(const PlacedStation &station, const FilterFacts &filter, Findings &found)
{
    if (!filter.rating)
        return; // Said by unratedOil().
    auto finding = about(station, {});
    finding.severity = Severity::Note;
    finding.source = "ISO 16889 (its scope: beta 75 and more at 25 µm(c) or less); ISO 4406 counts "
                     "at 4, 6 and 14 µm(c)";
    const std::string micron = filter.rating->micron.text() + " µm";
    const auto efficiency = filter.rating->beta
                                ? efficiencyOfBeta(filter.rating->beta->approximate())
                                : Result<double>(0);
    if (!filter.rating->beta || !efficiency) {
        finding.about = title(station) + ": " + micron + " without a beta";
        finding.text = "How much of the dirt it holds back is not said, and its number compares "
                       "with no other.";
        finding.remedy = "Ask its maker for the beta at that size.";
    } else {
        const auto tenths = std::lround(*efficiency * 1000);
        finding.about = title(station) + ": holds back " + std::to_string(tenths / 10) + "." +
                        std::to_string(tenths % 10) + " % of what is " + micron + " and larger";
        finding.text = "Beta " + filter.rating->beta->text() + " is 1 in " +
                       filter.rating->beta->text() +
                       " that gets through. Of 4, 6 and 14 µm, by "
                       "which the cleanliness of oil is said, it says nothing.";
        finding.remedy = "To know how clean the oil is, have a sample counted: three numbers of "
                         "ISO 4406, such as 17/14/10.";
    }
    found.push_back(std::move(finding));
}

void unratedOil(const PlacedStation &station, const FilterFacts &filter, Findings &found)
{
    if (filter.rating)
        return;
    auto finding = about(station, "its rating is not known");
    finding.text = "Without a rating nobody can say what it keeps back.";
    finding.source = "the catalogue";
    finding.remedy = "Enter the maker's rating with its beta.";
    found.push_back(std::move(finding));
}

void fuelBypass(const PlacedStation &station, const FilterFacts &filter, Findings &found)
{
    if (!filter.bypassKpa)
        return;
    auto finding = about(station, "has a bypass, in fuel");
    finding.text = "Once it opens, everything the filter holds back goes to the injectors or jets.";
    finding.source = "common practice, no source: fuel filters have no bypass";
    finding.remedy = "Use a fuel filter without one, and change its element in time.";
    found.push_back(std::move(finding));
}

} // namespace

void oilFilters(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid)
        return;
    const bool oil = *fluid == Fluid::EngineOil || *fluid == Fluid::GearOil;
    for (const auto &station : build.expansion().stations) {
        const auto *filter = station.part ? station.part->as<FilterFacts>() : nullptr;
        if (filter == nullptr)
            continue;
        if (isFuel(*fluid))
            fuelBypass(station, *filter, found);
        if (!oil)
            continue;
        if (station.station->level == Level::Pressure)
            noBypass(station, *filter, found);
        opensAtOnce(station, *filter, found);
        unratedOil(station, *filter, found);
        beta(station, *filter, found);
    }
}

} // namespace flarestock::rules
