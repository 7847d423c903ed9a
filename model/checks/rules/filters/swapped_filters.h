// SPDX-License-Identifier: MIT
//
// Swapped filters: the two around an electric pump that stand each in the other's place. That is
// one cause; that the fine one starves the pump and the coarse one protects nothing follows from
// it, and is not also told.

#pragma once

#include "model/checks/rules/build_under_check.h"

namespace flarestock::rules {

/// Below that an element before a pump starves it, µm: common practice, no source.
inline constexpr int StarvesBelowMicron = 75;

struct FilterPair {
    DirtStop before; ///< Nearest before the pump.
    DirtStop after;  ///< Nearest after it.
};

/// The pump's two filters where exchanging them would be right: the one before it is too fine for
/// its place and less than half as coarse as the other (so that no basis of a rating matters), the
/// other is coarse enough to stand before a pump, and nothing else leads to it than through the
/// first. Nothing where there are no two filters of known rating.
[[nodiscard]] std::optional<FilterPair> swappedAround(const BuildUnderCheck &build,
                                                      const PlacedStation &pump);

/// Whether a filter stands in such a pair of any electric pump.
[[nodiscard]] bool isSwapped(const BuildUnderCheck &build, const PlacedStation &filter);

/// Whether what stands before an electric pump is told to starve it, as a stop; then what follows
/// of it at the pump's inlet is no cause of its own.
[[nodiscard]] bool isStarvedByFilter(const BuildUnderCheck &build, const PlacedStation &pump);

/// Whether a pump before the user lacks its filter after it, which is told of the pump: then the
/// user's want of one is no cause of its own.
[[nodiscard]] bool isToldOfItsPump(const BuildUnderCheck &build, const PlacedStation &user);

/// What of the stations keeps dirt out, in their order.
[[nodiscard]] std::vector<DirtStop> stopsIn(const BuildUnderCheck::Stations &stations);
/// What keeps dirt out before the pump, nearest first; its own sock is nearest.
[[nodiscard]] std::vector<DirtStop> stopsBefore(const BuildUnderCheck &build,
                                                const PlacedStation &pump);
[[nodiscard]] std::vector<DirtStop> stopsAfter(const BuildUnderCheck &build,
                                               const PlacedStation &pump);
/// The finest of them whose rating is known, else the first; asserts that there is one.
[[nodiscard]] const DirtStop &finestOf(const std::vector<DirtStop> &stops);

} // namespace flarestock::rules
