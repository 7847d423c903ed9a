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
// It chooses among the ways that it is given: JointRequest::best says how many those are.

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
};

struct ShareRequest {
    const Catalogue &catalogue;
    const Shelf &shelf;
    FreeLeft left; ///< What the joints may take; the rest is bought.
    WantOrder order = wantOrder(Preference::Shelf);
    std::vector<SharedJoint> joints;
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
    std::optional<ShareBound> bound; ///< Nothing: no choice of these ways is better.
};

/// `each` is the time that each criterion may take; a build takes hundredths of a second. Where it
/// runs out, the choice is at least as good as the first way of each joint.
[[nodiscard]] Shared share(const ShareRequest &request,
                           std::chrono::seconds each = std::chrono::seconds(5));

} // namespace flarestock
