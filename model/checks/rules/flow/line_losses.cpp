// SPDX-License-Identifier: MIT
//
// Line losses: what the lines take of the pressure, before and behind a regulator and on the way
// back, against what they may; and how fast it flows where that cannot be said.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr auto LossSource =
    "friction by Darcy-Weisbach and Colebrook-White, ends by textbook coefficients (half of it "
    "either way); what a line may take is judgement";
constexpr auto ReturnSource =
    "a regulator that is wide open still keeps what its return takes: Darcy-Weisbach and "
    "Colebrook-White; half of the set pressure is judgement";

Finding returnTakesAll(const BuildUnderCheck &build, const Delivery &delivery)
{
    const bool stop = returnShare(delivery) > 1;
    const std::string set = kilopascals(*delivery.setPa);
    const std::string floor = kilopascals(delivery.bypass->floorPa);
    return {.severity = stop ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, delivery.to) +
                     (stop ? ": cannot hold " + set
                           : ": its return takes " + floor + " of the " + set + " that it holds"),
            .where = delivery.to,
            .text = "At idle all " + litresPerHour(delivery.back->flowM3S) +
                    " of the pump come back, and the return alone keeps up " + floor +
                    "; what the open regulator takes comes on top.",
            .source = ReturnSource,
            .remedy = "Use a wider return line and fewer bends in it, or a smaller pump.",
            .mend = {}};
}

Finding overItsFlow(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto &part = *build.expansion().station(delivery.to)->part;
    return {.severity = Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, delivery.to) + ": more comes back than it passes",
            .where = delivery.to,
            .text = "At idle all " + litresPerHour(delivery.back->flowM3S) +
                    " of the pump go through it; its maker allows " +
                    withDecimals(part.as<RegulatorFacts>()->flowLh.value_or(0), 0) + " L/h.",
            .source = "the maker's figure, as entered in the catalogue",
            .remedy = "Use a larger regulator or a smaller pump.",
            .mend = {}};
}

/// The run of the section that takes most.
std::string heaviestRun(const BuildUnderCheck &build, const LineSection &section)
{
    const RunFlow *heaviest = nullptr;
    for (const auto &id : section.runs) {
        const auto *run = build.flow().run(id);
        if (run != nullptr && (heaviest == nullptr || run->loss.dropPa > heaviest->loss.dropPa))
            heaviest = run;
    }
    return heaviest == nullptr ? section.runs.front() : heaviest->run;
}

Finding takesTooMuch(const BuildUnderCheck &build, const LossBudget &budget)
{
    const auto &section = *budget.section;
    const bool sure = section.dropLeastPa > budget.budgetPa;
    return {.severity = sure ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = "The line " + wayOf(build, section) + " takes " + kilopascals(section.dropPa),
            .where = heaviestRun(build, section),
            .text = "At " + litresPerHour(section.flowM3S) + " it may take " +
                    kilopascals(budget.budgetPa) +
                    (sure ? "."
                          : "; where it runs laminar it takes " + kilopascals(section.dropLeastPa) +
                                "."),
            .source = LossSource,
            .remedy = "Use a wider or shorter line and fewer bends in it.",
            .mend = {}};
}

/// A section whose velocity is looked at; where its pressure is known that says more than velocity.
struct Watched {
    const LineSection *section = nullptr;
    bool judged = false;
};

std::vector<Watched> watchedOf(const BuildUnderCheck &build, const Delivery &delivery)
{
    std::vector<Watched> watched;
    const auto *boiling = nearestToBoiling(delivery);
    const bool suctionSaid = boiling != nullptr && boiling->inlet->marginPa < InletCautionPa &&
                             !isFuelTooWarm(build.flow(), *boiling);
    for (const auto &pump : delivery.pumps)
        if (!suctionSaid)
            watched.push_back({&pump.suction, pump.inlet && !pump.suction.lossUnknown});
    const bool known = delivery.reach != CurveReach::NotKnown;
    const auto budgets = lossBudgets(build, delivery);
    const auto add = [&](const LineSection &section) {
        const bool said = std::any_of(budgets.begin(), budgets.end(), [&](const auto &budget) {
            return budget.section == &section && budget.isExceeded();
        });
        if (!said)
            watched.push_back({&section, known && !section.lossUnknown});
    };
    add(delivery.line);
    for (const auto &bowl : delivery.bowls)
        add(bowl);
    if (delivery.back && returnShare(delivery) <= ReturnShareMost)
        add(*delivery.back);
    return watched;
}

/// The run of the section that is most over the limit that counts there; nullptr where none is.
const RunFlow *fastest(const SystemFlow &flow, const Watched &watched)
{
    const auto &limit = velocityLimit(watched.section->role);
    const RunFlow *fast = nullptr;
    for (const auto &id : watched.section->runs) {
        const auto *run = flow.run(id);
        const double most = watched.judged ? limit.stopMS : limit.cautionMS;
        if (run != nullptr && run->velocityMS > most &&
            (fast == nullptr || run->velocityMS > fast->velocityMS))
            fast = run;
    }
    return fast;
}

Finding tooFast(const BuildUnderCheck &build, const RunFlow &run)
{
    const auto &limit = velocityLimit(run.role);
    const bool stop = run.velocityMS > limit.stopMS;
    const auto *placed = build.expansion().run(run.run);
    return {.severity = stop ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = "The line from " + nameOf(build, placed->from) + " to " +
                     nameOf(build, placed->to) + ": " + metresPerSecond(run.velocityMS),
            .where = run.run,
            .text = litresPerHour(run.flowM3S) + " through a bore of " +
                    withDecimals(run.boreM * 1e3, 1) + " mm; up to " +
                    metresPerSecond(stop ? limit.stopMS : limit.cautionMS) + " is usual there.",
            .source = std::string(limit.source),
            .remedy = "Use a wider line.",
            .mend = {}};
}

} // namespace

void returnLines(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries) {
        if (returnShare(delivery) > ReturnShareMost) {
            found.push_back(returnTakesAll(build, delivery));
        } else if (delivery.bypass && delivery.bypass->overItsFlow) {
            const auto &station = *build.expansion().station(delivery.to);
            const auto wanted = build.wanted(station, station.station->demand.flow);
            const double most = station.part->as<RegulatorFacts>()->flowLh.value_or(0) / 3.6e6;
            if (!wanted || wanted->si <= most) // Else flows() says so.
                found.push_back(overItsFlow(build, delivery));
        }
    }
}

void lineLosses(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries)
        for (const auto &budget : lossBudgets(build, delivery))
            if (budget.isExceeded())
                found.push_back(takesTooMuch(build, budget));
}

void velocities(const BuildUnderCheck &build, Findings &found)
{
    const auto &flow = build.flow();
    for (const auto &delivery : flow.deliveries) {
        std::vector<const RunFlow *> said; // Twin suctions are one cause.
        for (const auto &watched : watchedOf(build, delivery)) {
            const auto *run = fastest(flow, watched);
            const bool again = run != nullptr &&
                               std::any_of(said.begin(), said.end(), [run](const RunFlow *other) {
                                   return other->role == run->role;
                               });
            if (run == nullptr || again)
                continue;
            said.push_back(run);
            found.push_back(tooFast(build, *run));
        }
    }
}

} // namespace flarestock::rules
