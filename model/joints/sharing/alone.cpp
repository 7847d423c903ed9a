// SPDX-License-Identifier: MIT

#include "model/joints/sharing/alone.h"

#include "model/joints/supplies.h"

#include <algorithm>
#include <numeric>

namespace flarestock {

namespace {

using Values = Alone::Values;

Values &operator+=(Values &sum, const Values &more)
{
    for (std::size_t i = 0; i < sum.size(); ++i)
        sum[i] += more[i];
    return sum;
}

std::size_t placeOf(const std::vector<Criterion> &order, Criterion criterion)
{
    return static_cast<std::size_t>(std::find(order.begin(), order.end(), criterion) -
                                    order.begin());
}

/// The least that so many can come to, whatever else is taken: what is to buy is to buy at least
/// then, and none costs less than where it is cheapest by the number.
WayRank leastOf(const SharedTakings::PartRow &row, int count)
{
    WayRank least = row.byCount[static_cast<std::size_t>(count)];
    for (std::size_t all = 1; all < row.byCount.size(); ++all) {
        const std::int64_t each = row.byCount[all].costMicro / static_cast<std::int64_t>(all);
        least.costMicro = std::min(least.costMicro, each * count);
    }
    return least;
}

} // namespace

Alone::Alone(const ShareRequest &request, const SharedTakings &takings)
    : m_request(request), m_takings(takings), m_order(criteria(request.order))
{
    for (const auto &row : takings.parts())
        m_growths.push_back(growthOf(row));
    for (std::size_t joint = 0; joint < request.joints.size(); ++joint) {
        Values best(m_order.size(), 0);
        for (std::size_t way = 0; way < request.joints[joint].ways.size(); ++way) {
            Values values = least(joint, way);
            if (way == 0 || values < best)
                best = std::move(values);
        }
        m_least.push_back(std::move(best));
    }
}

Values Alone::valuesOf(const WayRank &rank) const
{
    Values values;
    for (const Criterion criterion : m_order)
        values.push_back(valueOf(rank, criterion));
    return values;
}

std::size_t Alone::differAt(const Values &a, const Values &b) const
{
    const std::size_t money = placeOf(m_order, Criterion::CostMicro);
    std::size_t at = 0;
    while (at < a.size() &&
           std::abs(a[at] - b[at]) <= (at % m_order.size() == money ? CostSlack : 0))
        ++at;
    return at;
}

bool Alone::isBelow(const Values &values, const Values &than) const
{
    const std::size_t at = differAt(values, than);
    return at < values.size() && values[at] < than[at];
}

Alone::Growth Alone::growthOf(const SharedTakings::PartRow &row) const
{
    Values zero(m_order.size(), 0);
    Values before;
    Growth growth = Growth::Even;
    for (std::size_t count = 1; count < row.byCount.size(); ++count) {
        Values step = valuesOf(row.byCount[count]);
        const Values less = valuesOf(row.byCount[count - 1]);
        for (std::size_t i = 0; i < step.size(); ++i)
            step[i] -= less[i];
        if (row.isOnce && step != zero)
            return Growth::Other;
        if (!before.empty() && step != before) {
            if (isBelow(step, before))
                return Growth::Other;
            if (isBelow(before, step))
                growth = Growth::Rising;
        }
        before = std::move(step);
    }
    return growth;
}

Values Alone::alone(std::size_t joint, std::size_t way) const
{
    Values sum = valuesOf(m_takings.own(joint, way));
    for (const auto &[place, count] : m_takings.counts(joint, way))
        sum += valuesOf(m_takings.parts()[place].byCount[static_cast<std::size_t>(count)]);
    return sum;
}

Values Alone::least(std::size_t joint, std::size_t way) const
{
    Values sum = valuesOf(m_takings.own(joint, way));
    for (const auto &[place, count] : m_takings.counts(joint, way)) {
        const auto &row = m_takings.parts()[place];
        if (m_growths[place] != Growth::Other)
            sum += valuesOf(row.byCount[static_cast<std::size_t>(count)]);
        else if (!row.isOnce) // What does once may be there already.
            sum += valuesOf(leastOf(row, count));
    }
    return sum;
}

/// Thousandths of what one costs alone that each costs at least, however many are taken. Where
/// money comes before what is to buy, it can also be cheaper to buy more than what lies here cost.
std::int64_t Alone::costsFallTo() const
{
    std::int64_t least = m_request.pricesFallTo;
    if (placeOf(m_order, Criterion::ToBuy) < placeOf(m_order, Criterion::CostMicro))
        return least;
    for (const auto &[number, stock] : m_request.shelf) {
        const Part *part = m_request.catalogue.find(number);
        if (!part || isLength(part->unit) || m_request.catalogue.offers(*part).empty())
            continue;
        const auto here = toMicro(Supplies::exactCost(m_request.catalogue, *part, &stock, {1, 0}));
        const auto bought =
            toMicro(Supplies::exactCost(m_request.catalogue, *part, nullptr, {0, 1}));
        least = std::min(least, bought / (here / 1000 + 1) * m_request.pricesFallTo / 1000);
    }
    return least;
}

/// The dearest bottle of sealant by each criterion.
Values Alone::bottle() const
{
    Values bottle(m_order.size(), 0);
    for (const Part *sealant : m_request.catalogue.ofKind(Kind::Sealant)) {
        const auto one = valuesOf(SharedTakings::byCount(m_request, *sealant, 1).back());
        for (std::size_t i = 0; i < one.size(); ++i)
            bottle[i] = std::max(bottle[i], one[i]);
    }
    return bottle;
}

Values Alone::sumOf(const std::vector<Values> &byJoint) const
{
    Values all;
    for (std::size_t build = 0; build < m_takings.builds(); ++build) {
        Values sum(m_order.size(), 0);
        for (std::size_t joint = 0; joint < byJoint.size(); ++joint)
            if (m_request.joints[joint].build <= build)
                sum += byJoint[joint];
        all.insert(all.end(), sum.begin(), sum.end());
    }
    return all;
}

Values Alone::floor() const
{
    return sumOf(m_least);
}

std::optional<Values> Alone::floorBeyond() const
{
    const auto isGivenAll = [](const SharedJoint &joint) { return !joint.last; };
    if (std::all_of(m_request.joints.begin(), m_request.joints.end(), isGivenAll))
        return std::nullopt;
    const Values once = bottle(); // Another joint may have opened it.
    const std::size_t money = placeOf(m_order, Criterion::CostMicro);
    const std::int64_t thousandths = costsFallTo();
    std::vector<Values> beyond = m_least;
    std::vector<Values> least = m_least; // Given or not.
    for (std::size_t joint = 0; joint < beyond.size(); ++joint) {
        if (!m_request.joints[joint].last)
            continue;
        beyond[joint] = alone(joint, *m_request.joints[joint].last);
        for (std::size_t i = 0; i < once.size(); ++i)
            beyond[joint][i] -= once[i];
        if (beyond[joint][money] > 0)
            beyond[joint][money] = beyond[joint][money] / 1000 * thousandths;
        least[joint] = std::min(least[joint], beyond[joint]);
    }
    std::optional<Values> lowest;
    for (std::size_t joint = 0; joint < beyond.size(); ++joint) {
        if (!m_request.joints[joint].last)
            continue;
        std::swap(least[joint], beyond[joint]);
        Values floor = sumOf(least);
        std::swap(least[joint], beyond[joint]);
        if (!lowest || floor < *lowest)
            lowest = std::move(floor);
    }
    return lowest;
}

bool Alone::takesNoMore(const SharedTakings::Counts &one, const SharedTakings::Counts &other) const
{
    const auto countIn = [](const SharedTakings::Counts &counts, std::size_t place) {
        const auto found = counts.find(place);
        return found == counts.end() ? 0 : found->second;
    };
    const auto isGood = [&](std::size_t place) {
        const int ofOne = countIn(one, place);
        const int ofOther = countIn(other, place);
        return m_growths[place] == Growth::Even || ofOne == ofOther ||
               (m_growths[place] == Growth::Rising && ofOne < ofOther);
    };
    const auto all = [&](const SharedTakings::Counts &counts) {
        return std::all_of(counts.begin(), counts.end(),
                           [&](const auto &taken) { return isGood(taken.first); });
    };
    return all(one) && all(other);
}

std::vector<std::size_t> Alone::worthTrying(std::size_t joint) const
{
    const std::size_t ways = m_request.joints[joint].ways.size();
    std::vector<Values> values;
    for (std::size_t way = 0; way < ways; ++way)
        values.push_back(alone(joint, way));
    std::vector<std::size_t> best(ways);
    std::iota(best.begin(), best.end(), std::size_t{0});
    std::stable_sort(best.begin(), best.end(),
                     [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::vector<std::size_t> kept;
    for (const std::size_t way : best) {
        const bool isOutdone = std::any_of(kept.begin(), kept.end(), [&](std::size_t other) {
            return takesNoMore(m_takings.counts(joint, other), m_takings.counts(joint, way));
        });
        if (!isOutdone || way == 0)
            kept.push_back(way);
    }
    std::sort(kept.begin(), kept.end());
    return kept;
}

} // namespace flarestock
