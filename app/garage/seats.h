// SPDX-License-Identifier: MIT
//
// Seats: where in a car the pieces are that a build put there. The build worked out says which part
// stands at which station, which hose makes which run, which ring is in which joint; its movements
// say which piece that was, and when.
//
// A position is "coupe-fuel/filters/prefilter" for a station, "….element" for the element in it,
// "coupe-fuel/supply.hose" for a run's hose, "coupe-fuel/supply.start.ring" for a joint's.

#pragma once

#include "app/workshop/worked_build.h"
#include "model/servicing/car_life.h"

namespace flarestock {

/// A position as people say it, and what protects it.
struct PositionWords {
    std::string said;   ///< "pre-filter, element"
    std::string filter; ///< Of a pump: the position of the filter before it; empty where none is.
    std::vector<std::string> joints; ///< Ids of those that are opened for the piece and have rings.
    std::map<std::string, std::int64_t> rings; ///< What they take anew, by part; smallest units.
    int flow = 0; ///< Its place in its build as the liquid flows, from 1 on.
};

struct BuiltSeats {
    std::vector<SeatedPiece> seats;
    std::map<std::string, PositionWords, std::less<>> words; ///< By position; also of empty ones.
};

/// `moved`: the movements of the build that stand, in their order, without those of servicings.
[[nodiscard]] BuiltSeats seatsOf(const WorkedBuild &worked, const BuildPlan &plan,
                                 const Workshop &workshop, const std::vector<Movement> &moved);

} // namespace flarestock
