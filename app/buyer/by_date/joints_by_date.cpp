// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/joints_by_date.h"

#include "model/joints/sharing/alone.h"
#include "model/systems/together/ways_by_date.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

/// The builds of a command may search so long, each for its own joints.
constexpr std::chrono::milliseconds SearchWithin = std::chrono::seconds(5);

using Ranks = std::vector<WayRank>;

Ranks ranksOf(const TakingByDate &taking)
{
    Ranks ranks;
    for (const auto &taken : taking.builds())
        ranks.push_back(taken->worked.expansion.together->rank);
    return ranks;
}

Preference preferenceOf(const TakingByDate::Taken &taken)
{
    return *parsePreference(taken.plan.preference); // It is worked out already.
}

/// By how much a build differs; costs that were rounded on other ways are the same.
std::int64_t difference(const WayRank &one, const WayRank &other, Criterion criterion)
{
    const std::int64_t by = valueOf(one, criterion) - valueOf(other, criterion);
    return criterion == Criterion::CostMicro && std::abs(by) <= CostSlack ? 0 : by;
}

/// A build and what it looks at.
using Open = std::pair<std::size_t, Criterion>;

/// How many of each part the joints of an expansion take; of sealant one bottle.
std::map<const Part *, int> takenByJoints(const Expansion &build)
{
    std::map<const Part *, int> taken;
    for (const PlacedJoint &joint : build.joints) {
        if (!joint.way)
            continue;
        for (const Piece &piece : joint.way->pieces)
            ++taken[piece.part];
        for (const WayAid &aid : joint.way->aids)
            if (aid.part)
                taken[aid.part] += aid.need.count;
    }
    for (auto &[part, count] : taken)
        if (isUsedByMeasure(part->kind))
            count = 1;
    return taken;
}

class ChoosingTogether {
public:
    ChoosingTogether(const Workshop &workshop, const Bars &bars,
                     const std::vector<BuildPlan> &plans)
        : m_workshop(workshop), m_bars(bars), m_plans(plans),
          m_common(withLevels(workshop.ledger.shelf(workshop.catalogue, {{}, nullptr, &bars}),
                              workshop.notes, workshop.catalogue))
    {
    }

    Result<JointsByDate> done()
    {
        auto alone = taken({});
        if (!alone)
            return tl::unexpected(alone.error());
        m_best = m_alone = std::move(*alone);
        if (m_plans.size() < 2)
            return saidAlone();
        m_reckoned = reckoned();
        if (!m_reckoned.ways.empty() && firstDifference(ranksOf(*m_alone), m_reckoned.ranks)) {
            auto tried = taken(m_reckoned.ways);
            if (!tried)
                return tl::unexpected(tried.error());
            if (isBetter(**tried, *m_best))
                m_best = std::move(*tried);
        }
        return said();
    }

private:
    using Taking = std::shared_ptr<const TakingByDate>;

    /// Each build with the best for itself, and with those ways where none are better.
    [[nodiscard]] Result<Taking> taken(const std::vector<Picks> &ways) const
    {
        auto taking = std::make_unique<TakingByDate>(m_workshop, m_bars);
        for (std::size_t build = 0; build < m_plans.size(); ++build) {
            JointSearch search{SearchWithin / m_plans.size(), {}};
            if (!ways.empty())
                search.waysWished = ways[build];
            if (auto done = taking->take(m_plans[build], search); !done)
                return tl::unexpected(done.error());
        }
        return Taking(std::move(taking));
    }

    /// The best by date, as if any build could take what no lot and no other line keeps from it:
    /// that is never less than what it can.
    [[nodiscard]] WaysByDate reckoned() const
    {
        std::vector<Shelf> shelves;
        std::vector<ExpandRequest> requests(m_plans.size());
        ShelfInTurn shelf(m_workshop, m_bars);
        for (const auto &build : m_alone->builds())
            shelves.push_back(shelf.of(build->plan, m_workshop.ledger));
        WaysByDateAsked asked;
        asked.left = [this](const Part &part) {
            const auto on = m_common.find(part.number);
            return on == m_common.end() ? Decimal() : on->second.usable();
        };
        for (std::size_t build = 0; build < requests.size(); ++build) {
            const auto &of = *m_alone->builds()[build];
            requests[build].catalogue = &m_workshop.catalogue;
            requests[build].closer = m_workshop.closer.get();
            requests[build].preference = preferenceOf(of);
            requests[build].shelf = &shelves[build];
            asked.builds.push_back({&requests[build], &of.worked.expansion});
        }
        return waysByDate(asked);
    }

    /// Whether the builds of one are better off than those of the other, the earliest first.
    [[nodiscard]] bool isBetter(const TakingByDate &one, const TakingByDate &other) const
    {
        const auto open = firstDifference(ranksOf(one), ranksOf(other));
        return open &&
               difference(ranksOf(one)[open->first], ranksOf(other)[open->first], open->second) < 0;
    }

