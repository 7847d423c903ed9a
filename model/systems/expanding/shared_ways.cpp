// SPDX-License-Identifier: MIT

#include "model/systems/expanding/shared_ways.h"

#include "model/systems/expanding/allotment.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t WaysAlone = 8; ///< Of each joint, with the whole shelf for itself.

bool isOpenToChoice(const PlacedJoint &joint)
{
    return joint.way && !joint.picked && !joint.id.starts_with("plug:");
}

/// What is left for the joints that are chosen.
void takeWhatStands(const Expansion &made, Allotment &allotment)
{
    for (const PlacedStation &station : made.stations)
        if (station.part)
            allotment.take(*station.part, 1);
    for (const PlacedJoint &joint : made.joints)
        if (joint.way && !isOpenToChoice(joint))
            allotment.take(*joint.way);
}

/// The way that it has, then the others that it could have.
SharedJoint choiceOf(const PlacedJoint &joint, const std::vector<Way> &alone)
{
    SharedJoint choice{joint.from, joint.to, {*joint.way}, 0};
    const auto add = [&choice](const Way &way) {
        const std::string key = way.key();
        const bool isThere = std::any_of(choice.ways.begin(), choice.ways.end(),
                                         [&key](const Way &one) { return one.key() == key; });
        if (!isThere)
            choice.ways.push_back(way);
    };
    for (const Way &way : alone)
        add(way);
    for (const Way &way : joint.others)
        add(way);
    return choice;
}

} // namespace

SharedWays sharedWays(const ExpandRequest &request, const Expansion &made)
{
    const Shelf none;
    const Shelf &shelf = request.shelf ? *request.shelf : none;
    Allotment allotment(*request.catalogue, &shelf);
    takeWhatStands(made, allotment);
    const FreeLeft left = [&allotment](const Part &part) { return allotment.left(part); };
    JointShelf jointShelf = request.closer->jointShelf(shelf);
    for (const auto &[number, stock] : shelf)
        if (const Part *part = request.catalogue->find(number))
            jointShelf.setLeft(*part, allotment.left(*part));

    ShareRequest asked{*request.catalogue, shelf, left, wantOrder(request.preference), {}};
    std::vector<const PlacedJoint *> joints;
    for (const PlacedJoint &joint : made.joints) {
        if (!isOpenToChoice(joint))
            continue;
        JointRequest alone;
        alone.from = joint.from;
        alone.to = joint.to;
        alone.fluid = joint.fluid;
        alone.angleDegrees = joint.angleDegrees;
        alone.preference = request.preference;
        alone.best = WaysAlone;
        asked.joints.push_back(choiceOf(joint, request.closer->ways(alone, jointShelf)));
        joints.push_back(&joint);
    }
    const Shared shared = share(asked);
    SharedWays ways;
    ways.unproven = shared.bound;
    for (std::size_t i = 0; i < joints.size(); ++i)
        if (*shared.chosen[i] != 0)
            ways.ways[joints[i]->id] = asked.joints[i].ways[*shared.chosen[i]].key();
    if (ways.ways.empty())
        return ways;
    // All of them, or a joint that keeps its way would choose anew from another shelf.
    for (std::size_t i = 0; i < joints.size(); ++i)
        ways.ways[joints[i]->id] = asked.joints[i].ways[*shared.chosen[i]].key();
    return ways;
}

} // namespace flarestock
