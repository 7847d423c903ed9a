// SPDX-License-Identifier: MIT

#include "model/joints/sharing/sharing.h"

#include "model/joints/sharing/shared_takings.h"
#include "model/programme/programme.h"

#include <cassert>

namespace flarestock {

namespace {

using Chosen = std::vector<std::optional<std::size_t>>;

/// One number for each way (it is taken or not), and for each part one for each count of it that
/// may be taken (it is that count or not).
class Choosing {
public:
    Choosing(const ShareRequest &request, const SharedTakings &takings)
        : m_request(request), m_takings(takings)
    {
        addWays();
        addParts();
        for (const Criterion criterion : criteria(request.order))
            addAim(criterion);
        m_programme.startWith(firsts());
    }

    [[nodiscard]] Solution solution(std::chrono::seconds each) const
    {
        return m_programme.solve(each);
    }

    [[nodiscard]] Chosen chosen(const std::vector<std::int64_t> &values) const
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

private:
    void addWays()
    {
        for (const SharedJoint &joint : m_request.joints) {
            auto &ways = m_ways.emplace_back();
            LinearSum one;
            for (std::size_t way = 0; way < joint.ways.size(); ++way) {
                ways.push_back(m_programme.number(0, 1));
                one.push_back({ways.back(), 1});
            }
            if (!one.empty())
                m_programme.keep(std::move(one), 1, 1);
        }
    }

    void addParts()
    {
        std::vector<LinearSum> taken(m_takings.parts().size());
        for (std::size_t joint = 0; joint < m_ways.size(); ++joint)
            for (std::size_t way = 0; way < m_ways[joint].size(); ++way)
                for (const auto &[part, count] : m_takings.counts(joint, way))
                    taken[part].push_back({m_ways[joint][way], -count});
        for (std::size_t part = 0; part < taken.size(); ++part) {
            const auto &row = m_takings.parts()[part];
            auto &counts = m_counts.emplace_back();
            LinearSum one;
            for (std::size_t count = 0; count < row.byCount.size(); ++count) {
                counts.push_back(m_programme.number(0, 1));
                one.push_back({counts.back(), 1});
                if (!row.isOnce)
                    taken[part].push_back({counts.back(), static_cast<std::int64_t>(count)});
            }
            m_programme.keep(std::move(one), 1, 1);
            if (row.isOnce)
                keepOnce(taken[part], counts);
            else
                m_programme.keep(std::move(taken[part]), 0, 0);
        }
    }

    /// It is taken where any of the ways that take it is, and else not.
    void keepOnce(const LinearSum &taken, const std::vector<std::size_t> &counts)
    {
        LinearSum any{{counts[1], 1}};
        for (const Term &way : taken) {
            m_programme.keep({{counts[1], 1}, way}, 0, NoLimit::Above);
            any.push_back(way);
        }
        m_programme.keep(std::move(any), NoLimit::Below, 0);
    }

    void addAim(Criterion criterion)
    {
        LinearSum sum;
        for (std::size_t joint = 0; joint < m_ways.size(); ++joint)
            for (std::size_t way = 0; way < m_ways[joint].size(); ++way)
                sum.push_back({m_ways[joint][way], valueOf(m_takings.own(joint, way), criterion)});
        for (std::size_t part = 0; part < m_counts.size(); ++part)
            for (std::size_t count = 0; count < m_counts[part].size(); ++count)
                sum.push_back({m_counts[part][count],
                               valueOf(m_takings.parts()[part].byCount[count], criterion)});
        m_programme.aim(std::move(sum));
    }

    /// The first way of each joint, with the counts that follow.
    [[nodiscard]] std::vector<std::int64_t> firsts() const
    {
        std::vector<std::int64_t> values(m_programme.size(), 0);
        std::vector<std::size_t> taken(m_counts.size(), 0);
        for (std::size_t joint = 0; joint < m_ways.size(); ++joint) {
            if (m_ways[joint].empty())
                continue;
            values[m_ways[joint].front()] = 1;
            for (const auto &[part, count] : m_takings.counts(joint, 0))
                taken[part] = m_takings.parts()[part].isOnce
                                  ? 1
                                  : taken[part] + static_cast<std::size_t>(count);
        }
        for (std::size_t part = 0; part < m_counts.size(); ++part)
            values[m_counts[part][taken[part]]] = 1;
        return values;
    }

    const ShareRequest &m_request;
    const SharedTakings &m_takings;
    Programme m_programme;
    std::vector<std::vector<std::size_t>> m_ways;   ///< By joint and way: its number.
    std::vector<std::vector<std::size_t>> m_counts; ///< By part and count: its number.
};

Chosen firstWays(const ShareRequest &request)
{
    Chosen chosen;
    for (const SharedJoint &joint : request.joints)
        chosen.push_back(joint.ways.empty() ? std::nullopt : std::optional<std::size_t>(0));
    return chosen;
}

} // namespace

Shared share(const ShareRequest &request, std::chrono::seconds each)
{
    const SharedTakings takings(request);
    const Choosing choosing(request, takings);
    const Solution solution = choosing.solution(each);
    const auto order = criteria(request.order);
    const bool isFound = solution.outcome == Solution::Outcome::Found;
    Shared shared;
    shared.chosen = isFound ? choosing.chosen(solution.values) : firstWays(request);
    shared.rank = takings.together(shared.chosen);
    for (std::size_t i = 0; isFound && i < order.size(); ++i)
        assert(valueOf(shared.rank, order[i]) == solution.aims[i]);
    if (!isFound)
        shared.bound = ShareBound{order.front(), 0};
    else if (!solution.isProven())
        shared.bound = ShareBound{order[solution.proven], *solution.bound};
    return shared;
}

} // namespace flarestock
