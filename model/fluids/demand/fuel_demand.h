// SPDX-License-Identifier: MIT
//
// Fuel demand: what flow of fuel an engine of some power takes, and what a pump has to give.
//
//   FuelAsked asked;
//   asked.powerW = wattsOf(500, PowerUnit::MechanicalHorsepower);
//   asked.consumptionKgJ =
//       kilogramPerJoule(0.60, ConsumptionUnit::PoundPerMechanicalHorsepowerHour);
//   asked.densityKgM3 = 745;
//   asked.margin = marginOf(Feed::Pump).factor;
//   fuelDemand(asked)->withMarginM3S; // 228.3 L/h

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Feed : std::uint8_t { Pump, Gravity };

struct Margin {
    double factor = 1;
    std::string_view status; ///< "published"
    std::string_view source; ///< Never empty.
};

/// 14 CFR 23.955 (2014), for aeroplanes with piston engines: a pump gives 125 % of the flow at
/// full power, gravity 150 %. No such figure was found for cars; common practice is 15 to 25 %.
[[nodiscard]] Margin marginOf(Feed feed) noexcept;

struct FuelAsked {
    double powerW = 0;         ///< At the crankshaft; above 0.
    double consumptionKgJ = 0; ///< Above 0.
    double densityKgM3 = 0;    ///< At the fuel's temperature; above 0.
    double margin = 1;         ///< 1 or more.
};

struct FuelDemand {
    double massKgS = 0;       ///< power × specific consumption
    double volumeM3S = 0;     ///< mass / density
    double withMarginM3S = 0; ///< What the pump has to give at its pressure and voltage.
};

/// Problem: a figure outside the range named at its field.
[[nodiscard]] Result<FuelDemand> fuelDemand(const FuelAsked &asked);

} // namespace flarestock