    [[nodiscard]] std::optional<Open> firstDifference(const Ranks &one, const Ranks &other) const
    {
        for (std::size_t build = 0; build < one.size(); ++build)
            for (const Criterion criterion : orderOf(build))
                if (difference(one[build], other[build], criterion) != 0)
                    return Open(build, criterion);
        return std::nullopt;
    }

    [[nodiscard]] std::vector<Criterion> orderOf(std::size_t build) const
    {
        return criteria(wantOrder(preferenceOf(*m_alone->builds()[build])));
    }

    [[nodiscard]] JointsByDate saidAlone() const
    {
        JointsByDate by{m_best, {}};
        if (m_plans.empty())
            return by;
        const auto &only = *m_best->builds().front()->worked.expansion.together;
        by.together.builds.push_back({m_plans.front().id, only.rank});
        by.together.isSearched = only.isSearched;
        if (only.bound)
            by.together.bound = {m_plans.front().id, only.bound->of, only.bound->atLeast,
                                 valueOf(only.rank, only.bound->of)};
        return by;
    }

    [[nodiscard]] JointsByDate said() const
    {
        const Ranks is = ranksOf(*m_best);
        JointsByDate by{m_best, {}};
        for (std::size_t build = 0; build < is.size(); ++build)
            by.together.builds.push_back({m_plans[build].id, is[build]});
        by.together.isSearched = m_reckoned.isSearched;
        if (const auto bound = boundOf(is))
            by.together.bound = {m_plans[bound->build].id, bound->of, bound->atLeast,
                                 valueOf(is[bound->build], bound->of)};
        return by;
    }

    /// The first that is not proven: what was reckoned leaves it open, the builds do not come to
    /// what was reckoned, or it does not hold that having less is never better.
    [[nodiscard]] std::optional<ShareBound> boundOf(const Ranks &is) const
    {
        std::optional<ShareBound> first = m_reckoned.bound;
        const auto isBefore = [this, &first](const Open &open) {
            return !first || std::pair(open.first, placeOf(open)) <
                                 std::pair(first->build, placeOf({first->build, first->of}));
        };
        if (const auto open = firstDifference(is, m_reckoned.ranks); open && isBefore(*open)) {
            const auto reckoned = valueOf(m_reckoned.ranks[open->first], open->second);
            first = ShareBound{open->first, open->second,
                               std::min(reckoned, valueOf(is[open->first], open->second))};
        }
        if (const auto build = firstByMoney())
            if (const Open open(*build, Criterion::CostMicro); isBefore(open))
                first = ShareBound{*build, Criterion::CostMicro, 0};
        return first;
    }

    [[nodiscard]] std::ptrdiff_t placeOf(const Open &open) const
    {
        const auto order = orderOf(open.first);
        return std::find(order.begin(), order.end(), open.second) - order.begin();
    }

    /// The first build that wants money before all where a part is kept from some build: to have
    /// less on the shelf may be cheaper then, where it cost more than the supplier asks.
    [[nodiscard]] std::optional<std::size_t> firstByMoney() const
    {
        const auto isMoney = [](const auto &build) {
            return preferenceOf(*build) == Preference::Money;
        };
        const auto &builds = m_alone->builds();
        const auto found = std::find_if(builds.begin(), builds.end(), isMoney);
        if (found == builds.end() || !isSomethingKept())
            return std::nullopt;
        return static_cast<std::size_t>(found - builds.begin());
    }

    /// Whether a lot of what the joints could take is barred to a build, or other lines take of it.
    [[nodiscard]] bool isSomethingKept() const
    {
        for (const auto &[build, lots] : m_bars)
            for (const LotKey &lot : lots)
                if (m_reckoned.parts.contains(m_workshop.catalogue.find(lot.part)))
                    return true;
        for (const auto &build : m_best->builds()) {
            const auto ofJoints = takenByJoints(build->worked.expansion);
            for (const BillLine &line : build->worked.expansion.lines) {
                const auto found = ofJoints.find(line.part);
                const Decimal taken(found == ofJoints.end() ? 0 : found->second);
                if (m_reckoned.parts.contains(line.part) && taken != line.need.amount)
                    return true;
            }
        }
        return false;
    }

    const Workshop &m_workshop;
    const Bars &m_bars;
    const std::vector<BuildPlan> &m_plans;
    Shelf m_common; ///< What any build may take.
    Taking m_alone; ///< As each has its joints best by itself.
    Taking m_best;
    WaysByDate m_reckoned;
};

} // namespace

Result<JointsByDate> jointsByDate(const Workshop &workshop, const Bars &bars,
                                  const std::vector<BuildPlan> &plans)
{
    return ChoosingTogether(workshop, bars, plans).done();
}

} // namespace flarestock
