// SPDX-License-Identifier: MIT
//
// Wires: cross section of a gauge, resistance at temperature, and the voltage that a pump loses in
// its two wires.
//
//   PumpWire wire;
//   wire.areaM2 = gaugeAreaM2(14).value();
//   wire.thereM = 5;
//   wire.backM = 0.5; // to the chassis beside it
//   wire.amperes = 7;
//   voltageDrop(wire)->volts; // 0.32 V

#pragma once

#include "model/exact/problem.h"

#include <string_view>

namespace flarestock {

/// ASTM B258: 0.005 in × 92^((36 - n) / 39), of a solid wire; of a stranded one its copper has the
/// same area. 0 is 1/0, -3 is 4/0. Problem: outside -3 to 40.
[[nodiscard]] Result<double> gaugeDiameterM(int gauge);
[[nodiscard]] Result<double> gaugeAreaM2(int gauge);

/// Of copper at that temperature, -60 to 260 °C: 1.7241e-8 Ω·m at 20 °C (100 % IACS), in proportion
/// to 234.5 °C above it (FAA AC 43.13-1B). Problem: another temperature.
[[nodiscard]] Result<double> copperResistivityOhmM(double temperatureC);

struct PumpWire {
    double areaM2 = 0;        ///< Of the copper; above 0.
    double thereM = 0;        ///< Wire to the pump; 0 or more.
    double backM = 0;         ///< Wire back; as long again, or to the chassis; 0 or more.
    double amperes = 0;       ///< 0 or more.
    double temperatureC = 20; ///< Of the wire.
    double contactOhm = 0;    ///< Connectors, switch, relay and chassis, as measured; 0 or more.
};

struct VoltageDrop {
    double ohm = 0; ///< There and back.
    double volts = 0;
};

/// R = ρ L / A, U = I R. Tinned stranded wire was measured 11 to 27 % above (AC 43.13-1B against
/// this formula). Problem: a figure outside the range named at its field.
[[nodiscard]] Result<VoltageDrop> voltageDrop(const PumpWire &wire);

/// Wire whose maker gives its resistance for a length.
struct MeasuredWire {
    double ohmPerM = 0;
    double lengthM = 0; ///< There and back.
    double amperes = 0;
};

/// U = I R L. Problem: a figure below nothing.
[[nodiscard]] Result<double> measuredDropV(const MeasuredWire &wire);

} // namespace flarestock
