// SPDX-License-Identifier: MIT

#include "model/checks/flow/section_work.h"

#include "model/fluids/bounds.h"
#include "model/fluids/liquids/vapour_pressure.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr double LitreHour = 1 / 3.6e6;

void addShares(SectionWork::Flows &flows, const std::vector<FlowPath> &paths, double flowM3S)
{
    for (const auto &[run, share] : LineNetwork::sharesOf(paths))
        flows[run] += share * flowM3S;
}

double endPa(const Delivery &delivery)
{
    const double keptUp = delivery.bypass ? delivery.bypass->floorPa
                          : delivery.back ? delivery.back->dropPa
                                          : 0;
    return std::max(delivery.setPa.value_or(0), keptUp);
}

} // namespace

void SectionWork::carry(const Flows &flows, LineRole role)
{
    for (const auto &[run, flow] : flows) {
        auto &carried = m_carried[run];
        carried.role = role;
        carried.flowM3S += flow;
    }
}

LineSection SectionWork::section(const std::vector<FlowPath> &paths, LineRole role,
                                 const Flows &flows) const
{
    LineSection worst;
    for (const auto &path : paths) {
        LineSection section{role, {}, {}, {}, 0, 0, 0, false};
        for (const auto *run : path.runs) {
            const auto loss = m_network.loss(*run, flows.at(run));
            const auto &line = m_network.line(*run);
            section.runs.push_back(run->id);
            section.flowM3S = std::max(section.flowM3S, flows.at(run));
            section.dropPa += loss.dropPa;
            section.dropLeastPa += loss.dropLeastPa;
            section.lossUnknown |= line.lossUnknown || line.boreless != nullptr || line.unfinished;
        }
        if (!path.runs.empty()) {
            section.from = path.runs.front()->from;
            section.to = path.runs.back()->to;
        }
        if (worst.runs.empty() || section.dropPa > worst.dropPa)
            worst = std::move(section);
    }
    return worst;
}

void SectionWork::addInlet(PumpAtWork &pump)
{
    const Fluid fuel = *m_expansion.fluid;
    const auto &conditions = m_flow.conditions;
    const auto *tank = m_expansion.station(pump.suction.from);
    if (tank == nullptr || tank->station->demand.kind != Kind::Tank)
        return;
    const auto vapour = vapourPressure(fuel, conditions.fuelC, conditions.reidPa);
    if (!vapour) {
        m_flow.unknown.push_back(std::string(text(fuel)) + " at " + shortNumber(conditions.fuelC) +
                                 " °C: no vapour pressure");
        return;
    }
    m_flow.vapour = *vapour;
    PumpInlet inlet;
    inlet.altitudeM = conditions.altitudeM;
    inlet.vapourPa = vapour->pascal;
    inlet.densityKgM3 = m_flow.liquid->densityKgM3;
    inlet.lossPa = pump.suction.dropPa; // With the level, where the template states it.
    if (const auto margin = inletMargin(inlet))
        pump.inlet = *margin;
}

void SectionWork::addSuction(const DeliveryPlan &plan, Delivery &delivery)
{
    Flows drawn;
    for (std::size_t at = 0; at < plan.pumps.size(); ++at)
        addShares(drawn, plan.pumps[at].drawn, delivery.pumps[at].flowM3S);
    carry(drawn, LineRole::Suction);
    for (std::size_t at = 0; at < plan.pumps.size(); ++at) {
        auto &pump = delivery.pumps[at];
        pump.suction = section(plan.pumps[at].drawn, LineRole::Suction, drawn);
        if (!pump.suction.runs.empty())
            addInlet(pump);
    }
}

void SectionWork::add(const DeliveryPlan &plan, Delivery &delivery)
{
    addSuction(plan, delivery);
    Flows pushed;
    std::vector<FlowPath> paths;
    double all = 0;
    for (std::size_t at = 0; at < plan.pumps.size(); ++at) {
        addShares(pushed, plan.pumps[at].pushed, delivery.pumps[at].flowM3S);
        paths.insert(paths.end(), plan.pumps[at].pushed.begin(), plan.pumps[at].pushed.end());
        all += delivery.pumps[at].flowM3S;
    }
    carry(pushed, LineRole::Pressure);
    delivery.line = section(paths, LineRole::Pressure, pushed);
    if (!plan.back.empty()) {
        Flows returned;
        addShares(returned, plan.back, all);
        carry(returned, LineRole::Return);
        delivery.back = section(plan.back, LineRole::Return, returned);
        addBypass(plan, delivery, all);
    }
    const double end = endPa(delivery);
    for (auto &pump : delivery.pumps)
        if (delivery.working)
            pump.pressurePa = end + delivery.line.dropPa + pump.suction.dropPa;
    addPressures(plan, delivery);
}

