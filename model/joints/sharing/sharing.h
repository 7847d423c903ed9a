// SPDX-License-Identifier: MIT
//
// Sharing: the joints of a build, or of several, take from one shelf. Of the ways that close each,
// one is chosen, so that together they are the best for the builder's order; a joint that takes the
// last fitting where another would have had to buy two gives way. Of several builds the earlier one
// comes before the later: what it takes is the best for it, and of what is as good for it that
// which leaves the later one the best.
//
//   share({catalogue, shelf, left, wantOrder(Preference::Shelf), joints}).chosen
//
// It chooses among the ways that it is given, and says whether one that was not could be better.
// Where each joint gets the best that it has alone, nothing is searched (alone.h).

#pragma once

#include "model/joints/closing.h"
#include "model/joints/sharing/way_order.h"

#include <chrono>

namespace flarestock {

/// A joint with the ways that close it. None: it stays open, and takes nothing.
struct SharedJoint {
    Port from;
    Port to;
    std::vector<Way> ways;
    std::size_t build = 0; ///< Builds are counted from 0 by date, the earliest first.
    /// Nothing: no other way closes it. Else there may be others, none better alone than this one.
    std::optional<std::size_t> last = std::nullopt;
};

struct ShareRequest {
    const Catalogue &catalogue;
    const Shelf &shelf;
    FreeLeft left; ///< What the joints may take; the rest is bought.
    WantOrder order = wantOrder(Preference::Shelf);
    std::vector<SharedJoint> joints;
    /// Of the ways that are not given: JointCloser::pricesFallTo().
    int pricesFallTo = 1000;
};

/// What the joints cannot go below together, where the choice is not proven to be the best.
struct ShareBound {
    std::size_t build = 0;           ///< Those before it are proven …
    Criterion of = Criterion::ToBuy; ///< … and of it the criteria that come before this one.
    std::int64_t atLeast = 0;        ///< Of that build's rank.
};

struct Shared {
    std::vector<std::optional<std::size_t>> chosen; ///< By joint: which way; nothing: open.
    /// By build: of its joints and those of the builds before it, all together. What they take,
    /// less what is free, is bought. At least one.
    std::vector<WayRank> ranks;
    std::optional<ShareBound> bound; ///< Nothing: no choice is better.
    bool isSearched = false;         ///< Not each joint had its best alone.
    bool asksForMore = false;        ///< The bound is that of ways that were not given.
};

/// Ends after about `within`; a build takes hundredths of a second, one whose joints do not stand
/// in each other's way far less. Where the time runs out, the choice is at least as good as the
/// first way of each joint.
[[nodiscard]] Shared share(const ShareRequest &request,
                           std::chrono::milliseconds within = std::chrono::seconds(5));

} // namespace flarestock
