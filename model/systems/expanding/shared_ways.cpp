// SPDX-License-Identifier: MIT

#include "model/systems/expanding/shared_ways.h"

#include "model/systems/expanding/plugging.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

/// Of each joint, so many ways are looked at; where that leaves it open which is best, more.
constexpr std::array<std::size_t, 3> WaysAsked{8, 64, WaysMost};

bool isPlug(const PlacedJoint &joint)
{
    return joint.id.starts_with("plug:");
}

class ChoosingTogether {
public:
    ChoosingTogether(const ExpandRequest &request, const Expansion &made)
        : m_request(request), m_shelf(request.shelf ? *request.shelf : m_none),
          m_allotment(*request.catalogue, &m_shelf),
          m_left([this](const Part &part) { return m_allotment.left(part); }),
          m_jointShelf(request.closer->jointShelf(m_shelf)), m_asked{*request.catalogue,
                                                                     m_shelf,
                                                                     m_left,
                                                                     wantOrder(request.preference),
                                                                     {}}
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

    SharedWays chosen()
    {
        Shared shared;
        for (const std::size_t most : WaysAsked) {
            ask(most);
            shared = share(m_asked, m_request.searchWithin / WaysAsked.size());
            if (!shared.asksForMore)
                break;
        }
        SharedWays chosen;
        chosen.together = {shared.ranks.back(), shared.bound, shared.isSearched};
        const auto isAsItStands = [](const std::optional<std::size_t> &way) { return *way == 0; };
        if (std::all_of(shared.chosen.begin(), shared.chosen.end(), isAsItStands))
            return chosen;
        // All of them, or a joint that keeps its way would choose anew from another shelf.
        for (std::size_t i = 0; i < m_joints.size(); ++i)
            if (!m_joints[i]->picked)
                chosen.ways[m_joints[i]->id] = m_asked.joints[i].ways[*shared.chosen[i]].key();
        return chosen;
    }

private:
    void ask(std::size_t most)
    {
        m_asked.joints.clear();
        for (const PlacedJoint *joint : m_joints)
            m_asked.joints.push_back(choiceOf(*joint, most));
    }

    /// The way that it has, then the others that it could have.
    SharedJoint choiceOf(const PlacedJoint &joint, std::size_t most)
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

    std::vector<Way> waysOf(const PlacedJoint &joint, std::size_t most)
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

    const ExpandRequest &m_request;
    const Shelf m_none;
    const Shelf &m_shelf;
    Allotment m_allotment; ///< What the stations leave.
    FreeLeft m_left;
    JointShelf m_jointShelf; ///< As m_left.
    ShareRequest m_asked;
    std::vector<const PlacedJoint *> m_joints; ///< Those that are closed.
};

} // namespace

SharedWays sharedWays(const ExpandRequest &request, const Expansion &made)
{
    return ChoosingTogether(request, made).chosen();
}

} // namespace flarestock
