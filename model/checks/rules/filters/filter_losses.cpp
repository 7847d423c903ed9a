// SPDX-License-Identifier: MIT
//
// Losses: what a clean filter takes of the pressure at the flow that is wanted of it, by its
// maker's rated point. Before a pump it comes off the inlet, where warm fuel boils.

#include "model/checks/rules/rules.h"
#include "model/fluids/filter/clean_loss.h"
#include "model/fluids/liquid.h"

#include <array>
#include <charconv>

namespace flarestock::rules {

namespace {

constexpr double LitresPerHour = 1.0 / 3.6e6; // m³/s, exact.

std::string kpa(double pascal)
{
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), pascal / 1000,
                                   std::chars_format::fixed, 1);
    return std::string(digits.data(), end.ptr) + " kPa";
}

/// At the flow that is wanted; nothing where the maker does not say, or it is beyond his figure
/// (which flows() says).
std::optional<double> lossPa(const FilterFacts &filter, double flowM3S, Fluid fluid)
{
    if (!filter.cleanLossKpa || !filter.flowLh)
        return std::nullopt;
    CleanLoss loss;
    loss.points = {{*filter.flowLh * LitresPerHour, *filter.cleanLossKpa * 1000}};
    const auto at = cleanLossAt(loss, flowM3S, liquidAt20C(fluid).viscosityPaS);
    return at ? std::optional(at->pascal) : std::nullopt;
}

} // namespace

void filterLosses(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid || !isFuel(*fluid))
        return;
    for (const auto &station : build.expansion().stations) {
        const auto *filter = station.part ? station.part->as<FilterFacts>() : nullptr;
        const auto wanted = build.wanted(station, station.station->demand.flow);
        if (filter == nullptr || !wanted || wanted->dimension != Dimension::VolumeFlow)
            continue;
        const bool suction = station.station->level == Level::Suction;
        const auto loss = lossPa(*filter, wanted->si, *fluid);
        const auto &budget =
            cleanLossBudget(suction ? FilterPlace::Suction : FilterPlace::Pressure);
        if (!loss || *loss <= budget.pascal)
            continue;
        found.push_back({.severity = Severity::Caution,
                         .matter = Matter::DirectionAndFilters,
                         .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                                  ": takes " + kpa(*loss) + " clean at " + wanted->typed,
                         .where = station.id,
                         .text = "Up to " + kpa(budget.pascal) + " is usual " +
                                 (suction ? "before a pump" : "behind one") +
                                 ", and dirt comes on top of it.",
                         .source = "the maker's loss at his rated flow, straight through it; " +
                                   std::string(budget.source),
                         .remedy = "Use a filter with more area.",
                         .mend = {}});
    }
}

} // namespace flarestock::rules
