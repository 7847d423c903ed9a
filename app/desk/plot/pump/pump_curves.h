// SPDX-License-Identifier: MIT
//
// Pump curves: what the pumps of a delivery give over pressure, what their lines want, and where
// the two meet, beside what the engine asks. The figures are those of systemFlow(); a pump's own
// curve is read at the voltage that the flow was worked out with.

#pragma once

#include "model/checks/flow/system_flow.h"

namespace flarestock {

struct PumpCurves {
    const Delivery *delivery = nullptr; ///< Of the flow.
    struct One {
        std::string station;
        std::vector<OperatingPoint> points; ///< By rising pressure; two at least.
    };
    std::vector<One> each;                ///< Pumps whose curve is known.
    std::vector<std::string> without;     ///< Stations of pumps whose curve is not.
    std::vector<OperatingPoint> together; ///< Of several at once, where they and their lines meet.
    std::vector<OperatingPoint> system;   ///< What the lines want; empty where nothing meets.
    double burntM3S = 0; ///< At full power; 0 where nobody says, or of a lift pump.

    [[nodiscard]] bool isThere() const
    {
        return !each.empty() && without.empty() && delivery->working;
    }
    /// What the engine does not burn of what is given: it comes back, or is in reserve.
    [[nodiscard]] double restM3S() const;
};

/// One of each delivery. Points into the flow.
[[nodiscard]] std::vector<PumpCurves> pumpCurves(const SystemFlow &flow);

} // namespace flarestock
