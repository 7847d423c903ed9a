// SPDX-License-Identifier: MIT

#include "model/checks/flow/gravity_work.h"

#include "model/fluids/crossing.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isUser(const PlacedStation &station)
{
    const Kind kind = station.station->demand.kind;
    return station.part != nullptr && (kind == Kind::Carburettor || kind == Kind::Rail);
}

bool isFromTank(const Expansion &expansion, const FlowPath &path)
{
    return path.end != nullptr && path.end->station->demand.kind == Kind::Tank &&
           path.end->part != nullptr &&
           std::none_of(path.runs.begin(), path.runs.end(), [&](const PlacedRun *run) {
               const auto *from = expansion.station(run->from);
               return from != nullptr && from->station->demand.kind == Kind::Pump;
           });
}

SectionWork::Flows flowsOf(const std::vector<FlowPath> &paths, double flowM3S)
{
    SectionWork::Flows flows;
    for (const auto &[run, share] : LineNetwork::sharesOf(paths))
        flows[run] = share * flowM3S;
    return flows;
}

bool isLevelSaid(const std::vector<FlowPath> &paths)
{
    return std::any_of(paths.begin(), paths.end(), [](const FlowPath &path) {
        return std::any_of(path.runs.begin(), path.runs.end(), [](const PlacedRun *run) {
            return run->riseM != 0 || run->run->rise.isSaid();
        });
    });
}

class Feeding {
public:
    Feeding(const GravityPlan &plan, const SectionWork &sections)
        : m_plan(plan), m_sections(sections)
    {
    }

    [[nodiscard]] LineSection at(double flowM3S) const
    {
        return m_sections.section(m_plan.paths, LineRole::Suction, flowsOf(m_plan.paths, flowM3S));
    }

    /// What the level pushes, up to the wanted flow.
    [[nodiscard]] double reachesM3S(double wantedM3S) const
    {
        const auto drop = [this](double flowM3S) -> Result<double> { return at(flowM3S).dropPa; };
        if (at(wantedM3S).dropPa <= 0)
            return wantedM3S;
        const auto meets = crossing(drop, {0, wantedM3S});
        return meets ? meets->at.value_or(0) : 0;
    }

private:
    const GravityPlan &m_plan;
    const SectionWork &m_sections;
};

} // namespace

std::vector<GravityPlan> gravityPlans(const Expansion &expansion)
{
    std::vector<GravityPlan> plans;
    for (const auto &station : expansion.stations) {
        if (!isUser(station))
            continue;
        GravityPlan plan{&station, flowPaths(expansion, station, Course::Drawn)};
        const bool byGravity =
            std::all_of(plan.paths.begin(), plan.paths.end(),
                        [&](const FlowPath &path) { return isFromTank(expansion, path); });
        if (byGravity && !plan.paths.empty())
            plans.push_back(std::move(plan));
    }
    return plans;
}

void feedByGravity(const std::vector<GravityPlan> &plans, SectionWork &sections, SystemFlow &flow)
{
    for (const auto &plan : plans) {
        const Feeding feeding(plan, sections);
        GravityFeed feed;
        feed.user = plan.user->id;
        feed.wantedM3S =
            *flow.engineM3S * marginOf(Feed::Gravity).factor / static_cast<double>(plans.size());
        feed.isLevelSaid = isLevelSaid(plan.paths);
        feed.line = feeding.at(feed.wantedM3S);
        feed.headPa = -feeding.at(0).dropPa;
        feed.reachesM3S = feeding.reachesM3S(feed.wantedM3S);
        sections.carry(flowsOf(plan.paths, feed.wantedM3S), LineRole::Suction);
        if (!feed.isLevelSaid)
            flow.unknown.push_back(plan.user->part->number + ": no height of the tank above it");
        flow.gravityFeeds.push_back(std::move(feed));
    }
}

} // namespace flarestock
