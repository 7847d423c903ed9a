// SPDX-License-Identifier: MIT
//
// Section work: the flow of each run out of the deliveries, and the sections of suction, pressure
// and return with what they take.

#pragma once

#include "model/checks/flow/delivery_plan.h"
#include "model/checks/flow/line_network.h"

namespace flarestock {

class SectionWork {
public:
    using Flows = std::map<const PlacedRun *, double>; ///< In m³/s.

    /// All outlive it; what is worked out goes into flow.
    SectionWork(const Expansion &expansion, const LineNetwork &network, SystemFlow &flow)
        : m_expansion(expansion), m_network(network), m_flow(flow)
    {
    }

    /// Suction, pressure and return of a delivery whose pumps' flows are known: the sections, the
    /// inlets, the range of a bypass regulator and the picture.
    void add(const DeliveryPlan &plan, Delivery &delivery);
    void addBowls(const DeliveryPlan &plan, double burntM3S, Delivery &delivery);
    /// Of the paths that which takes most; no runs where there is none.
    [[nodiscard]] LineSection section(const std::vector<FlowPath> &paths, LineRole role,
                                      const Flows &flows) const;
    /// The runs carry that flow, beside what they carry already.
    void carry(const Flows &flows, LineRole role);
    /// The runs that were added, each with its flow, in the order of the expansion.
    void report() const;

private:
    struct Carried {
        LineRole role = LineRole::Pressure;
        double flowM3S = 0;
    };
    void addSuction(const DeliveryPlan &plan, Delivery &delivery);
    void addInlet(PumpAtWork &pump);
    void addBypass(const DeliveryPlan &plan, Delivery &delivery, double allM3S) const;
    void addPressures(const DeliveryPlan &plan, Delivery &delivery) const;
    void follow(const LineSection &section, double startPa,
                std::vector<PressurePoint> &points) const;

    const Expansion &m_expansion;
    const LineNetwork &m_network;
    SystemFlow &m_flow;
    std::map<const PlacedRun *, Carried> m_carried;
};

} // namespace flarestock
