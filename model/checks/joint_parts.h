// SPDX-License-Identifier: MIT
//
// Joint parts: whose ports meet at each link of a joint. A way knows only its pieces; what it
// begins at (the station's part) and ends at (the line, or the other station's part) stands in the
// expansion.

#pragma once

#include "model/systems/expansion.h"

namespace flarestock {

/// The part of the joint's station, the pieces, then what the way leads to: the run's line, or for
/// a direct joint the other station's part; a plug is the last piece. Link i joins part i with part
/// i + 1. nullptr where no part stands; only the station's part where the joint is open.
[[nodiscard]] std::vector<const Part *> partsOf(const PlacedJoint &joint,
                                                const Expansion &expansion);

/// A link of a joint with the two parts whose ports it joins; either may be nullptr.
struct PartedLink {
    const Link *link = nullptr;
    const Part *a = nullptr;
    const Part *b = nullptr;
};
[[nodiscard]] std::vector<PartedLink> linksOf(const PlacedJoint &joint, const Expansion &expansion);

/// Whether a run's joint, or one that is plugged, lies under the pressure of the system: on the
/// pressure level, or at a station that a run of the pressure level begins or ends at.
[[nodiscard]] bool isUnderPressure(const PlacedJoint &joint, const Expansion &expansion);

} // namespace flarestock
