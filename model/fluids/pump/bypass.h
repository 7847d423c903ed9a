// SPDX-License-Identifier: MIT
//
// Bypass: what pressure a regulator that returns the surplus can hold. Wide open, it still keeps
// what the return line takes from nearly all that the pump gives: a narrow return lifts the
// pressure above what a carburettor bears, whatever the screw is set to.
//
//   returnLine.flowM3S = 255 * litreH;       // 3 m of 4.76 mm
//   bypassRange({30e3, 80e3}, returnLine)->floorPa; // 111 kPa: it cannot hold 45

#pragma once

#include "model/fluids/line/whole_line.h"

namespace flarestock {

struct BypassRegulator {
    double lowPa = 0;  ///< What it can be set to, over the air; 0 or more.
    double highPa = 0; ///< At least lowPa.
    /// Its own loss wide open at that flow; nothing where nobody says.
    std::optional<double> wideOpenPa = std::nullopt;
    std::optional<double> mostM3S = std::nullopt; ///< What it can return, where its maker says it.
};

struct BypassRange {
    double floorPa = 0; ///< Of the return line and the open regulator: less it never holds.
    std::optional<double> ownPa = std::nullopt; ///< Of the floor, in the open regulator itself.
    double fromPa = 0;                          ///< The higher of floor and low end.
    double toPa = 0;
    bool overItsFlow = false; ///< More comes back than its maker allows.
    bool boreAssumed = false; ///< As in WholeLineLoss.

    [[nodiscard]] bool holds(double pressurePa) const noexcept
    {
        return pressurePa >= fromPa && pressurePa <= toPa;
    }
};

/// returnLine from regulator to tank; its flow is what the pump gives at that pressure less what
/// the engine surely burns: at idle nearly nothing. Problem: a figure outside the range named at
/// its field, or wholeLineLoss's own.
[[nodiscard]] Result<BypassRange> bypassRange(const BypassRegulator &regulator,
                                              const WholeLine &returnLine);

} // namespace flarestock
