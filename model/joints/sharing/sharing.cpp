// SPDX-License-Identifier: MIT

#include "model/joints/sharing/sharing.h"

#include "model/joints/sharing/alone.h"
#include "model/joints/sharing/choosing.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

using Chosen = SharedTakings::Chosen;

/// Where there are no more choices, each is tried: that takes less time than the library does.
constexpr std::size_t ChoicesTried = 256;

/// The best choice of all ways of a request, and how far that is proven.
class Sharing {
public:
    explicit Sharing(const ShareRequest &request)
        : m_request(request), m_takings(request), m_alone(request, m_takings)
    {
        take(firstWays(request));
    }

    Shared done(std::chrono::milliseconds within)
    {
        if (m_alone.isBelow(m_alone.floor(), m_values))
            search(within);
        lookBeyond();
        return std::move(m_shared);
    }

private:
    [[nodiscard]] Alone::Values valuesOf(const std::vector<WayRank> &ranks) const
    {
        Alone::Values all;
        for (const WayRank &rank : ranks) {
            const auto values = m_alone.valuesOf(rank);
            all.insert(all.end(), values.begin(), values.end());
        }
        return all;
    }

    /// Where it is better than what was taken before, or nothing was.
    void take(Chosen chosen)
    {
        std::vector<WayRank> ranks;
        for (std::size_t build = 0; build < m_takings.builds(); ++build)
            ranks.push_back(m_takings.together(chosen, build));
        auto values = valuesOf(ranks);
        if (!m_values.empty() && m_values <= values)
            return;
        m_shared.chosen = std::move(chosen);
        m_shared.ranks = std::move(ranks);
        m_values = std::move(values);
    }

    void search(std::chrono::milliseconds within)
    {
        m_shared.isSearched = true;
        std::vector<std::vector<std::size_t>> kept;
        std::size_t choices = 1; // No more than are tried are counted.
        for (std::size_t joint = 0; joint < m_request.joints.size(); ++joint) {
            kept.push_back(m_alone.worthTrying(joint));
            if (choices <= ChoicesTried)
                choices *= std::max<std::size_t>(1, kept.back().size());
        }
        if (choices <= ChoicesTried)
            tryAll(kept);
        else
            searchProgramme(kept, within);
    }

    void tryAll(const std::vector<std::vector<std::size_t>> &kept)
    {
        std::vector<std::size_t> places(kept.size(), 0);
        const auto chosen = [&] {
            Chosen ways;
            for (std::size_t joint = 0; joint < kept.size(); ++joint)
                ways.push_back(kept[joint].empty() ? std::nullopt
                                                   : std::optional(kept[joint][places[joint]]));
            return ways;
        };
        for (std::size_t joint = 0; joint < kept.size();) {
            take(chosen());
            for (joint = 0; joint < kept.size() && places[joint] + 1 >= kept[joint].size(); ++joint)
                places[joint] = 0;
            if (joint < kept.size())
                ++places[joint];
        }
    }

    void searchProgramme(const std::vector<std::vector<std::size_t>> &kept,
                         std::chrono::milliseconds within)
    {
        ShareRequest few{m_request.catalogue, m_request.shelf, m_request.left, m_request.order, {}};
        for (std::size_t joint = 0; joint < kept.size(); ++joint) {
            const SharedJoint &of = m_request.joints[joint];
            few.joints.push_back({of.from, of.to, {}, of.build});
            for (const std::size_t way : kept[joint])
                few.joints.back().ways.push_back(of.ways[way]);
        }
        const SharedTakings takings(few);
        const Choosing choosing(few, takings);
        const Solution solution = choosing.solution(within);
        if (solution.outcome != Solution::Outcome::Found) // Sums beyond what can be counted.
            return setBound(0, 0);
        Chosen chosen = choosing.chosen(solution.values);
        for (std::size_t joint = 0; joint < chosen.size(); ++joint)
            if (chosen[joint])
                chosen[joint] = kept[joint][*chosen[joint]];
        take(std::move(chosen));
        assert(m_values == solution.aims);
        if (!solution.isProven())
            setBound(solution.proven, *solution.bound);
    }

    /// Whether a joint that is closed by a way that is not given could bring it lower.
    void lookBeyond()
    {
        const auto floor = m_alone.floorBeyond();
        if (!floor || !m_alone.isBelow(*floor, m_values))
            return;
        const std::size_t at = m_alone.differAt(*floor, m_values);
        const std::int64_t atLeast = std::max<std::int64_t>(0, (*floor)[at]);
        if (m_shared.bound && std::pair(m_at, m_shared.bound->atLeast) <= std::pair(at, atLeast))
            return;
        setBound(at, atLeast);
        m_shared.asksForMore = true;
    }

    /// Not proven from this value on, which comes to at least so much.
    void setBound(std::size_t at, std::int64_t atLeast)
    {
        const auto order = criteria(m_request.order);
        m_at = at;
        m_shared.bound = ShareBound{at / order.size(), order[at % order.size()], atLeast};
    }

    const ShareRequest &m_request;
    SharedTakings m_takings;
    Alone m_alone;
    Shared m_shared;
    Alone::Values m_values; ///< Of m_shared.ranks.
    std::size_t m_at = 0;   ///< Of m_shared.bound, among the values.
};

} // namespace

Shared share(const ShareRequest &request, std::chrono::milliseconds within)
{
    return Sharing(request).done(within);
}

} // namespace flarestock
