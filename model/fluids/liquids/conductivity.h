// SPDX-License-Identifier: MIT
//
// Electrical conductivity: whether a liquid keeps the charge that a line and a filter give it, and
// whether it carries current inside a pump. Orders of magnitude
// (model/fluids/data/conductivity.csv).

#pragma once

#include "model/fluids/fluid.h"

#include <cstdint>
#include <optional>

namespace flarestock {

/// By NFPA 77: below 50 pS/m a liquid accumulates charge, above 10,000 pS/m it does not.
enum class ChargeKeeping : std::uint8_t { Accumulates, Between, Drains };

struct Conductivity {
    double siemensPerM = 0;
    ChargeKeeping charge = ChargeKeeping::Accumulates;
    std::string_view status; ///< As in Liquid.
    std::string_view source; ///< Never empty.
};

/// Nothing where no figure is known (oils, coolant, brake fluids).
[[nodiscard]] std::optional<Conductivity> conductivityOf(Fluid fluid);

/// siemensPerM is 0 or more.
[[nodiscard]] ChargeKeeping chargeKeeping(double siemensPerM) noexcept;

} // namespace flarestock
