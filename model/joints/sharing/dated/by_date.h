// SPDX-License-Identifier: MIT
//
// By date: the joints of several builds that take from one shelf, the earliest build first. A
// choice of one way for each joint is the best by date where
//
//   - of the earliest build nothing comes lower by what it looks at, one criterion after the other
//     (criteria()), all that is left to take being there for it;
//   - of the choices that are as good for the earliest, none comes lower for the second one, with
//     what the earliest leaves; of those that are as good for both, none for the third one; and so
//     on.
//
// So no build pays for a later one, and none takes what a later one needs where something else is
// as good for it. What a build comes to is what its own bill says: what it takes of the shelf at
// its carried cost, what it buys at the price for its own number. Costs that differ by less than
// CostSlack are the same, because each part's is rounded.
//
//   shareByDate({left, {{{catalogue, shelf, ofIt, order, joints}, own}, …}}).chosen
//
// The joints are gone through one after the other. Of what was chosen so far only counts that can
// matter later are kept: how many are taken of each part that may run short, and what the rest
// comes to; of two choices with the same counts the lower one is as good for whatever follows. What
// cannot come as low as something that is known is dropped. At most `statesMost` are kept side by
// side, so that how far it is proven does not depend on how fast the machine is.

#pragma once

#include "model/joints/sharing/sharing.h"

namespace flarestock {

/// Of a build: its `left` is all that it could take if no other build took anything, its shelf says
/// what that costs, and SharedJoint::build is passed over.
struct DatedJoints : ShareRequest {
    FreeLeft own; ///< What of it no other build may take; it is taken first.
};

struct ByDateRequest {
    FreeLeft left;                   ///< What any build may take.
    std::vector<DatedJoints> builds; ///< The earliest first, all of one catalogue.
    std::size_t statesMost = 512;    ///< More than zero.
};

struct ByDate {
    /// By build and joint: which way; nothing: open.
    std::vector<std::vector<std::optional<std::size_t>>> chosen;
    std::vector<WayRank> ranks; ///< By build, of its own joints.
    /// Nothing: no choice is better by date, of the ways that are given and of those that are not.
    /// Else builds before it are proven, and of that build the criteria before that one.
    std::optional<ShareBound> bound;
    bool isSearched = false;  ///< Not each joint had the best that it can have at all.
    bool asksForMore = false; ///< More ways of each joint could prove it.
};

/// No worse, by date, than the first way of each joint.
[[nodiscard]] ByDate shareByDate(const ByDateRequest &request);

} // namespace flarestock
