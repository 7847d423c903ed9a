// SPDX-License-Identifier: MIT
//
// Ways by date: how the joints of several builds are closed when they are chosen together, the
// earliest build first (model/joints/sharing/dated/by_date.h says what is the best then). Stations
// and lines stay as they are.
//
//   waysByDate({builds, left}).ways

#pragma once

#include "model/systems/expand.h"

#include <set>

namespace flarestock {

struct DatedBuild {
    /// Its shelf is what it could take if no other build took anything. It stays alive.
    const ExpandRequest *request = nullptr;
    const Expansion *made = nullptr; ///< As it stands, after the builds before it took theirs.
};

struct WaysByDateAsked {
    std::vector<DatedBuild> builds; ///< The earliest first; of one catalogue.
    FreeLeft left;                  ///< What any of them may take.
};

struct WaysByDate {
    /// By build and joint, as a pick says it: of all joints that are closed and not picked. Empty
    /// where the joints stand at their best already.
    std::vector<Picks> ways;
    std::vector<WayRank> ranks;      ///< By build, of its own joints.
    std::optional<ShareBound> bound; ///< Nothing: no choice of ways is better.
    bool isSearched = false;         ///< Not each joint had its best alone.
    std::set<const Part *> parts;    ///< That some way takes.
};

[[nodiscard]] WaysByDate waysByDate(const WaysByDateAsked &asked);

} // namespace flarestock