void SectionWork::addBowls(const DeliveryPlan &plan, double burntM3S, Delivery &delivery)
{
    Flows burnt;
    addShares(burnt, plan.bowls, burntM3S);
    carry(burnt, LineRole::Pressure);
    for (const auto &path : plan.bowls) {
        auto bowl = section({path}, LineRole::Pressure, burnt);
        if (!bowl.runs.empty())
            delivery.bowls.push_back(std::move(bowl));
    }
}

void SectionWork::addBypass(const DeliveryPlan &plan, Delivery &delivery, double allM3S) const
{
    const auto *facts = plan.to->part->as<RegulatorFacts>();
    if (plan.end != DeliveryEnd::Bypass || facts == nullptr || allM3S <= 0)
        return;
    BypassRange range;
    range.ownPa = wideOpenPa(*plan.to, allM3S);
    range.floorPa = delivery.back->dropPa + range.ownPa.value_or(0);
    range.fromPa = std::max(facts->lowKpa.value_or(0) * 1e3, range.floorPa);
    range.toPa =
        facts->highKpa ? *facts->highKpa * 1e3 : std::max(range.fromPa, delivery.setPa.value_or(0));
    range.overItsFlow = facts->flowLh && allM3S > *facts->flowLh * LitreHour;
    for (const auto &path : plan.back)
        for (const auto *run : path.runs)
            range.boreAssumed |= !m_network.line(*run).assumed.empty();
    delivery.bypass = range;
}

void SectionWork::follow(const LineSection &section, double startPa,
                         std::vector<PressurePoint> &points) const
{
    double alongM = points.empty() ? 0 : points.back().alongM;
    for (const auto &id : section.runs) {
        const auto *run = m_expansion.run(id);
        const auto loss = m_network.loss(*run, m_carried.at(run).flowM3S);
        for (const auto &point : loss.along)
            points.push_back(
                {alongM + point.alongM, startPa + point.totalPa, startPa + point.wallPa, id});
        if (!loss.along.empty()) {
            alongM += loss.along.back().alongM;
            startPa += loss.along.back().totalPa;
        }
    }
}

void SectionWork::addPressures(const DeliveryPlan &plan, Delivery &delivery) const
{
    auto &points = delivery.pressures;
    const auto &first = delivery.pumps.front();
    if (!delivery.setPa || first.flowM3S <= 0)
        return;
    follow(first.suction, 0, points);
    const double outletPa = endPa(delivery) + delivery.line.dropPa;
    const double alongM = points.empty() ? 0 : points.back().alongM;
    points.push_back({alongM, outletPa, outletPa, plan.pumps.front().station->id});
    follow(delivery.line, outletPa, points);
    if (delivery.back)
        follow(*delivery.back, delivery.back->dropPa, points);
}

void SectionWork::report() const
{
    for (const auto &run : m_expansion.runs) {
        const auto found = m_carried.find(&run);
        if (found == m_carried.end() || found->second.flowM3S <= 0)
            continue;
        RunFlow flow;
        flow.run = run.id;
        flow.role = found->second.role;
        flow.flowM3S = found->second.flowM3S;
        flow.line = m_network.line(run);
        flow.line.line = m_network.flowing(run, flow.flowM3S);
        flow.loss = m_network.loss(run, flow.flowM3S);
        for (const auto &loss : flow.loss.losses) {
            const auto &piece = flow.line.line.pieces[loss.piece].piece;
            if (loss.boreChange || !std::holds_alternative<StraightLine>(piece))
                continue;
            flow.boreM = loss.boreM;
            flow.velocityMS = loss.velocityMS;
            flow.reynolds = loss.reynolds;
            flow.regime = loss.regime;
        }
        if (flow.line.boreless != nullptr)
            m_flow.unknown.push_back(flow.line.boreless->number + ": no bore");
        if (const auto *passed = flow.line.passed) {
            const auto *facts = passed->part->as<FilterFacts>();
            if (flow.line.lossUnknown)
                m_flow.unknown.push_back(passed->part->number +
                                         ": no loss of what goes through it");
            else if (facts != nullptr && flow.flowM3S > *facts->flowLh * LitreHour * (1 + 1e-9))
                m_flow.unknown.push_back(passed->part->number + ": no loss above " +
                                         shortNumber(*facts->flowLh) + " L/h");
        }
        m_flow.runs.push_back(std::move(flow));
    }
}

} // namespace flarestock
