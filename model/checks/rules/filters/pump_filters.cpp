// SPDX-License-Identifier: MIT
//
// The filters that an electric fuel pump must have: one before it, or a sock in the tank, and one
// after it, always; the coarser before, the finer after. Not for gravity feed, brakes or coolant:
// their templates do not ask for it (FilterRule).

#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr auto Practice = "common practice, no source: one filter before an electric fuel pump and "
                          "one after it";

bool never(const PlacedStation &)
{
    return false;
}

/// Stops of dirt among stations, in the order of the walk.
std::vector<DirtStop> stopsIn(const BuildUnderCheck::Stations &stations)
{
    std::vector<DirtStop> stops;
    for (const auto *station : stations) {
        if (const auto stop = dirtStop(*station))
            stops.push_back(*stop);
    }
    return stops;
}

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
    if (!before.rating || before.rating->micron >= Decimal(75))
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

void coarseBeforeFine(const DirtStop &before, const DirtStop &after, Findings &found)
{
    if (!before.rating || !after.rating || before.rating->micron > after.rating->micron)
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
         .remedy = "Change the two elements over.",
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
    auto before = stopsIn(build.before(pump, never));
    if (const auto own = dirtStop(pump)) // A pump in the tank may carry its own sock.
        before.insert(before.begin(), *own);
    const auto after = stopsIn(build.after(pump, never));
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
    const auto finest =
        std::min_element(before.begin(), before.end(), [](const DirtStop &a, const DirtStop &b) {
            return a.rating && (!b.rating || a.rating->micron < b.rating->micron);
        });
    starved(pump, *finest, found);
    tooCoarse(*finest, found);
    neitherOpens(pump, before.front(), found);
    if (!after.empty())
        coarseBeforeFine(before.front(), after.front(), found);
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
        if (rule == FilterRule::AfterPump && stopsIn(build.after(station, never)).empty())
            found.push_back(lacking(station, "nothing filters what it delivers",
                                    "The template asks for a filter after the pump.",
                                    "Put a filter after it."));
    }
}

} // namespace flarestock::rules
