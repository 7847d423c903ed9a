// SPDX-License-Identifier: MIT
//
// The filters that an electric fuel pump must have: one before it, or a sock in the tank, and one
// after it, always; the coarser before, the finer after. Not for gravity feed, brakes or coolant:
// their templates do not ask for it (FilterRule).

#include "model/checks/rules/filters/swapped_filters.h"
#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr auto Practice = "common practice, no source: one filter before an electric fuel pump and "
                          "one after it";

Finding lacking(const PlacedStation &pump, const std::string &about, std::string text,
                std::string remedy)
{
    return {.severity = Severity::Stop,
            .matter = Matter::DirectionAndFilters,
            .about = BuildUnderCheck::capital(BuildUnderCheck::named(pump)) + ": " + about,
            .where = pump.id,
            .text = std::move(text),
            .source = Practice,
            .remedy = std::move(remedy),
            .mend = {}};
}

void starved(const PlacedStation &pump, const DirtStop &before, Findings &found)
{
    if (!before.rating || before.rating->micron >= Decimal(StarvesBelowMicron))
        return;
    const bool far = before.rating->micron < Decimal(40);
    auto finding = lacking(
        pump,
        before.rating->text() + " before it " +
            (far ? "starves it" : "is finer than its suction side likes"),
        "A pump pushes well and draws badly: a fine element before it drops the inlet pressure, "
        "and warm fuel boils there. 100 µm is usual before a pump, 75 to 150 accepted.",
        "Put the fine element after the pump and a coarse one before it.");
    finding.severity = far ? Severity::Stop : Severity::Caution;
    finding.where = before.station->id;
    finding.source =
        "common practice, no source: 100 µm before the pump, 40 µm only inside some tanks";
    found.push_back(std::move(finding));
}

void tooCoarse(const DirtStop &before, Findings &found)
{
    if (before.sock || !before.rating || before.rating->micron <= Decimal(150))
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(*before.station)) +
                              ": " + before.rating->text() + " lets much through to the pump",
                     .where = before.station->id,
                     .text = "75 to 150 µm is what pumps are commonly given.",
                     .source = "common practice, no source: 75 to 150 µm before the pump",
                     .remedy = "Use a finer pre-filter.",
                     .mend = {}});
}

/// Each filter in the other's place: one cause, which says what follows of it.
void swapped(const FilterPair &pair, Findings &found)
{
    found.push_back(
        {.severity = Severity::Stop,
         .matter = Matter::DirectionAndFilters,
         .about = BuildUnderCheck::capital(pair.before.station->station->title) + " " +
                  pair.before.rating->text() + " and " + pair.after.station->station->title + " " +
                  pair.after.rating->text() + " stand the wrong way round",
         .where = pair.before.station->id,
         .text = "The coarser belongs before the pump and the finer after it: the fine one starves "
                 "the pump, and the coarse one keeps little from what comes after it.",
         .source = "common practice, no source: 100 µm before the pump, the fine filter after it",
         .remedy = "Change the two elements over.",
         .mend = {}});
}

/// Whether filterGrades() says of it that it is too coarse for what follows.
bool isGradeFound(const BuildUnderCheck &build, const DirtStop &filter)
{
    Findings grades;
    filterGrades(build, grades);
    return std::any_of(grades.begin(), grades.end(), [&filter](const Finding &finding) {
        return finding.where == filter.station->id;
    });
}

/// Of two of which neither is told by itself.
void coarseBeforeFine(const BuildUnderCheck &build, const DirtStop &before, const DirtStop &after,
                      Findings &found)
{
    if (!before.rating || !after.rating || before.rating->micron > after.rating->micron ||
        before.rating->micron < Decimal(StarvesBelowMicron) || isGradeFound(build, after))
        return;
    const bool equal = before.rating->micron == after.rating->micron;
    const bool sameBasis = before.rating->basis == after.rating->basis;
    found.push_back(
        {.severity = equal || !sameBasis ? Severity::Caution : Severity::Stop,
         .matter = Matter::DirectionAndFilters,
         .about = BuildUnderCheck::capital(before.station->station->title) + " " +
                  before.rating->text() + " and " + after.station->station->title + " " +
                  after.rating->text() +
                  (equal ? " are equally fine" : " stand the wrong way round"),
         .where = before.station->id,
         .text = std::string("The coarser belongs before the pump and the finer after it.") +
                 (sameBasis ? ""
                            : " Their ratings stand on different bases, so the numbers alone "
                              "do not decide."),
         .source = "common practice, no source; ISO 16889 for why two bases do not compare",
         .remedy = equal ? "Use a finer element after the pump." : "Change the two elements over.",
         .mend = {}});
}

void neitherOpens(const PlacedStation &pump, const DirtStop &before, Findings &found)
{
    const auto *filter = before.station->part->as<FilterFacts>();
    const auto *facts = pump.part->as<PumpFacts>();
    if (filter == nullptr || filter->serviceable || facts->serviceable)
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(*before.station)) +
                              " cannot be opened, nor can the pump after it",
                     .where = before.station->id,
                     .text = "Once dirt is in, neither can be cleaned in place: both are replaced.",
                     .source = "the makers' data; common practice, no source",
                     .remedy = "Use a pre-filter whose element can be taken out.",
                     .mend = {}});
}

void aroundPump(const BuildUnderCheck &build, const PlacedStation &pump, Findings &found)
{
    const auto before = stopsBefore(build, pump);
    const auto after = stopsAfter(build, pump);
    if (before.empty())
        found.push_back(
            lacking(pump, "nothing filters what it draws",
                    "A chip or a shred of tank foam jams an electric pump, and it burns "
                    "out.",
                    "Put a coarse filter, about 100 µm, before it, or a sock in the "
                    "tank."));
    if (after.empty())
        found.push_back(lacking(pump, "nothing filters what it delivers",
                                "A pump sheds wear of its own; what comes after it meets that "
                                "unfiltered.",
                                "Put a fine filter after it: 10 µm for injection, 40 µm for a "
                                "carburettor."));
    if (before.empty())
        return;
    if (const auto pair = swappedAround(build, pump)) {
        swapped(*pair, found);
    } else {
        const auto &finest = finestOf(before);
        starved(pump, finest, found);
        tooCoarse(finest, found);
        if (!after.empty())
            coarseBeforeFine(build, before.front(), after.front(), found);
    }
    neitherOpens(pump, before.front(), found);
}

} // namespace

void pumpFilters(const BuildUnderCheck &build, Findings &found)
{
    const auto rule = build.expansion().filters;
    for (const auto &station : build.expansion().stations) {
        const auto *pump = station.part != nullptr ? station.part->as<PumpFacts>() : nullptr;
        if (pump == nullptr)
            continue;
        if (rule == FilterRule::AroundElectricPump && pump->electric)
            aroundPump(build, station, found);
        if (rule == FilterRule::AfterPump && stopsAfter(build, station).empty())
            found.push_back(lacking(station, "nothing filters what it delivers",
                                    "The template asks for a filter after the pump.",
                                    "Put a filter after it."));
    }
}

} // namespace flarestock::rules
