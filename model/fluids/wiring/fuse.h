// SPDX-License-Identifier: MIT
//
// Fuse: large enough for the pump, small enough for its wire. The fuse guards the wire, not the
// pump.
//
//   fuseWindow(14, 7)->fuseA; // 10 A, between 8.75 and 15

#pragma once

#include "model/exact/problem.h"

#include <optional>
#include <span>
#include <string_view>

namespace flarestock {

struct WireLimit {
    std::optional<double> ohmPerM;  ///< Tinned and stranded, as measured at 20 °C.
    std::optional<double> breakerA; ///< Largest breaker …
    double fuseA = 0;               ///< … and fuse that guards it.
    std::string_view source;        ///< Never empty.
};

/// FAA AC 43.13-1B, table 11-3 (copper; model/fluids/data/wires.csv). Problem: a gauge that the
/// table does not have.
[[nodiscard]] Result<WireLimit> wireLimit(int gauge);

/// Amperes of the usual blade fuses (ISO 8820-3, from memory).
[[nodiscard]] std::span<const double> bladeFuses() noexcept;

struct FuseWindow {
    double fromA = 0;            ///< 1.25 × running current (common practice).
    double toA = 0;              ///< The wire's largest fuse.
    std::optional<double> fuseA; ///< The smallest blade fuse within; nothing: take a thicker wire.
};

/// amperes is the running current, above 0. Problem: another current, or as wireLimit.
[[nodiscard]] Result<FuseWindow> fuseWindow(int gauge, double amperes);

} // namespace flarestock
