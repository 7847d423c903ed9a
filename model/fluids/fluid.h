// SPDX-License-Identifier: MIT
//
// Fluids that a car's systems carry, by the words that templates, parts and people use.

#pragma once

#include "model/exact/problem.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Fluid : std::uint8_t {
    Gasoline,
    E85,
    Methanol,
    Diesel,
    EngineOil,
    GearOil,
    WaterGlycol,
    Dot3,
    Dot4,
    Dot5,
    Dot51,
    MineralBrakeFluid,
};
inline constexpr std::size_t FluidCount = 12;

[[nodiscard]] std::string_view text(Fluid fluid) noexcept; ///< "gasoline", "E85", "DOT 5.1", …
[[nodiscard]] Result<Fluid> parseFluid(std::string_view text); ///< Case and blanks forgiven.
[[nodiscard]] const std::array<Fluid, FluidCount> &allFluids() noexcept;
[[nodiscard]] bool isBrakeFluid(Fluid fluid) noexcept;
[[nodiscard]] bool isFuel(Fluid fluid) noexcept;

} // namespace flarestock
