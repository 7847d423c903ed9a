// SPDX-License-Identifier: MIT
//
// Line choice: which hose or tubing can make a run, best first, and how long it has to be.

#pragma once

#include "model/systems/expanding/flattening.h"
#include "model/systems/expanding/ranking.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct LineWish {
    std::string tubing;       ///< Size of hard tube, "3/16"; empty for hose.
    int dash = 0;             ///< Of the hose; 0 where the template leaves it to the ports.
    std::string construction; ///< Hose series; empty for any that suits the fluid.
    std::optional<Fluid> fluid;
    Quantity length;
    std::optional<int> startAngle;
    std::optional<int> endAngle;

    [[nodiscard]] std::string text() const; ///< "hose -8 PTFE-S", "tubing 3/16"
};

/// Nothing for a run without a length: its two ports join directly.
/// Problem: a length, dash or angle that cannot be read; thing names the run.
[[nodiscard]] Result<std::optional<LineWish>> lineWishOf(const FlatRun &run);

/// Says of the placed run how far its end lies above and before its beginning; 0 stays where the
/// template does not. Problem: a text that is no length; thing names the run.
[[nodiscard]] Result<void> addRise(const FlatRun &run, PlacedRun &placed);

/// Hose or tubing by the length that answers the wish. Here means: one piece is long enough.
[[nodiscard]] std::vector<const Part *> linesFor(const LineWish &wish, Preference preference,
                                                 Allotment &allotment);

/// The same lines, and behind them what else suits the fluid: hose of any make, then of the next
/// size up and the next size down. Each once. Whether their joints can be closed is not asked.
[[nodiscard]] std::vector<const Part *> linesAround(const LineWish &wish, Preference preference,
                                                    Allotment &allotment);

/// The length in the line's unit, up to the tape mark. The line is counted by length (asserted).
[[nodiscard]] Quantity lengthFor(const LineWish &wish, const Part &line);

} // namespace flarestock
