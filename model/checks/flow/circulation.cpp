// SPDX-License-Identifier: MIT

#include "model/checks/flow/circulation.h"

#include "model/checks/flow/delivery_plan.h"
#include "model/checks/flow/section_work.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr double ColdC = 20;
constexpr double LitreHour = 1 / 3.6e6;

/// What is asked of it, else the most that its maker gives; nothing where neither is said.
std::optional<double> givenM3S(const PlacedStation &pump)
{
    if (const auto asked = demanded(pump, pump.station->demand.flow, Dimension::VolumeFlow))
        return asked;
    const auto *facts = pump.part->as<PumpFacts>();
    if (facts == nullptr || facts->curve.empty())
        return {};
    const auto most = std::max_element(
        facts->curve.begin(), facts->curve.end(),
        [](const auto &one, const auto &other) { return one.flowLh < other.flowLh; });
    return most->flowLh * LitreHour;
}

struct Round {
    std::vector<FlowPath> paths;
    double flowM3S = 0;
};

/// To the pump, from it, and by what is a return back from there.
Round roundOf(const Expansion &expansion, const PlacedStation &pump, double flowM3S)
{
    Round way{flowPaths(expansion, pump, Course::Drawn), flowM3S};
    for (const auto &path : flowPaths(expansion, pump, Course::Pushed)) {
        for (auto back : flowPaths(expansion, *path.end, Course::Returned)) {
            back.share *= path.share;
            way.paths.push_back(std::move(back));
        }
        way.paths.push_back(path);
    }
    return way;
}

/// Through each run the most that a path of the way sends: in a circle a run is met twice.
SectionWork::Flows flowsOf(const Round &way)
{
    SectionWork::Flows flows;
    for (const auto &path : way.paths)
        for (const auto *run : path.runs)
            flows[run] = std::max(flows[run], path.share * way.flowM3S);
    return flows;
}

LineRole roleOf(const PlacedRun &run)
{
    switch (run.run->level) {
    case Level::Suction:
        return LineRole::Suction;
    case Level::Return:
        return LineRole::Return;
    default:
        return LineRole::Pressure;
    }
}

} // namespace

void circulate(const Expansion &expansion, SystemFlow &flow)
{
    std::vector<Round> ways;
    for (const auto &station : expansion.stations) {
        if (station.station->demand.kind != Kind::Pump || station.part == nullptr)
            continue;
        if (const auto given = givenM3S(station))
            ways.push_back(roundOf(expansion, station, *given));
        else
            flow.unknown.push_back(station.part->number + ": no flow");
    }
    const std::string fluid(text(*expansion.fluid));
    const auto liquid = liquidAt(*expansion.fluid, ColdC);
    if (ways.empty() || !liquid) {
        flow.unknown.clear();
        flow.notJudged = "nobody states how much " + fluid + " goes round";
        return;
    }
    flow.liquid = *liquid;
    flow.liquidC = ColdC;
    std::vector<const FlowPath *> paths;
    for (const auto &way : ways)
        for (const auto &path : way.paths)
            paths.push_back(&path);
    const LineNetwork network(expansion, {*liquid, flow.conditions.accelerationMS2}, paths);
    SectionWork sections(expansion, network, flow);
    for (const auto &way : ways)
        for (const auto &[run, carried] : flowsOf(way))
            sections.carry({{run, carried}}, roleOf(*run));
    sections.report();
}

} // namespace flarestock
