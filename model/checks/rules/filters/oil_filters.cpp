// SPDX-License-Identifier: MIT
//
// Oil filters: a bypass where the engine would starve without one, none where dirt would go round
// the element, and what its beta says of the oil.

#include "model/checks/rules/rules.h"
#include "model/fluids/filter/beta.h"
#include "model/fluids/filter/cleanliness.h"

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

/// What the template's question `cleanliness` was answered with; nothing where that is no code.
std::optional<CleanlinessCode> wantedCleanliness(const BuildUnderCheck &build)
{
    const auto &answers = build.expansion().answers;
    const auto answer = answers.find("cleanliness");
    if (answer == answers.end())
        return std::nullopt;
    const auto code = CleanlinessCode::parse(answer->second);
    return code ? std::optional(*code) : std::nullopt;
}

/// The counted sizes of which a beta at that size says nothing: "4, 6 and 14 µm".
std::string unsaidSizes(const Decimal &micron)
{
    std::vector<std::string> sizes;
    for (const int size : {4, 6, 14})
        if (Decimal(size) < micron)
            sizes.push_back(std::to_string(size));
    return sizes.empty() ? std::string() : listed(sizes) + " µm";
}

/// "It holds back 95.0 % …", with what the beta leaves open.
std::string betaText(const MicronRating &rating, double efficiency)
{
    const auto tenths = std::lround(efficiency * 1000);
    const auto beta = rating.beta->text();
    std::string said = "Beta " + beta + ": 1 in " + beta + " gets through, and " +
                       std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) +
                       " % is held back.";
    if (const auto sizes = unsaidSizes(rating.micron); !sizes.empty())
        said += " Of " + sizes + ", by which the cleanliness of oil is said, it says nothing.";
    if (*rating.beta < Decimal(75) || rating.micron > Decimal(25))
        said += " The standard measures beta 75 and more at 25 µm or less, so ask how it was "
                "measured.";
    return said;
}

/// What the beta says, and whether it says anything of the cleanliness that is wanted.
void beta(const BuildUnderCheck &build, const PlacedStation &station, const FilterFacts &filter,
          Findings &found)
{
    const bool basisAsked = build.expansion().filters != FilterRule::None;
    if (!filter.rating || (filter.rating->basis == RatingBasis::Unstated && basisAsked))
        return; // Said by unratedOil(), or with its basis by unprotected().
    const MicronRating &rating = *filter.rating;
    const auto wanted = wantedCleanliness(build);
    if (!rating.beta && !wanted && rating.micron >= Decimal(StrainerFromMicron))
        return; // Nobody measures the beta of a strainer.
    const auto efficiency =
        rating.beta ? efficiencyOfBeta(rating.beta->approximate()) : Result<double>(0);
    const bool said = rating.beta && efficiency;
    const std::string micron = rating.micron.text() + " µm";
    auto finding = about(station, said ? "beta " + rating.beta->text() + " at " + micron
                                       : micron + " without a beta");
    finding.severity = Severity::Note;
    finding.source = "ISO 16889 (its scope: beta 75 and more at 25 µm(c) or less); ISO 4406 counts "
                     "at 4, 6 and 14 µm(c)";
    finding.text = said ? betaText(rating, *efficiency)
                        : "How much of the dirt it holds back is not said, and its number compares "
                          "with no other.";
    finding.remedy = said ? "To know how clean the oil is, have a sample counted: three numbers of "
                            "ISO 4406, such as 17/14/10."
                          : "Ask its maker for the beta at that size.";
    if (wanted && (!said || !unsaidSizes(rating.micron).empty())) {
        finding.severity = Severity::Caution;
        finding.about += ", and oil of " + wanted->text() + " is wanted";
        finding.remedy = "Use an element whose beta is published at 4 to 14 µm, and have a sample "
                         "of the oil counted.";
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
        beta(build, station, *filter, found);
    }
}

} // namespace flarestock::rules
