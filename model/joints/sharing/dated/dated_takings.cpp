// SPDX-License-Identifier: MIT

#include "model/joints/sharing/dated/dated_takings.h"

#include "model/joints/sharing/alone.h"
#include "model/joints/supplies.h"

#include <algorithm>
#include <numeric>

namespace flarestock {

namespace {

using Values = DatedTakings::Values;

void add(Values &sum, const Values &more)
{
    for (std::size_t i = 0; i < sum.size(); ++i)
        sum[i] += more[i];
}

/// Whole ones that are left; of what nobody counts as many as anybody needs.
int wholeLeft(const FreeLeft &left, const Part &part, int most)
{
    const Decimal amount = left ? left(part) : Decimal();
    if (amount.sign() <= 0)
        return 0;
    const auto whole = amount.rescaled(0, Rounding::Floor).toInt64();
    return whole ? static_cast<int>(std::min<std::int64_t>(*whole, most)) : most;
}

} // namespace

DatedTakings::DatedTakings(const ByDateRequest &request) : m_request(request)
{
    Most most;
    std::vector<const Part *> parts; // As they are met, so that nothing depends on addresses.
    for (std::size_t build = 0; build < request.builds.size(); ++build) {
        m_orders.push_back(criteria(request.builds[build].order));
        m_byItself.push_back(std::make_unique<SharedTakings>(request.builds[build]));
        for (const auto &row : m_byItself.back()->parts()) {
            const auto [of, isNew] = most.try_emplace(row.part, request.builds.size(), 0);
            of->second[build] = static_cast<int>(row.byCount.size()) - 1;
            if (isNew)
                parts.push_back(row.part);
        }
    }
    for (const Part *part : parts)
        addScarce(*part, most[part], isUsedByMeasure(part->kind));
    for (std::size_t build = 0; build < request.builds.size(); ++build)
        addTakes(build);
}

void DatedTakings::addScarce(const Part &part, const std::vector<int> &most, bool isOnce)
{
    Scarce scarce{&part, isOnce, 0, {}, {}, most, std::vector<int>(most.size(), 0)};
    int wanted = 0; // Of what any build may take.
    bool isPlenty = true;
    for (std::size_t build = 0; build < most.size(); ++build) {
        const DatedJoints &of = m_request.builds[build];
        scarce.own.push_back(wholeLeft(of.own, part, most[build]));
        scarce.full.push_back(wholeLeft(of.left, part, most[build]));
        wanted += most[build] - scarce.own.back();
        isPlenty = isPlenty && scarce.full.back() == most[build];
    }
    scarce.left = wholeLeft(m_request.left, part, wanted);
    isPlenty = isPlenty && scarce.left == wanted;
    bool isAllBought = scarce.left == 0;
    for (std::size_t build = 0; build < most.size(); ++build)
        isAllBought =
            isAllBought && scarce.own[build] == 0 && isEvenlySold(build, part, most[build]);
    if (!isOnce && (isPlenty || isAllBought))
        return;
    for (std::size_t build = most.size() - 1; build > 0; --build)
        scarce.mostLater[build - 1] = scarce.mostLater[build] + most[build] - scarce.own[build];
    m_places.emplace(&part, m_scarce.size());
    auto &each = m_leastEach.emplace_back();
    auto &isEven = m_isEven.emplace_back();
    for (std::size_t build = 0; build < most.size(); ++build) {
        each.push_back(leastEach(build, scarce));
        isEven.push_back(isEvenlySold(build, part, most[build]));
    }
    m_scarce.push_back(std::move(scarce));
}

WayRank DatedTakings::sum(std::size_t build, const Part &part,
                          std::array<int, 2> hereAndToBuy) const
{
    const DatedJoints &of = m_request.builds[build];
    const auto on = of.shelf.find(part.number);
    WayRank rank;
    rank.toBuy = hereAndToBuy[1];
    if (rank.toBuy > 0 && !of.catalogue.bestOffer(part, Decimal(rank.toBuy)))
        rank.unpriced = rank.toBuy;
    rank.costMicro = toMicro(Supplies::exactCost(
        of.catalogue, part, on == of.shelf.end() ? nullptr : &on->second, hereAndToBuy));
    return rank;
}

bool DatedTakings::isEvenlySold(std::size_t build, const Part &part, int most) const
{
    const std::int64_t one = most > 1 ? sum(build, part, {0, 1}).costMicro : 0;
    for (int count = 2; count <= most; ++count)
        if (sum(build, part, {0, count}).costMicro != one * count)
            return false;
    return true;
}

/// The cheapest that one of it can be, on the shelf or at the supplier's, by whatever number.
std::int64_t DatedTakings::leastEach(std::size_t build, const Scarce &scarce) const
{
    if (scarce.isOnce)
        return 0; // It may be there already.
    int leftAtLeast = scarce.left;
    for (std::size_t before = 0; before < build; ++before)
        leftAtLeast -= scarce.most[before] - scarce.own[before];
    leftAtLeast = std::max(0, leftAtLeast);
    std::optional<std::int64_t> least;
    if (scarce.own[build] + scarce.left > 0)
        least = sum(build, *scarce.part, {1, 0}).costMicro;
    if (std::min(scarce.own[build] + leftAtLeast, scarce.full[build]) < scarce.most[build])
        for (int count = 1; count <= scarce.most[build]; ++count) {
            const auto each = sum(build, *scarce.part, {0, count}).costMicro / count;
            least = std::min(least.value_or(each), each);
        }
    return least.value_or(0);
}

/// At least what so many come to that come to `alone` where the build has all that it could take.
WayRank DatedTakings::leastOf(std::size_t build, std::size_t place, const WayRank &alone,
                              int count) const
{
    const Scarce &scarce = m_scarce[place];
    WayRank least;
    if (scarce.isOnce)
        return least;
    least.toBuy = alone.toBuy;
    if (m_request.builds[build].catalogue.offers(*scarce.part).empty())
        least.unpriced = alone.toBuy;
    least.costMicro = m_leastEach[place][build] * count;
    return least;
}

void DatedTakings::addTakes(std::size_t build)
{
    auto &joints = m_takes.emplace_back();
    for (std::size_t joint = 0; joint < m_request.builds[build].joints.size(); ++joint) {
        auto &ways = joints.emplace_back();
        for (std::size_t way = 0; way < m_request.builds[build].joints[joint].ways.size(); ++way)
            ways.push_back(takesOf(build, joint, way));
    }
    m_beyond.push_back({bottle(build), fallsTo(build)});
}

DatedTakings::Takes DatedTakings::takesOf(std::size_t build, std::size_t joint,
                                          std::size_t way) const
{
    const SharedTakings &by = *m_byItself[build];
    Takes takes;
    takes.rest = takes.least = valuesOf(by.own(joint, way), build);
    for (const auto &[place, count] : by.counts(joint, way)) {
        const auto &row = by.parts()[place];
        const WayRank &alone = row.byCount[static_cast<std::size_t>(count)];
        const auto scarce = m_places.find(row.part);
        if (scarce == m_places.end()) {
            add(takes.rest, valuesOf(alone, build));
            add(takes.least, valuesOf(alone, build));
            continue;
        }
        takes.scarce.emplace_back(scarce->second, count);
        add(takes.least, valuesOf(leastOf(build, scarce->second, alone, count), build));
    }
    return takes;
}

Values DatedTakings::valuesOf(const WayRank &rank, std::size_t build) const
{
    Values values{};
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = valueOf(rank, m_orders[build][i]);
    return values;
}

std::size_t DatedTakings::differAt(const Values &a, const Values &b, std::size_t build) const
{
    std::size_t at = 0;
    while (at < a.size() &&
           std::abs(a[at] - b[at]) <= (m_orders[build][at] == Criterion::CostMicro ? CostSlack : 0))
        ++at;
    return at;
}

bool DatedTakings::isAbove(const Values &values, const Values &than, std::size_t build) const
{
    const std::size_t at = differAt(values, than, build);
    return at < values.size() && values[at] > than[at];
}

Values DatedTakings::least(std::size_t build, std::size_t joint) const
{
    std::optional<Values> least;
    for (const Takes &takes : m_takes[build][joint])
        least = std::min(least.value_or(takes.least), takes.least);
    return least.value_or(Values{});
}

std::size_t DatedTakings::placeOf(Criterion criterion, std::size_t build) const
{
    const auto &order = m_orders[build];
    return static_cast<std::size_t>(std::find(order.begin(), order.end(), criterion) -
                                    order.begin());
}

/// A way that is not given is no better than the last one that is, with all that the build could
/// take; less where another joint has opened the bottle, or more of a part are cheaper.
std::optional<Values> DatedTakings::leastBeyond(std::size_t build, std::size_t joint) const
{
    const auto last = m_request.builds[build].joints[joint].last;
    if (!last)
        return std::nullopt;
    const SharedTakings &by = *m_byItself[build];
    Values beyond = valuesOf(by.own(joint, *last), build);
    for (const auto &[place, count] : by.counts(joint, *last))
        add(beyond, valuesOf(by.parts()[place].byCount[static_cast<std::size_t>(count)], build));
    const auto &[once, thousandths] = m_beyond[build];
    for (std::size_t i = 0; i < once.size(); ++i)
        beyond[i] -= once[i];
    const std::size_t money = placeOf(Criterion::CostMicro, build);
    if (beyond[money] > 0)
        beyond[money] = beyond[money] / 1000 * thousandths;
    return beyond;
}

/// The dearest bottle of sealant by each criterion, as a way has it alone.
Values DatedTakings::bottle(std::size_t build) const
{
    const DatedJoints &of = m_request.builds[build];
    Values bottle{};
    for (const Part *sealant : of.catalogue.ofKind(Kind::Sealant)) {
        const int here = wholeLeft(of.left, *sealant, 1);
        const Values one = valuesOf(sum(build, *sealant, {here, 1 - here}), build);
        for (std::size_t i = 0; i < one.size(); ++i)
            bottle[i] = std::max(bottle[i], one[i]);
    }
    return bottle;
}

/// Thousandths of what one costs alone that each costs at least, however many are taken. Where
/// money comes before what is to buy, buying can also be cheaper than what lies here.
std::int64_t DatedTakings::fallsTo(std::size_t build) const
{
    const DatedJoints &of = m_request.builds[build];
    std::int64_t least = of.pricesFallTo;
    if (placeOf(Criterion::ToBuy, build) < placeOf(Criterion::CostMicro, build))
        return least;
    for (const auto &[number, stock] : of.shelf) {
        const Part *part = of.catalogue.find(number);
        if (!part || isLength(part->unit) || of.catalogue.offers(*part).empty())
            continue;
        const auto here = sum(build, *part, {1, 0}).costMicro;
        const auto bought = sum(build, *part, {0, 1}).costMicro;
        least = std::min(least, bought / (here / 1000 + 1) * of.pricesFallTo / 1000);
    }
    return least;
}

int DatedTakings::here(const Taken &taken) const
{
    const Scarce &scarce = m_scarce[taken.scarce];
    const int there = std::min(scarce.own[taken.build] + taken.left, scarce.full[taken.build]);
    return std::min(taken.count, there);
}

WayRank DatedTakings::sum(const Taken &taken) const
{
    const int lies = here(taken);
    const auto [known, isNew] =
        m_sums.try_emplace({taken.build, taken.scarce, static_cast<std::size_t>(lies),
                            static_cast<std::size_t>(taken.count - lies)});
    if (isNew)
        known->second = sum(taken.build, *m_scarce[taken.scarce].part, {lies, taken.count - lies});
    return known->second;
}

WayRank DatedTakings::sumAtLeast(const Taken &taken) const
{
    WayRank rank = sum(taken);
    if (m_scarce[taken.scarce].isOnce || m_isEven[taken.scarce][taken.build])
        return rank;
    rank.costMicro = std::min(rank.costMicro, m_leastEach[taken.scarce][taken.build] * taken.count);
    if (!m_request.builds[taken.build].catalogue.offers(*m_scarce[taken.scarce].part).empty())
        rank.unpriced = 0;
    return rank;
}

} // namespace flarestock
