// SPDX-License-Identifier: MIT

#include "model/joints/sharing/dated/build_choices.h"

#include <algorithm>

namespace flarestock {

namespace {

using Values = DatedTakings::Values;

/// Of so many lefts it is tried what can be had at any rate.
constexpr std::size_t LeftsTried = 16;

Values plus(Values sum, const Values &more)
{
    for (std::size_t i = 0; i < sum.size(); ++i)
        sum[i] += more[i];
    return sum;
}

} // namespace

std::vector<int> leftAtFirst(const DatedTakings &takings)
{
    std::vector<int> left;
    for (const auto &scarce : takings.scarce())
        left.push_back(scarce.left);
    return left;
}

BuildChoices::BuildChoices(const ByDateRequest &request, const DatedTakings &takings,
                           std::size_t build)
    : m_request(request), m_takings(takings), m_build(build), m_leastFrom(leastFrom())
{
    for (std::size_t place = 0; place < takings.scarce().size(); ++place)
        if (takings.scarce()[place].most[build] > 0)
            m_places.push_back(place);
}

std::size_t BuildChoices::joints() const
{
    return m_request.builds[m_build].joints.size();
}

std::size_t BuildChoices::waysOf(std::size_t joint) const
{
    return m_request.builds[m_build].joints[joint].ways.size();
}

std::vector<Values> BuildChoices::leastFrom() const
{
    std::vector<Values> from(joints() + 1, Values{});
    for (std::size_t joint = joints(); joint-- > 0;)
        from[joint] = plus(from[joint + 1], m_takings.least(m_build, joint));
    return from;
}

void BuildChoices::add(Counts &counts, Values &rest, const DatedTakings::Takes &takes) const
{
    rest = plus(rest, takes.rest);
    for (const auto &[place, count] : takes.scarce) {
        int &taken = counts.taken[place];
        taken = m_takings.scarce()[place].isOnce ? 1 : taken + count;
    }
}

Values BuildChoices::valuesOf(const Counts &counts, Values rest, bool isAtLeast) const
{
    for (const std::size_t place : m_places) {
        if (counts.taken[place] == 0)
            continue;
        const DatedTakings::Taken taken{m_build, place, counts.left[place], counts.taken[place]};
        const WayRank rank = isAtLeast ? m_takings.sumAtLeast(taken) : m_takings.sum(taken);
        rest = plus(rest, m_takings.valuesOf(rank, m_build));
    }
    return rest;
}

Values BuildChoices::valuesOf(const Ways &ways, const std::vector<int> &left) const
{
    Counts counts{left, std::vector<int>(left.size(), 0)};
    Values rest{};
    for (std::size_t joint = 0; joint < joints(); ++joint)
        if (waysOf(joint) > 0)
            add(counts, rest, m_takings.takes(m_build, joint, ways[joint]));
    return valuesOf(counts, rest, false);
}

std::vector<int> BuildChoices::leftBehind(const Ways &ways, std::vector<int> left) const
{
    Counts counts{std::move(left), {}};
    counts.taken.assign(counts.left.size(), 0);
    Values rest{};
    for (std::size_t joint = 0; joint < joints(); ++joint)
        if (waysOf(joint) > 0)
            add(counts, rest, m_takings.takes(m_build, joint, ways[joint]));
    for (std::size_t place = 0; place < counts.left.size(); ++place) {
        const auto &scarce = m_takings.scarce()[place];
        const int here = m_takings.here({m_build, place, counts.left[place], counts.taken[place]});
        const int shared = std::max(0, here - scarce.own[m_build]);
        counts.left[place] = std::min(counts.left[place] - shared, scarce.mostLater[m_build]);
    }
    return std::move(counts.left);
}

Values BuildChoices::reachedGreedily(const std::vector<int> &left) const
{
    Counts counts{left, std::vector<int>(left.size(), 0)};
    Values rest{};
    for (std::size_t joint = 0; joint < joints(); ++joint) {
        std::optional<Values> lowest;
        std::size_t best = 0;
        for (std::size_t way = 0; way < waysOf(joint); ++way) {
            Counts then = counts;
            Values more = rest;
            add(then, more, m_takings.takes(m_build, joint, way));
            const Values values = valuesOf(then, more, false);
            if (lowest && *lowest <= values)
                continue;
            lowest = values;
            best = way;
        }
        if (lowest)
            add(counts, rest, m_takings.takes(m_build, joint, best));
    }
    return valuesOf(counts, rest, false);
}

Values BuildChoices::reached(const LeftBehind &before) const
{
    std::optional<Values> lowest;
    std::size_t tried = 0;
    for (const auto &[left, ways] : before) {
        const Values values = valuesOf(Ways(joints(), 0), left);
        lowest = std::min(lowest.value_or(values), values);
        if (++tried <= LeftsTried)
            lowest = std::min(*lowest, reachedGreedily(left));
    }
    return *lowest;
}

/// The same choices, or those whose ways stand further in front.
bool BuildChoices::isFirst(const Chosen &one, const Chosen &other)
{
    return std::tie(one.rest, *one.before, one.ways) <
           std::tie(other.rest, *other.before, other.ways);
}

std::vector<std::size_t> BuildChoices::worthTrying(std::size_t joint, const Values &limit) const
{
    Values others = m_leastFrom.front();
    const Values least = m_takings.least(m_build, joint);
    for (std::size_t i = 0; i < others.size(); ++i)
        others[i] -= least[i];
    std::vector<std::size_t> worth;
    for (std::size_t way = 0; way < waysOf(joint); ++way)
        if (!m_takings.isAbove(plus(others, m_takings.takes(m_build, joint, way).least), limit,
                               m_build))
            worth.push_back(way);
    return worth;
}

BuildChoices::States BuildChoices::afterJoint(const States &states, std::size_t joint,
                                              const Values &limit) const
{
    const auto worth = worthTrying(joint, limit);
    States after;
    for (const auto &[counts, chosen] : states)
        for (const std::size_t way : worth) {
            Counts then = counts;
            Chosen more = chosen;
            add(then, more.rest, m_takings.takes(m_build, joint, way));
            const Values atLeast = plus(valuesOf(then, more.rest, true), m_leastFrom[joint + 1]);
            if (m_takings.isAbove(atLeast, limit, m_build))
                continue;
            more.ways.push_back(way);
            const auto [known, isNew] = after.try_emplace(std::move(then), more);
            if (!isNew && isFirst(more, known->second))
                known->second = std::move(more);
        }
    return after;
}

bool BuildChoices::cut(States &states, std::size_t joint) const
{
    if (states.size() <= m_request.statesMost)
        return false;
    std::vector<std::pair<Values, States::iterator>> lowest;
    for (auto at = states.begin(); at != states.end(); ++at)
        lowest.emplace_back(
            plus(valuesOf(at->first, at->second.rest, true), m_leastFrom[joint + 1]), at);
    std::stable_sort(lowest.begin(), lowest.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    for (std::size_t i = m_request.statesMost; i < lowest.size(); ++i)
        states.erase(lowest[i].second);
    return true;
}

LeftBehind BuildChoices::behind(const States &states) const
{
    std::optional<Values> lowest;
    for (const auto &[counts, chosen] : states) {
        const Values values = valuesOf(counts, chosen.rest, false);
        lowest = std::min(lowest.value_or(values), values);
    }
    LeftBehind behind;
    for (const auto &[counts, chosen] : states) {
        if (m_takings.isAbove(valuesOf(counts, chosen.rest, false), *lowest, m_build))
            continue;
        auto ways = *chosen.before;
        ways.push_back(chosen.ways);
        const auto [known, isNew] = behind.try_emplace(leftBehind(chosen.ways, counts.left), ways);
        if (!isNew && ways < known->second)
            known->second = std::move(ways);
    }
    return behind;
}

BuildChoices::Best BuildChoices::best(const LeftBehind &before) const
{
    const Values limit = reached(before);
    Best best;
    States states;
    for (const auto &[left, ways] : before)
        states.emplace(Counts{left, std::vector<int>(left.size(), 0)}, Chosen{{}, &ways, {}});
    for (std::size_t joint = 0; joint < joints(); ++joint) {
        if (waysOf(joint) == 0) {
            for (auto &[counts, chosen] : states)
                chosen.ways.push_back(0); // It is open whatever stands there.
            continue;
        }
        states = afterJoint(states, joint, limit);
        best.isCut = cut(states, joint) || best.isCut;
    }
    if (states.empty()) { // All that could have come as low as is known were cut off.
        auto &[left, ways] = *before.begin();
        auto then = ways;
        then.emplace_back(joints(), 0);
        best.lefts.emplace(leftBehind(then.back(), left), then);
        return best;
    }
    best.lefts = behind(states);
    return best;
}

} // namespace flarestock
