// SPDX-License-Identifier: MIT
//
// Specific consumption: how much fuel an engine takes for its work. Inside the program in kg/J;
// what people write says which horsepower it means, because mechanical and metric differ by 1.4 %.
//
//   kilogramPerJoule(0.60, ConsumptionUnit::PoundPerMechanicalHorsepowerHour);

#pragma once

#include "model/fluids/fluid.h"

#include <cstdint>

namespace flarestock {

enum class PowerUnit : std::uint8_t {
    MechanicalHorsepower, ///< 550 ft·lbf/s, 745.69987158227022 W
    MetricHorsepower,     ///< 75 kgf·m/s, 735.49875 W exactly
    Kilowatt,
};

enum class ConsumptionUnit : std::uint8_t {
    PoundPerMechanicalHorsepowerHour,
    PoundPerMetricHorsepowerHour,
    GramPerKilowattHour,
};

[[nodiscard]] double wattsOf(double power, PowerUnit unit) noexcept;
[[nodiscard]] double kilogramPerJoule(double consumption, ConsumptionUnit unit) noexcept;
/// The other way round: kg/J in that unit.
[[nodiscard]] double consumptionIn(double kilogramPerJoule, ConsumptionUnit unit) noexcept;

/// 1 / (efficiency × lower heating value), in kg/J (textbook). efficiency is above 0 and at most 1,
/// heatingValueJKg above 0; otherwise a Problem.
[[nodiscard]] Result<double> consumptionOfEfficiency(double efficiency, double heatingValueJKg);

/// Measured: mass of fuel in a second for the power, in kg/J. Problem: either is not above 0.
[[nodiscard]] Result<double> consumptionMeasured(double massKgS, double powerW);

enum class Induction : std::uint8_t { Natural, Boosted };

struct ConsumptionBand {
    double lowKgJ = 0;
    double highKgJ = 0;
    double usualKgJ = 0;
    std::string_view status; ///< "common practice", "estimate"
    std::string_view source; ///< Never empty.
};

/// At full power (model/fluids/data/consumption.csv). Problem: not a fuel.
[[nodiscard]] Result<ConsumptionBand> consumptionBand(Fluid fuel, Induction induction);

struct HeatingValue {
    double joulePerKg = 0;    ///< Lower heating value.
    double massRatio = 1;     ///< Mass of it that has the energy of one mass of gasoline.
    double plausibleLow = 1;  ///< Consumption against gasoline's below that is a slip
    double plausibleHigh = 1; ///< … or above that (judgement, around massRatio).
    std::string_view status;
    std::string_view source;
};

/// Problem: no figure (diesel, and what is no fuel).
[[nodiscard]] Result<HeatingValue> heatingValue(Fluid fuel);

} // namespace flarestock
