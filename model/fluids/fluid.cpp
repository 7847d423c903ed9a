// SPDX-License-Identifier: MIT

#include "model/fluids/fluid.h"

#include <algorithm>
#include <cassert>
#include <string>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, FluidCount> FluidWords{
    "gasoline",     "E85",   "methanol", "diesel", "engine oil", "gear oil",
    "water-glycol", "DOT 3", "DOT 4",    "DOT 5",  "DOT 5.1",    "mineral brake fluid",
};

/// Lower case, without blanks and hyphens.
std::string comparable(std::string_view text)
{
    std::string result;
    for (const char each : text) {
        if (each == ' ' || each == '\t' || each == '-')
            continue;
        result += each >= 'A' && each <= 'Z' ? static_cast<char>(each - 'A' + 'a') : each;
    }
    return result;
}

} // namespace

std::string_view text(Fluid fluid) noexcept
{
    return FluidWords[static_cast<std::size_t>(fluid)];
}

Result<Fluid> parseFluid(std::string_view text)
{
    const std::string wanted = comparable(text);
    for (std::size_t index = 0; index < FluidCount; ++index) {
        if (comparable(FluidWords[index]) == wanted)
            return static_cast<Fluid>(index);
    }
    std::string known;
    for (const std::string_view word : FluidWords)
        known += (known.empty() ? "" : ", ") + std::string(word);
    return problem("", quotedStart(text) + " is not a fluid that is known",
                   "Write one of " + known + ".");
}

const std::array<Fluid, FluidCount> &allFluids() noexcept
{
    static constexpr auto All = [] {
        std::array<Fluid, FluidCount> all{};
        for (std::size_t index = 0; index < FluidCount; ++index)
            all[index] = static_cast<Fluid>(index);
        return all;
    }();
    return All;
}

bool isBrakeFluid(Fluid fluid) noexcept
{
    return fluid == Fluid::Dot3 || fluid == Fluid::Dot4 || fluid == Fluid::Dot5 ||
           fluid == Fluid::Dot51 || fluid == Fluid::MineralBrakeFluid;
}

bool isFuel(Fluid fluid) noexcept
{
    return fluid == Fluid::Gasoline || fluid == Fluid::E85 || fluid == Fluid::Methanol ||
           fluid == Fluid::Diesel;
}

} // namespace flarestock
