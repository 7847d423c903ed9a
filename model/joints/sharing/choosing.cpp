// SPDX-License-Identifier: MIT

#include "model/joints/sharing/choosing.h"

namespace flarestock {

using Chosen = SharedTakings::Chosen;

Chosen firstWays(const ShareRequest &request)
{
    Chosen chosen;
    for (const SharedJoint &joint : request.joints)
        chosen.push_back(joint.ways.empty() ? std::nullopt : std::optional<std::size_t>(0));
    return chosen;
}

Choosing::Choosing(const ShareRequest &request, const SharedTakings &takings)
    : m_request(request), m_takings(takings)
{
    addWays();
    addOnce();
    for (std::size_t build = 0; build < takings.builds(); ++build) {
        addParts(build);
        for (const Criterion criterion : criteria(request.order))
            addAim(build, criterion);
    }
    m_programme.startWith(valuesOf(firstWays(request)));
}

Solution Choosing::solution(std::chrono::milliseconds within) const
{
    return m_programme.solve(within);
}

Chosen Choosing::chosen(const std::vector<std::int64_t> &values) const
{
    Chosen chosen;
    for (const auto &ways : m_ways) {
        chosen.emplace_back();
        for (std::size_t way = 0; way < ways.size(); ++way)
            if (values[ways[way]] == 1)
                chosen.back() = way;
    }
    return chosen;
}

void Choosing::addWays()
{
    for (const SharedJoint &joint : m_request.joints) {
        auto &ways = m_ways.emplace_back();
        LinearSum one;
        for (std::size_t way = 0; way < joint.ways.size(); ++way) {
            ways.push_back(m_programme.number(0, 1));
            one.push_back({ways.back(), 1});
            for (const auto &[part, count] : m_takings.counts(m_ways.size() - 1, way))
                m_takes.push_back({part, joint.build, {ways.back(), count}});
        }
        if (!one.empty())
            m_programme.keep(std::move(one), 1, 1);
    }
}

void Choosing::addOnce()
{
    std::map<std::pair<std::size_t, std::size_t>, LinearSum> users; // By part and build.
    std::vector<Taking> others;
    for (const Taking &taking : m_takes) {
        if (m_takings.parts()[taking.part].isOnce)
            users[{taking.part, taking.build}].push_back({taking.term.number, -1});
        else
            others.push_back(taking);
    }
    m_takes = std::move(others);
    for (auto &[of, ways] : users) {
        const std::size_t any = m_programme.number(0, 1);
        for (const Term &way : ways)
            m_programme.keep({{any, 1}, way}, 0, NoLimit::Above);
        m_takes.push_back({of.first, of.second, {any, 1}});
        m_once.push_back({any, ways});
        ways.push_back({any, 1});
        m_programme.keep(std::move(ways), NoLimit::Below, 0);
    }
}

void Choosing::addParts(std::size_t build)
{
    std::vector<LinearSum> taken(m_takings.parts().size());
    for (const Taking &taking : m_takes)
        if (taking.build <= build)
            taken[taking.part].push_back({taking.term.number, -taking.term.times});
    auto &ofBuild = m_counts.emplace_back();
    for (std::size_t part = 0; part < taken.size(); ++part) {
        auto &counts = ofBuild.emplace_back();
        LinearSum one;
        for (std::size_t count = 0; count < m_takings.parts()[part].byCount.size(); ++count) {
            counts.push_back(m_programme.number(0, 1));
            one.push_back({counts.back(), 1});
            taken[part].push_back({counts.back(), static_cast<std::int64_t>(count)});
        }
        m_programme.keep(std::move(one), 1, 1);
        m_programme.keep(std::move(taken[part]), 0, 0);
    }
}

void Choosing::addAim(std::size_t build, Criterion criterion)
{
    LinearSum sum;
    for (std::size_t joint = 0; joint < m_ways.size(); ++joint)
        for (std::size_t way = 0;
             m_request.joints[joint].build <= build && way < m_ways[joint].size(); ++way)
            sum.push_back({m_ways[joint][way], valueOf(m_takings.own(joint, way), criterion)});
    for (std::size_t part = 0; part < m_counts[build].size(); ++part)
        for (std::size_t count = 0; count < m_counts[build][part].size(); ++count)
            sum.push_back({m_counts[build][part][count],
                           valueOf(m_takings.parts()[part].byCount[count], criterion)});
    m_programme.aim(std::move(sum));
}

std::vector<std::int64_t> Choosing::valuesOf(const Chosen &chosen) const
{
    std::vector<std::int64_t> values(m_programme.size(), 0);
    for (std::size_t joint = 0; joint < m_ways.size(); ++joint)
        if (chosen[joint])
            values[m_ways[joint][*chosen[joint]]] = 1;
    for (const Once &once : m_once)
        for (const Term &way : once.ways)
            if (values[way.number] == 1)
                values[once.any] = 1;
    for (std::size_t build = 0; build < m_counts.size(); ++build) {
        const auto taken = m_takings.taken(chosen, build);
        for (std::size_t part = 0; part < taken.size(); ++part)
            values[m_counts[build][part][static_cast<std::size_t>(taken[part])]] = 1;
    }
    return values;
}

} // namespace flarestock
