// SPDX-License-Identifier: MIT
//
// Station choice: the part that stands at a station. The builder's pick before the template's own
// part before the best of what meets the demand.

#pragma once

#include "model/systems/expanding/ranking.h"
#include "model/systems/expanding/station_demand.h"
#include "model/systems/expansion.h"

namespace flarestock {

/// A port that a run uses, with the run's dash where that is known.
struct PortWish {
    std::string_view port;
    int dash = 0;
};

struct StationWish {
    const FlatStation *station = nullptr;
    std::vector<PortWish> ports;
    const Part *pick = nullptr;    ///< The builder's; nullptr where there is none.
    const Part *settled = nullptr; ///< The program's, where sizes were worked out by it.
};

/// Chooses and takes the part from the allotment. `notes` gets what no check can see.
/// Problem: a demand that cannot be read.
[[nodiscard]] Result<PlacedStation> chooseStation(const StationWish &wish, Preference preference,
                                                  Allotment &allotment,
                                                  std::vector<std::string> &notes);

} // namespace flarestock
