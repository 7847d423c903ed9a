// SPDX-License-Identifier: MIT
//
// Velocities: where fuel runs faster than is usual. Velocity alone is a poor check, so a line whose
// pressure was judged is no more than a caution, with what it takes beside it; and a line that is
// told for what it takes is not told again.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

/// A section whose velocity is looked at.
struct Watched {
    const LineSection *section = nullptr;
    std::string beside; ///< What it takes, and may; empty where its pressure was not judged.
};

void watchSuctions(const BuildUnderCheck &build, const Delivery &delivery,
                   std::vector<Watched> &watched)
{
    const auto *boiling = nearestToBoiling(delivery);
    const bool told = boiling != nullptr && boiling->inlet->marginPa < inletBounds().cautionPa &&
                      !isFuelTooWarm(build.flow(), *boiling);
    if (told)
        return;
    for (const auto &pump : delivery.pumps) {
        const bool judged = pump.inlet && !pump.suction.lossUnknown;
        watched.push_back({&pump.suction, judged ? "the fuel at the pump's inlet is " +
                                                       kilopascals(pump.inlet->marginPa) +
                                                       " from boiling"
                                                 : std::string()});
    }
}

/// A bypass regulator gets what its pump gives: without a curve nobody knows how much that is.
bool isFlowKnown(const Delivery &delivery)
{
    return delivery.end != DeliveryEnd::Bypass || delivery.reach != CurveReach::NotKnown;
}

void watchPressures(const BuildUnderCheck &build, const Delivery &delivery,
                    std::vector<Watched> &watched)
{
    if (const auto budgets = lossBudgets(build, delivery); !budgets.empty()) {
        for (const auto &budget : budgets) {
            if (budget.isExceeded())
                continue;
            watched.push_back(
                {budget.section, budget.section->lossUnknown || !isFlowKnown(delivery)
                                     ? std::string()
                                     : "the whole way takes " +
                                           kilopascals(budget.section->dropPa) + " of the " +
                                           kilopascals(budget.bounds.cautionPa) + " that it may"});
        }
        return;
    }
    // To a surge tank: no budget, but its pump's curve has counted it.
    const bool counted = delivery.working && !delivery.line.lossUnknown;
    watched.push_back(
        {&delivery.line,
         counted ? "the whole way takes " + kilopascals(delivery.line.dropPa) : std::string()});
    for (const auto &bowl : delivery.bowls)
        watched.push_back({&bowl, {}});
}

void watchReturn(const BuildUnderCheck &build, const Delivery &delivery,
                 std::vector<Watched> &watched)
{
    if (!delivery.back || isReturnTold(build, delivery))
        return;
    const auto bounds = returnBudget(build, delivery);
    watched.push_back(
        {&*delivery.back, bounds && !delivery.back->lossUnknown && isFlowKnown(delivery)
                              ? "it keeps up " + kilopascals(delivery.bypass->floorPa) +
                                    " of the " + kilopascals(bounds->cautionPa) + " that it may"
                              : std::string()});
}

void watchGravity(const GravityFeed &feed, std::vector<Watched> &watched)
{
    if (isGravityTold(feed))
        return;
    watched.push_back({&feed.line, feed.isLevelSaid
                                       ? "the line takes " +
                                             kilopascals(feed.line.dropPa + feed.headPa) + " of " +
                                             kilopascals(feed.headPa) + " of level"
                                       : std::string()});
}

/// Oil and coolant have no budget: all their runs, by what they are there for.
std::vector<LineSection> circulating(const SystemFlow &flow)
{
    std::vector<LineSection> sections;
    if (!flow.deliveries.empty() || !flow.gravityFeeds.empty())
        return sections;
    for (const auto role : {LineRole::Suction, LineRole::Pressure, LineRole::Return}) {
        LineSection section;
        section.role = role;
        for (const auto &run : flow.runs)
            if (run.role == role)
                section.runs.push_back(run.run);
        sections.push_back(std::move(section));
    }
    return sections;
}

const VelocityLimit &limitOf(const BuildUnderCheck &build, LineRole role)
{
    const auto &fluid = build.expansion().fluid;
    const bool oil = fluid == Fluid::EngineOil || fluid == Fluid::GearOil;
    return velocityLimit(role, oil ? LineLiquid::Oil : LineLiquid::Fuel);
}

/// The run of the section that is furthest over what is usual; nullptr where none is.
const RunFlow *fastest(const BuildUnderCheck &build, const LineSection &section)
{
    const SystemFlow &flow = build.flow();
    const RunFlow *fast = nullptr;
    for (const auto &id : section.runs) {
        const auto *run = flow.run(id);
        if (run != nullptr && run->velocityMS > limitOf(build, section.role).cautionMS &&
            (fast == nullptr || run->velocityMS > fast->velocityMS))
            fast = run;
    }
    return fast;
}

Finding tooFast(const BuildUnderCheck &build, const RunFlow &run, const Watched &watched)
{
    const auto &limit = limitOf(build, run.role);
    const bool stop = watched.beside.empty() && run.velocityMS > limit.stopMS;
    const auto *placed = build.expansion().run(run.run);
    return {.severity = stop ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = "The line from " + nameOf(build, placed->from) + " to " +
                     nameOf(build, placed->to) + ": " + metresPerSecond(run.velocityMS),
            .where = run.run,
            .text = litresPerHour(run.flowM3S) + " through a bore of " +
                    withDecimals(run.boreM * 1e3, 1) + " mm; up to " +
                    metresPerSecond(stop ? limit.stopMS : limit.cautionMS) + " is usual there. " +
                    (watched.beside.empty()
                         ? "What it takes could not be judged."
                         : "Velocity alone is a poor check: " + watched.beside + "."),
            .source = std::string(limit.source),
            .remedy = watched.beside.empty() ? "Use a wider line."
                                             : "Use a wider line where it is easily had.",
            .mend = {}};
}

/// Of each role the one that is furthest over: twin suctions are one cause.
void tellFastest(const BuildUnderCheck &build, const std::vector<Watched> &watched, Findings &found)
{
    std::vector<LineRole> said;
    for (const auto &one : watched) {
        const auto *run = fastest(build, *one.section);
        if (run == nullptr || std::find(said.begin(), said.end(), run->role) != said.end())
            continue;
        said.push_back(run->role);
        found.push_back(tooFast(build, *run, one));
    }
}

} // namespace

void velocities(const BuildUnderCheck &build, Findings &found)
{
    const auto &flow = build.flow();
    for (const auto &delivery : flow.deliveries) {
        std::vector<Watched> watched;
        watchSuctions(build, delivery, watched);
        watchPressures(build, delivery, watched);
        watchReturn(build, delivery, watched);
        tellFastest(build, watched, found);
    }
    std::vector<Watched> watched;
    for (const auto &feed : flow.gravityFeeds)
        watchGravity(feed, watched);
    const auto sections = circulating(flow);
    for (const auto &section : sections)
        watched.push_back({&section, {}});
    tellFastest(build, watched, found);
}

} // namespace flarestock::rules
