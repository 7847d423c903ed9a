// SPDX-License-Identifier: MIT

#include "model/systems/together/ways_by_date.h"

#include "model/joints/sharing/dated/by_date.h"
#include "model/systems/together/joint_choices.h"

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

class ChoosingByDate {
public:
    explicit ChoosingByDate(const WaysByDateAsked &asked) : m_asked(asked)
    {
        m_request.left = asked.left;
        for (const DatedBuild &build : asked.builds) {
            m_builds.push_back(std::make_unique<JointChoices>(*build.request, *build.made));
            addBuild(*build.request, *m_builds.back());
        }
    }

    WaysByDate done()
    {
        ByDate shared;
        for (const std::size_t most : WaysAsked) {
            for (std::size_t build = 0; build < m_builds.size(); ++build)
                m_request.builds[build].joints = m_builds[build]->choices(most);
            shared = shareByDate(m_request);
            if (!shared.asksForMore)
                break;
        }
        WaysByDate by{{}, shared.ranks, shared.bound, shared.isSearched, partsOfWays()};
        const auto isAsItStands = [](const std::optional<std::size_t> &way) { return *way == 0; };
        for (const auto &ofBuild : shared.chosen)
            if (!std::all_of(ofBuild.begin(), ofBuild.end(), isAsItStands)) {
                by.ways = waysOf(shared);
                break;
            }
        return by;
    }

private:
    void addBuild(const ExpandRequest &of, JointChoices &choices)
    {
        DatedJoints joints{{*of.catalogue,
                            choices.shelf(),
                            [&choices](const Part &part) { return choices.left(part); },
                            wantOrder(of.preference),
                            {},
                            of.closer->pricesFallTo()},
                           {}};
        joints.own = [this, &choices](const Part &part) {
            return choices.left(part) - m_asked.left(part);
        };
        m_request.builds.push_back(std::move(joints));
    }

    [[nodiscard]] std::vector<Picks> waysOf(const ByDate &shared) const
    {
        std::vector<Picks> ways;
        for (std::size_t build = 0; build < m_builds.size(); ++build) {
            Picks &ofBuild = ways.emplace_back();
            const auto &joints = m_builds[build]->joints();
            for (std::size_t i = 0; i < joints.size(); ++i)
                if (!joints[i]->picked)
                    ofBuild[joints[i]->id] =
                        m_request.builds[build].joints[i].ways[*shared.chosen[build][i]].key();
        }
        return ways;
    }

    [[nodiscard]] std::set<const Part *> partsOfWays() const
    {
        std::set<const Part *> parts;
        for (const DatedJoints &build : m_request.builds)
            for (const SharedJoint &joint : build.joints)
                for (const Way &way : joint.ways) {
                    for (const Piece &piece : way.pieces)
                        parts.insert(piece.part);
                    for (const WayAid &aid : way.aids)
                        if (aid.part)
                            parts.insert(aid.part);
                }
        return parts;
    }

    const WaysByDateAsked &m_asked;
    ByDateRequest m_request;
    std::vector<std::unique_ptr<JointChoices>> m_builds;
};

} // namespace

WaysByDate waysByDate(const WaysByDateAsked &asked)
{
    if (asked.builds.empty())
        return {};
    return ChoosingByDate(asked).done();
}

} // namespace flarestock
