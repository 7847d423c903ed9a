// SPDX-License-Identifier: MIT
//
// Vapour pressure: under what absolute pressure a fuel boils at its temperature. A pump's inlet has
// to stay above it (model/fluids/pump/inlet.h).
//
//   vapourPressure(Fluid::Gasoline, 40, 9 * psi)->pascal; // 70.6 kPa

#pragma once

#include "model/fluids/liquid.h"

#include <optional>

namespace flarestock {

struct VapourPressure {
    double pascal = 0;       ///< Absolute.
    bool atMost = false;     ///< The fuel's own pressure is no more than that; it may be less.
    std::string_view status; ///< As in Liquid.
    std::string_view source; ///< Never empty.
};

/// True vapour pressure at -17.8 to 60 °C (0 to 140 °F).
/// - Gasoline: of its Reid vapour pressure, 1 to 20 psi: exp(A - B/T) with the constants of US EPA
///   AP-42, chapter 7.1, for refined stocks with a slope of 3. Not for blends with much alcohol.
/// - E85: of its Reid vapour pressure; no published law was found. An upper estimate: gasoline's up
///   to 37.8 °C, above it rising as steeply as ethanol.
/// - Methanol: of its own, 20 to 64.7 °C, ln p linear over 1/T (Clausius and Clapeyron) between
///   published points; a Reid vapour pressure is not looked at.
/// - Diesel: the published bound at 37.8 °C, for that and colder.
/// Problem: no Reid vapour pressure where one is needed, a figure outside these ranges, or another
/// fluid.
[[nodiscard]] Result<VapourPressure> vapourPressure(Fluid fuel, double temperatureC,
                                                    std::optional<double> reidPa = std::nullopt);

/// Between what temperatures vapourPressure says something of that fuel; nothing for other fluids.
[[nodiscard]] std::optional<TemperatureRange> vapourPressureRange(Fluid fuel) noexcept;

/// At what temperature the fuel boils under that absolute pressure: where its vapour pressure is
/// the same. For E85 it may be more. Problem: as above, a fuel of which only a bound is known
/// (diesel), or one that boils outside vapourPressureRange.
[[nodiscard]] Result<double> boilingTemperatureC(Fluid fuel, double absolutePa,
                                                 std::optional<double> reidPa = std::nullopt);

/// Of AP-42: for pressure in psi absolute and T in degrees Rankine, p = exp(a - bRankine / T).
struct ReidConstants {
    double a = 0;
    double bRankine = 0;
};

/// For gasoline, with a slope of 3. reidPa is more than 0 (asserted).
[[nodiscard]] ReidConstants reidConstants(double reidPa);

} // namespace flarestock
