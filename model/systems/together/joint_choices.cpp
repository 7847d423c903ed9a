// SPDX-License-Identifier: MIT

#include "model/systems/together/joint_choices.h"

#include "model/systems/expanding/plugging.h"

namespace flarestock {

namespace {

bool isPlug(const PlacedJoint &joint)
{
    return joint.id.starts_with("plug:");
}

} // namespace

JointChoices::JointChoices(const ExpandRequest &request, const Expansion &made)
    : m_request(request), m_shelf(request.shelf ? *request.shelf : m_none),
      m_allotment(*request.catalogue, &m_shelf), m_jointShelf(request.closer->jointShelf(m_shelf))
{
    for (const PlacedStation &station : made.stations)
        if (station.part) {
            m_allotment.take(*station.part, 1);
            m_jointShelf.setLeft(*station.part, m_allotment.left(*station.part));
        }
    for (const PlacedJoint &joint : made.joints)
        if (joint.way)
            m_joints.push_back(&joint);
}

std::vector<SharedJoint> JointChoices::choices(std::size_t most)
{
    std::vector<SharedJoint> choices;
    for (const PlacedJoint *joint : m_joints)
        choices.push_back(choiceOf(*joint, most));
    return choices;
}

SharedJoint JointChoices::choiceOf(const PlacedJoint &joint, std::size_t most)
{
    SharedJoint choice{joint.from, joint.to, {*joint.way}, 0};
    if (isPlug(joint))
        choice.from = choice.to = Port{}; // Nothing flows that could be throttled.
    if (joint.picked)
        return choice;
    std::vector<Way> ways = waysOf(joint, most);
    const bool isAll = isPlug(joint) || ways.size() < most;
    const std::string last = ways.empty() ? std::string() : ways.back().key();
    const std::string now = joint.way->key();
    for (Way &way : ways) {
        const std::string key = way.key();
        if (key != now)
            choice.ways.push_back(std::move(way));
        if (!isAll && key == last)
            choice.last = key == now ? 0 : choice.ways.size() - 1;
    }
    return choice;
}

std::vector<Way> JointChoices::waysOf(const PlacedJoint &joint, std::size_t most)
{
    JointRequest alone;
    alone.from = joint.from;
    alone.to = joint.to;
    alone.fluid = joint.fluid;
    alone.angleDegrees = joint.angleDegrees;
    alone.preference = m_request.preference;
    alone.best = isPlug(joint) ? WaysMost : most;
    if (!isPlug(joint))
        return m_request.closer->ways(alone, m_jointShelf);
    return Plugging(*m_request.closer, m_shelf, m_jointShelf, m_allotment).ways(alone);
}

} // namespace flarestock
