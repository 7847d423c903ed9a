// SPDX-License-Identifier: MIT
//
// Flow conditions: on what day, how high and under what push the lines of a build are sized and
// judged. A template may ask for them by questions of these names; what it does not ask is as it
// stands here: a summer's day at the sea.
//
//   fuel-temperature = "40 C"   altitude = "0 ft"         vapour-pressure = "9 psi" (Reid)
//   voltage = "13.5 V"          acceleration = "1.5 g"    boost = "15 psi"

#pragma once

#include "model/fluids/demand/fuel_demand.h"
#include "model/fluids/fluid.h"
#include "model/systems/answers.h"

#include <optional>

namespace flarestock {

struct FlowConditions {
    double fuelC = 40;
    double altitudeM = 0;
    /// Reid vapour pressure: 9 psi is the most that the classes sold in summer have (ASTM D4814
    /// class A, from memory; ASTM D5798-15 class 1 of E85, published). Of a fuel with a vapour
    /// pressure of its own it is not looked at.
    double reidPa = 9 * 6894.757293168361;
    double volts = 13.5; ///< At the pump, of a running car (common practice, no source).
    double accelerationMS2 = 0;
    double boostPa = 0; ///< The regulator is piped to the manifold and adds it.
    double margin = 1;  ///< Of the pump over the engine; marginOf(Feed::Pump) in a build.
};

/// As the answers say; an answer that is no such measure counts as not given.
[[nodiscard]] FlowConditions conditionsOf(const Answers &answers);

/// What the engine burns at its power, in m³/s, of the fuel at that temperature: by the answer to
/// `power` and the usual consumption (model/fluids/demand), with boost where there is one. Nothing
/// where no power is asked, or the fluid is no fuel.
[[nodiscard]] std::optional<double> engineFlowM3S(const Answers &answers,
                                                  const std::optional<Fluid> &fluid,
                                                  const FlowConditions &conditions);

} // namespace flarestock
