// SPDX-License-Identifier: MIT
//
// Delivery plan: which pumps of a build stand side by side, and the paths by which they draw, push
// and get back what is not burnt. Pumps that feed the same place are one delivery.

#pragma once

#include "model/checks/flow/flow_paths.h"
#include "model/checks/flow/system_flow.h"

namespace flarestock {

struct DeliveryPlan {
    struct Pump {
        const PlacedStation *station = nullptr;
        std::vector<FlowPath> drawn;
        std::vector<FlowPath> pushed;
    };
    std::vector<Pump> pumps;
    const PlacedStation *to = nullptr;
    DeliveryEnd end = DeliveryEnd::User;
    /// To carburettor or rail with the engine's flow: behind the regulator, or beside the way to a
    /// bypass regulator.
    std::vector<FlowPath> bowls;
    std::vector<FlowPath> back; ///< From a bypass regulator, or over from a full surge tank.
};

/// By their first pump, in flow order. A pump whose part is missing is left out with what it feeds,
/// and so is one that feeds nothing.
[[nodiscard]] std::vector<DeliveryPlan> deliveryPlans(const Expansion &expansion);

/// Every path of them.
[[nodiscard]] std::vector<const FlowPath *> pathsOf(const std::vector<DeliveryPlan> &plans);

/// What a bypass regulator takes itself, wide open, at that flow: by the square (orifice, textbook)
/// out of its maker's figure. Nothing where he gives none.
[[nodiscard]] std::optional<double> wideOpenPa(const PlacedStation &regulator, double flowM3S);

/// The measure that a demand names where the station stands; nothing where it names none.
[[nodiscard]] std::optional<double> demanded(const PlacedStation &station, const Varying &demand,
                                             Dimension dimension);

} // namespace flarestock
