// SPDX-License-Identifier: MIT
//
// Meeting: what happens at one link of a way. It is mating() with the aids that the link needs
// counted as present, because a way brings its rings and washers along; and for the cut end of a
// hose or tube, which has no seat of its own, it is what the hose end's maker lists.

#pragma once

#include "model/ports/mating.h"

namespace flarestock {

/// Symmetric in verdict and needs.
[[nodiscard]] Mating meeting(const Port &a, const Port &b);

/// The cut end of a hose or a tube.
[[nodiscard]] bool isCutEnd(const Port &port) noexcept;

/// A hose end on a hose that its maker lists, or a nut on the tube of its size. `cut` is a cut end
/// (asserted).
[[nodiscard]] Mating holding(const Port &cut);

/// The same joint of a hose and a barb where the hose's maker lets it be clamped.
[[nodiscard]] Mating clamped(const Port &hose, Mating bare);

/// The thread that a washer between the two goes over, as washers are listed: "M10x1", "G1/4",
/// "-6". Folded by foldedThread().
[[nodiscard]] std::string washerThread(const Port &a, const Port &b);
/// Blanks dropped, case folded, "M10x1.0" as "m10x1".
[[nodiscard]] std::string foldedThread(std::string_view thread);

} // namespace flarestock
