// SPDX-License-Identifier: MIT

#include "model/systems/together/shared_ways.h"

#include "model/systems/together/joint_choices.h"

#include <algorithm>

namespace flarestock {

SharedWays sharedWays(const ExpandRequest &request, const Expansion &made)
{
    JointChoices joints(request, made);
    ShareRequest asked{*request.catalogue,
                       joints.shelf(),
                       [&joints](const Part &part) { return joints.left(part); },
                       wantOrder(request.preference),
                       {},
                       request.closer->pricesFallTo()};
    Shared shared;
    for (const std::size_t most : WaysAsked) {
        asked.joints = joints.choices(most);
        shared = share(asked, request.searchWithin / WaysAsked.size());
        if (!shared.asksForMore)
            break;
    }
    SharedWays chosen;
    chosen.together = {shared.ranks.back(), shared.bound, shared.isSearched};
    const auto isAsItStands = [](const std::optional<std::size_t> &way) { return *way == 0; };
    if (std::all_of(shared.chosen.begin(), shared.chosen.end(), isAsItStands))
        return chosen;
    // All of them, or a joint that keeps its way would choose anew from another shelf.
    for (std::size_t i = 0; i < joints.joints().size(); ++i)
        if (const PlacedJoint &joint = *joints.joints()[i]; !joint.picked)
            chosen.ways[joint.id] = asked.joints[i].ways[*shared.chosen[i]].key();
    return chosen;
}

} // namespace flarestock
