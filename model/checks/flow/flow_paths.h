// SPDX-License-Identifier: MIT
//
// Flow paths: the runs through which a station draws, pushes or returns, from one end to the other.
// Where a line divides, the flow does so equally, for nobody says otherwise; a gauge or a roll-over
// valve takes nothing.
//
//   const auto drawn = flowPaths(expansion, *pump, Course::Drawn);
//   drawn.front().end->id; // the tank that it draws from

#pragma once

#include "model/systems/expansion.h"

namespace flarestock {

enum class Course : std::uint8_t {
    Drawn,    ///< From a tank to the station.
    Pushed,   ///< From the station to a regulator, a tank, another pump or a user of fuel.
    Returned, ///< From its return port to a tank.
};

struct FlowPath {
    std::vector<const PlacedRun *> runs; ///< In the sense of flow; one at least.
    const PlacedStation *end = nullptr;  ///< The other one: the tank drawn from, what is fed.
    double share = 1;                    ///< Of what the station draws or gives.
};

/// All of them, in the order of the runs; empty where none begins. A circle is walked once, and no
/// more than 64 are followed.
[[nodiscard]] std::vector<FlowPath> flowPaths(const Expansion &expansion,
                                              const PlacedStation &station, Course course);

/// Whether the station is a regulator that returns the surplus.
[[nodiscard]] bool isBypass(const PlacedStation &station) noexcept;

} // namespace flarestock
