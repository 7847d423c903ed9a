// SPDX-License-Identifier: MIT

#include "model/checks/flow/delivery_plan.h"

#include <algorithm>

namespace flarestock {

namespace {

DeliveryEnd endOf(const PlacedStation &station)
{
    const Kind kind = station.station->demand.kind;
    if (kind == Kind::Tank)
        return DeliveryEnd::Vessel;
    if (kind != Kind::Regulator)
        return DeliveryEnd::User;
    return isBypass(station) ? DeliveryEnd::Bypass : DeliveryEnd::DeadHead;
}

/// Where some of the paths lead to a bypass regulator, all that flows at idle goes there: the
/// others are taken out and given back.
std::vector<FlowPath> takeBesides(std::vector<FlowPath> &paths)
{
    const auto isSurplus = [](const FlowPath &path) {
        return endOf(*path.end) == DeliveryEnd::Bypass;
    };
    std::vector<FlowPath> besides;
    if (std::any_of(paths.begin(), paths.end(), isSurplus)) {
        const auto first = std::stable_partition(paths.begin(), paths.end(), isSurplus);
        besides.assign(first, paths.end());
        paths.erase(first, paths.end());
    }
    for (auto *some : {&paths, &besides}) {
        double all = 0;
        for (const auto &path : *some)
            all += path.share;
        for (auto &path : *some)
            path.share /= all;
    }
    return besides;
}

void keepOwnRuns(FlowPath &path, const std::vector<FlowPath> &others)
{
    std::erase_if(path.runs, [&](const PlacedRun *run) {
        return std::any_of(others.begin(), others.end(), [run](const FlowPath &other) {
            return std::find(other.runs.begin(), other.runs.end(), run) != other.runs.end();
        });
    });
}

DeliveryPlan &planTo(const Expansion &expansion, const PlacedStation &to,
                     std::vector<DeliveryPlan> &plans)
{
    const auto there = std::find_if(plans.begin(), plans.end(),
                                    [&to](const DeliveryPlan &plan) { return plan.to == &to; });
    if (there != plans.end())
        return *there;
    DeliveryPlan plan;
    plan.to = &to;
    plan.end = endOf(to);
    if (to.station->demand.kind == Kind::Regulator)
        plan.bowls = flowPaths(expansion, to, Course::Pushed);
    if (plan.end == DeliveryEnd::Bypass || plan.end == DeliveryEnd::Vessel)
        plan.back = flowPaths(expansion, to, Course::Returned);
    plans.push_back(std::move(plan));
    return plans.back();
}

} // namespace

std::vector<DeliveryPlan> deliveryPlans(const Expansion &expansion)
{
    std::vector<DeliveryPlan> plans;
    for (const auto &station : expansion.stations) {
        if (station.station->demand.kind != Kind::Pump || station.part == nullptr)
            continue;
        DeliveryPlan::Pump pump{&station, flowPaths(expansion, station, Course::Drawn),
                                flowPaths(expansion, station, Course::Pushed)};
        if (pump.pushed.empty())
            continue;
        auto besides = takeBesides(pump.pushed);
        auto &plan = planTo(expansion, *pump.pushed.front().end, plans);
        if (plan.pumps.empty()) {
            for (auto &path : besides) {
                keepOwnRuns(path, pump.pushed);
                plan.bowls.push_back(std::move(path));
            }
        }
        plan.pumps.push_back(std::move(pump));
    }
    std::erase_if(plans, [](const DeliveryPlan &plan) { return plan.to->part == nullptr; });
    return plans;
}

std::vector<const FlowPath *> pathsOf(const std::vector<DeliveryPlan> &plans)
{
    std::vector<const FlowPath *> all;
    const auto add = [&all](const std::vector<FlowPath> &paths) {
        for (const auto &path : paths)
            all.push_back(&path);
    };
    for (const auto &plan : plans) {
        for (const auto &pump : plan.pumps) {
            add(pump.drawn);
            add(pump.pushed);
        }
        add(plan.bowls);
        add(plan.back);
    }
    return all;
}

std::optional<double> wideOpenPa(const PlacedStation &regulator, double flowM3S)
{
    const auto *facts = regulator.part == nullptr ? nullptr : regulator.part->as<RegulatorFacts>();
    if (facts == nullptr || !facts->bypass || !facts->wideOpenKpa || !facts->flowLh)
        return {};
    const double part = flowM3S / (*facts->flowLh / 3.6e6);
    return *facts->wideOpenKpa * 1e3 * part * part;
}

std::optional<double> demanded(const PlacedStation &station, const Varying &demand,
                               Dimension dimension)
{
    const auto text = demand.with(station.answers);
    if (!text)
        return {};
    const auto measure = Measure::parse(*text, dimension);
    return measure ? std::optional(measure->si) : std::nullopt;
}

} // namespace flarestock
