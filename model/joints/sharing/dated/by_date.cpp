// SPDX-License-Identifier: MIT

#include "model/joints/sharing/dated/by_date.h"

#include "model/joints/sharing/dated/build_choices.h"

#include <algorithm>

namespace flarestock {

namespace {

using Values = DatedTakings::Values;

class ChoosingByDate {
public:
    explicit ChoosingByDate(const ByDateRequest &request) : m_request(request), m_takings(request)
    {
    }

    ByDate done()
    {
        std::vector<std::vector<std::size_t>> firsts;
        for (const DatedJoints &build : m_request.builds)
            firsts.emplace_back(build.joints.size(), 0);
        take(firsts);
        m_by.isSearched = !isAtFloor();
        if (m_by.isSearched)
            search();
        addBound();
        return std::move(m_by);
    }

private:
    /// Each choice a joint of each build; a joint without a way has none, whatever stands there.
    void take(const std::vector<std::vector<std::size_t>> &ways)
    {
        m_values.clear();
        m_by.ranks.clear();
        m_by.chosen.clear();
        std::vector<int> left = leftAtFirst(m_takings);
        for (std::size_t build = 0; build < ways.size(); ++build) {
            const BuildChoices choices(m_request, m_takings, build);
            m_values.push_back(choices.valuesOf(ways[build], left));
            m_by.ranks.push_back(rankOf(m_values.back(), build));
            auto &chosen = m_by.chosen.emplace_back();
            for (std::size_t joint = 0; joint < ways[build].size(); ++joint)
                chosen.push_back(m_request.builds[build].joints[joint].ways.empty()
                                     ? std::nullopt
                                     : std::optional(ways[build][joint]));
            left = choices.leftBehind(ways[build], std::move(left));
        }
    }

    [[nodiscard]] WayRank rankOf(const Values &values, std::size_t build) const
    {
        const auto order = criteria(m_request.builds[build].order);
        const auto of = [&](Criterion criterion) {
            const auto at = std::find(order.begin(), order.end(), criterion) - order.begin();
            return values[static_cast<std::size_t>(at)];
        };
        using enum Criterion;
        WayRank rank;
        rank.unanswered = static_cast<int>(of(Unanswered));
        rank.toBuy = static_cast<int>(of(ToBuy));
        rank.pieces = static_cast<int>(of(Pieces));
        rank.cautions = static_cast<int>(of(Cautions));
        rank.unpriced = static_cast<int>(of(Unpriced));
        rank.costMicro = of(CostMicro);
        rank.narrow = static_cast<int>(of(Narrow));
        return rank;
    }

    /// The least that the joints of a build can come to, of the ways that are given or of all.
    [[nodiscard]] Values floorOf(std::size_t build, bool isOfAll) const
    {
        Values floor{};
        for (std::size_t joint = 0; joint < m_request.builds[build].joints.size(); ++joint) {
            Values least = m_takings.least(build, joint);
            if (const auto beyond = m_takings.leastBeyond(build, joint); isOfAll && beyond)
                least = std::min(least, *beyond);
            for (std::size_t i = 0; i < floor.size(); ++i)
                floor[i] += least[i];
        }
        return floor;
    }

    [[nodiscard]] bool isAtFloor() const
    {
        for (std::size_t build = 0; build < m_values.size(); ++build)
            if (m_takings.isAbove(m_values[build], floorOf(build, false), build))
                return false;
        return true;
    }

    /// Build by build, with all the lefts that are as good for those before it.
    void search()
    {
        LeftBehind lefts{{leftAtFirst(m_takings), {}}};
        for (std::size_t build = 0; build < m_request.builds.size(); ++build) {
            const BuildChoices choices(m_request, m_takings, build);
            BuildChoices::Best best = choices.best(lefts);
            if (best.isCut && !m_open)
                m_open = build;
            lefts = std::move(best.lefts);
        }
        const auto first =
            std::min_element(lefts.begin(), lefts.end(), [](const auto &one, const auto &other) {
                return one.second < other.second;
            });
        auto before = std::move(m_by);
        const auto valuesBefore = m_values;
        take(first->second);
        if (!isBetterThan(valuesBefore)) { // Some were cut off on the way.
            before.isSearched = m_by.isSearched;
            m_by = std::move(before);
            m_values = valuesBefore;
        }
        m_by.isSearched = true;
    }

    [[nodiscard]] bool isBetterThan(const std::vector<Values> &others) const
    {
        for (std::size_t build = 0; build < others.size(); ++build) {
            if (m_takings.isAbove(others[build], m_values[build], build))
                return true;
            if (m_takings.isAbove(m_values[build], others[build], build))
                return false;
        }
        return false;
    }

    /// The first build for which a way that is not given could be better, or as good and better for
    /// those behind it.
    [[nodiscard]] std::optional<std::size_t> openBeyond() const
    {
        for (std::size_t build = 0; build < m_values.size(); ++build) {
            const Values floor = floorOf(build, false);
            for (std::size_t joint = 0; joint < m_request.builds[build].joints.size(); ++joint) {
                auto beyond = m_takings.leastBeyond(build, joint);
                if (!beyond)
                    continue;
                const Values least = m_takings.least(build, joint);
                for (std::size_t i = 0; i < floor.size(); ++i)
                    (*beyond)[i] += floor[i] - least[i];
                const bool isLast = build + 1 == m_values.size();
                if (isLast ? m_takings.isAbove(m_values[build], *beyond, build)
                           : !m_takings.isAbove(*beyond, m_values[build], build))
                    return build;
            }
        }
        return std::nullopt;
    }

    /// From the first build on that is not proven, what comes to more than it could at least.
    void addBound()
    {
        const auto beyond = openBeyond();
        if (!beyond && !m_open)
            return;
        const std::size_t first =
            std::min(beyond.value_or(m_values.size()), m_open.value_or(m_values.size()));
        for (std::size_t build = first; build < m_values.size(); ++build) {
            const Values floor = floorOf(build, true);
            const std::size_t at = m_takings.differAt(floor, m_values[build], build);
            if (at == floor.size())
                continue;
            m_by.bound = ShareBound{build, criteria(m_request.builds[build].order)[at],
                                    std::max<std::int64_t>(0, floor[at])};
            m_by.asksForMore = beyond.has_value();
            return;
        }
    }

    const ByDateRequest &m_request;
    DatedTakings m_takings;
    ByDate m_by;
    std::vector<Values> m_values;      ///< By build, of what is chosen.
    std::optional<std::size_t> m_open; ///< The first build of which choices were cut off.
};

} // namespace

ByDate shareByDate(const ByDateRequest &request)
{
    if (request.builds.empty())
        return {};
    return ChoosingByDate(request).done();
}

} // namespace flarestock
