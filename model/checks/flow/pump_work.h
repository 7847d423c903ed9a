// SPDX-License-Identifier: MIT
//
// Pump work: where the pumps of one delivery and the lines that they draw and push through meet.

#pragma once

#include "model/checks/flow/delivery_plan.h"
#include "model/checks/flow/line_network.h"

namespace flarestock {

class PumpWork {
public:
    /// All outlive it. No pump of the plan is without a part.
    PumpWork(const DeliveryPlan &plan, const LineNetwork &network,
             const FlowConditions &conditions);

    /// Fills in the delivery's pumps with their curves, reach, working point, picture with so many
    /// points (0: none), and each pump's flow there. setPa of the delivery is looked at. What is
    /// missing for it goes into unknown.
    void into(Delivery &delivery, std::vector<std::string> &unknown, int picturePoints) const;

private:
    struct Lines {
        LineNetwork::Shares drawn;
        LineNetwork::Shares pushed;
    };
    [[nodiscard]] double alonePa(std::size_t pump, double flowM3S) const;
    [[nodiscard]] double togetherPa(double allM3S) const;
    [[nodiscard]] Result<PumpSet> pumpsAtMeeting(const Delivery &delivery) const;
    [[nodiscard]] Result<PumpCurve> behindOwnLines(const PumpCurve &curve, std::size_t pump) const;
    [[nodiscard]] double volts(const DeliveryPlan::Pump &pump) const;
    [[nodiscard]] double backPa(double flowM3S) const;
    void readCurves(Delivery &delivery, std::vector<std::string> &unknown) const;

    const DeliveryPlan &m_plan;
    const LineNetwork &m_network;
    const FlowConditions &m_conditions;
    std::vector<Lines> m_lines;
    LineNetwork::Shares m_back;
    std::map<const PlacedRun *, int> m_usedBy; ///< How many pumps use a run.
};

} // namespace flarestock
