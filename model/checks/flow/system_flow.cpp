// SPDX-License-Identifier: MIT

#include "model/checks/flow/system_flow.h"

#include "model/checks/flow/circulation.h"
#include "model/checks/flow/gravity_work.h"
#include "model/checks/flow/pump_work.h"
#include "model/checks/flow/section_work.h"
#include "model/fluids/bounds.h"

#include <algorithm>
#include <numeric>

namespace flarestock {

namespace {

class FlowOfSystem {
public:
    FlowOfSystem(const Expansion &expansion, const Liquid &liquid, SystemFlow &flow,
                 int picturePoints)
        : m_plans(deliveryPlans(expansion)), m_gravity(gravityPlans(expansion)),
          m_picturePoints(picturePoints), m_flow(flow),
          m_network(expansion, {liquid, flow.conditions.accelerationMS2}, allPaths()),
          m_sections(expansion, m_network, flow)
    {
    }

    void workOut()
    {
        for (const auto &plan : m_plans)
            deliver(plan);
        for (std::size_t at = 0; at < m_plans.size(); ++at)
            if (m_plans[at].end == DeliveryEnd::Vessel)
                balance(m_plans[at], m_flow.deliveries[at]);
        if (m_flow.engineM3S)
            feedByGravity(m_gravity, m_sections, m_flow);
        m_sections.report();
    }

    [[nodiscard]] bool isAsked() const
    {
        if (m_flow.engineM3S && !m_gravity.empty())
            return true;
        return std::any_of(m_plans.begin(), m_plans.end(), [&](const DeliveryPlan &plan) {
            return m_flow.engineM3S || wantedOfPumps(plan) > 0;
        });
    }

private:
    [[nodiscard]] std::vector<const FlowPath *> allPaths() const
    {
        auto all = pathsOf(m_plans);
        for (const auto &plan : m_gravity)
            for (const auto &path : plan.paths)
                all.push_back(&path);
        return all;
    }

    static double wantedOfPumps(const DeliveryPlan &plan)
    {
        return std::accumulate(
            plan.pumps.begin(), plan.pumps.end(), 0.0, [](double sum, const auto &pump) {
                const auto &demand = pump.station->station->demand;
                return sum +
                       demanded(*pump.station, demand.flow, Dimension::VolumeFlow).value_or(0);
            });
    }

    /// The engine's flow that this delivery has to bring: all, or its part beside others.
    [[nodiscard]] std::optional<double> burntM3S(const DeliveryPlan &plan) const
    {
        if (!m_flow.engineM3S || plan.end == DeliveryEnd::Vessel)
            return {};
        const auto feeding = std::count_if(m_plans.begin(), m_plans.end(), [](const auto &other) {
            return other.end != DeliveryEnd::Vessel;
        });
        return *m_flow.engineM3S / static_cast<double>(feeding);
    }

    /// What is wanted at the end, boost with it; nothing where nobody says.
    [[nodiscard]] std::optional<double> setPa(const DeliveryPlan &plan) const
    {
        if (plan.end == DeliveryEnd::Vessel)
            return 0;
        auto set = demanded(*plan.to, plan.to->station->demand.pressure, Dimension::Pressure);
        const auto *user = plan.to->part->as<FuelUserFacts>();
        if (!set && user != nullptr && user->pressureLowKpa)
            set = *user->pressureLowKpa * 1e3;
        return set ? std::optional(*set + m_flow.conditions.boostPa) : std::nullopt;
    }

    void deliver(const DeliveryPlan &plan)
    {
        Delivery delivery;
        delivery.end = plan.end;
        delivery.to = plan.to->id;
        delivery.setPa = setPa(plan);
        const auto burnt = burntM3S(plan);
        delivery.wantedM3S = burnt ? *burnt * m_flow.conditions.margin : wantedOfPumps(plan);
        PumpWork(plan, m_network, m_flow.conditions)
            .into(delivery, m_flow.unknown, m_picturePoints);

        const bool throttled = plan.end == DeliveryEnd::DeadHead || plan.end == DeliveryEnd::User;
        const auto number = static_cast<double>(plan.pumps.size());
        for (auto &pump : delivery.pumps) {
            if (throttled || !delivery.working)
                pump.flowM3S = (throttled && burnt ? *burnt : delivery.wantedM3S) / number;
        }
        m_sections.add(plan, delivery);
        if (burnt)
            m_sections.addBowls(plan, *burnt, delivery);
        m_flow.deliveries.push_back(std::move(delivery));
    }

    void balance(const DeliveryPlan &plan, Delivery &lift) const
    {
        const auto *vessel = plan.to->part->as<VesselFacts>();
        if (!m_flow.engineM3S || vessel == nullptr || !vessel->litres || !lift.working)
            return;
        SurgeTank tank;
        tank.liftM3S = lift.working->flowM3S;
        tank.burntM3S = *m_flow.engineM3S;
        tank.volumeM3 = *vessel->litres * 1e-3;
        tank.returnsHere = false;
        for (const auto &other : m_flow.deliveries) {
            for (const auto &pump : other.pumps)
                if (pump.suction.from == plan.to->id)
                    tank.takenM3S += pump.flowM3S;
            tank.returnsHere |= other.back && other.back->to == plan.to->id;
        }
        if (const auto found = surgeTankBalance(tank))
            lift.balance = *found;
    }

    std::vector<DeliveryPlan> m_plans;
    std::vector<GravityPlan> m_gravity;
    int m_picturePoints;
    SystemFlow &m_flow;
    LineNetwork m_network;
    SectionWork m_sections;
};

} // namespace

const RunFlow *SystemFlow::run(std::string_view id) const noexcept
{
    const auto found =
        std::find_if(runs.begin(), runs.end(), [id](const RunFlow &one) { return one.run == id; });
    return found == runs.end() ? nullptr : &*found;
}

namespace {

void fuelFlow(const Expansion &expansion, SystemFlow &flow, int picturePoints)
{
    const auto &conditions = flow.conditions;
    flow.liquidC = conditions.fuelC;
    flow.engineM3S = engineFlowM3S(expansion, conditions);
    const auto liquid = liquidAt(*expansion.fluid, conditions.fuelC);
    if (!liquid) {
        flow.unknown.push_back(std::string(text(*expansion.fluid)) + " at " +
                               shortNumber(conditions.fuelC) + " °C: no density and viscosity");
        return;
    }
    FlowOfSystem system(expansion, *liquid, flow, picturePoints);
    if (!system.isAsked()) {
        flow.notJudged = "nobody states the engine's power or what a pump is to give";
        return;
    }
    flow.liquid = *liquid;
    system.workOut();
}

} // namespace

SystemFlow systemFlow(const Expansion &expansion, const FlowConditions &conditions,
                      int picturePoints)
{
    SystemFlow flow;
    flow.conditions = conditions;
    if (!expansion.fluid || isBrakeFluid(*expansion.fluid))
        return flow;
    if (isFuel(*expansion.fluid))
        fuelFlow(expansion, flow, picturePoints);
    else
        circulate(expansion, flow);
    std::sort(flow.unknown.begin(), flow.unknown.end());
    flow.unknown.erase(std::unique(flow.unknown.begin(), flow.unknown.end()), flow.unknown.end());
    return flow;
}

} // namespace flarestock
