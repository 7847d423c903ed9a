// SPDX-License-Identifier: MIT
//
// Losses: what a clean filter takes of the pressure at the flow that runs through it, by its
// maker's rated point. Before a pump it comes off the inlet, where warm fuel boils; where that is
// told of the pump, or a line of which the filter is a part is told to take too much, it is said
// there.

#include "model/checks/rules/filters/swapped_filters.h"
#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"
#include "model/fluids/filter/clean_loss.h"
#include "model/fluids/liquid.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr double LitrePerHour = 1.0 / 3.6e6; // m³/s, exact.

/// What runs through it where the flow of the build is worked out, else what is wanted of it;
/// nothing where neither is known. m³/s.
std::optional<double> flowThrough(const BuildUnderCheck &build, const PlacedStation &station)
{
    for (const auto &run : build.flow().runs)
        if (build.expansion().run(run.run)->to == station.id && run.flowM3S > 0)
            return run.flowM3S;
    const auto wanted = build.wanted(station, station.station->demand.flow);
    if (!wanted || wanted->dimension != Dimension::VolumeFlow)
        return std::nullopt;
    return wanted->si;
}

/// At that flow; nothing where the maker does not say, or it is beyond his figure (which flows()
/// and flowDoubts() say).
std::optional<double> lossPa(const FilterFacts &filter, double flowM3S, Fluid fluid)
{
    if (!filter.cleanLossKpa || !filter.flowLh)
        return std::nullopt;
    CleanLoss loss;
    loss.points = {{*filter.flowLh * LitrePerHour, *filter.cleanLossKpa * 1000}};
    const auto at = cleanLossAt(loss, flowM3S, liquidAt20C(fluid).viscosityPaS);
    return at ? std::optional(at->pascal) : std::nullopt;
}

bool never(const PlacedStation &)
{
    return false;
}

/// Whether more is told of a pump behind it: that it is starved, or its fuel near boiling.
bool isToldOfPump(const BuildUnderCheck &build, const PlacedStation &filter)
{
    const auto behind = build.after(filter, never);
    return std::any_of(behind.begin(), behind.end(), [&](const PlacedStation *station) {
        return isStarvedByFilter(build, *station) || isInletFound(build, station->id);
    });
}

struct Loss {
    double flowM3S = 0;
    double pascal = 0;
};

void tooMuch(const BuildUnderCheck &build, const PlacedStation &station, const Loss &loss,
             Findings &found)
{
    const bool suction = station.station->level == Level::Suction;
    const auto &budget = cleanLossBudget(suction ? FilterPlace::Suction : FilterPlace::Pressure);
    if (loss.pascal <= budget.pascal || isSwapped(build, station) ||
        (suction ? isToldOfPump(build, station) : isLineFound(build, station.id)))
        return;
    found.push_back(
        {.severity = Severity::Caution,
         .matter = Matter::DirectionAndFilters,
         .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) + ": takes " +
                  kilopascals(loss.pascal) + " clean at " + litresPerHour(loss.flowM3S),
         .where = station.id,
         .text = "Up to " + kilopascals(budget.pascal) + " is usual " +
                 (suction ? "before a pump" : "behind one") + ", and dirt comes on top of it.",
         .source = "the maker's loss at his rated flow, straight through it; " +
                   std::string(budget.source),
         .remedy = "Use a filter with more area.",
         .mend = {}});
}

} // namespace

void filterLosses(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid || !isFuel(*fluid))
        return;
    for (const auto &station : build.expansion().stations) {
        const auto *filter = station.part ? station.part->as<FilterFacts>() : nullptr;
        const auto flow = filter ? flowThrough(build, station) : std::nullopt;
        const auto loss = flow ? lossPa(*filter, *flow, *fluid) : std::nullopt;
        if (loss)
            tooMuch(build, station, {*flow, *loss}, found);
    }
}

} // namespace flarestock::rules
