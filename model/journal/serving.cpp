// SPDX-License-Identifier: MIT

#include "model/journal/serving.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Augmenting paths (Ford and Fulkerson 1956): each round serves more or ends.
class Serving {
public:
    Serving(std::vector<AtHand> lying, const Bars &bars) : m_lying(std::move(lying)), m_bars(bars)
    {
    }

    void serve(const Wanted &wanted)
    {
        std::int64_t left = wanted.quantity;
        while (left > 0) {
            std::set<std::size_t> asked;
            const std::int64_t more = take(wanted.build, left, asked);
            if (more == 0)
                return;
            left -= more;
        }
    }
    [[nodiscard]] PromisedTo done() && { return std::move(m_served); }

private:
    [[nodiscard]] bool mayUse(const std::string &build, const BalanceKey &key) const
    {
        auto bars = m_bars.find(build);
        if (bars == m_bars.end())
            bars = m_bars.find(std::string_view());
        return bars == m_bars.end() || !bars->second.contains({key.part, key.lot});
    }

    /// At most so much; zero where nobody can give way. `asked` are those that were asked already.
    std::int64_t take(const std::string &build, std::int64_t most, std::set<std::size_t> &asked)
    {
        for (AtHand &one : m_lying) {
            const std::int64_t here = std::min(most, one.quantity);
            if (here <= 0 || !mayUse(build, one.key))
                continue;
            one.quantity -= here;
            m_served[one.key][build] += here;
            return here;
        }
        for (std::size_t i = 0; i < m_lying.size(); ++i) {
            if (!mayUse(build, m_lying[i].key) || !asked.insert(i).second)
                continue;
            if (const auto given = takeFromOthers(build, most, {m_lying[i].key, asked}))
                return given;
        }
        return 0;
    }

    struct Asking {
        const BalanceKey &key;
        std::set<std::size_t> &asked;
    };
    std::int64_t takeFromOthers(const std::string &build, std::int64_t most, const Asking &at)
    {
        const auto there = m_served.find(at.key);
        if (there == m_served.end())
            return 0;
        for (auto &[other, has] : there->second) {
            if (other == build || has <= 0)
                continue;
            const std::int64_t given = take(other, std::min(most, has), at.asked);
            if (given == 0)
                continue;
            has -= given;
            there->second[build] += given;
            return given;
        }
        return 0;
    }

    std::vector<AtHand> m_lying;
    const Bars &m_bars;
    PromisedTo m_served;
};

} // namespace

std::int64_t sumOf(const PromisedTo &served)
{
    std::int64_t sum = 0;
    for (const auto &[key, builds] : served) {
        for (const auto &[build, quantity] : builds)
            sum += quantity;
    }
    return sum;
}

PromisedTo served(const std::vector<Wanted> &wanted, std::vector<AtHand> lying, const Bars &bars)
{
    Serving serving(std::move(lying), bars);
    for (const Wanted &one : wanted)
        serving.serve(one);
    return std::move(serving).done();
}

std::vector<Wanted> Ledger::wanted(std::string_view part, std::string_view but) const
{
    std::vector<Wanted> all;
    for (auto at = m_claims.lower_bound({std::string(part), {}});
         at != m_claims.end() && at->first.part == part; ++at) {
        const std::int64_t outstanding = at->second.outstanding();
        if (outstanding > 0 && (but.empty() || at->first.build != but))
            all.push_back({at->first.build, outstanding});
    }
    return all;
}

std::vector<AtHand> Ledger::atHand(std::string_view part, bool longestFirst) const
{
    std::vector<std::pair<std::size_t, AtHand>> all;
    for (const auto &[key, held] : balancesOf(part)) {
        const auto where = m_placeOf.find(key.place);
        if (where != m_placeOf.end() && isFree(key.condition) &&
            isStock(m_places[where->second].kind))
            all.push_back({where->second, {key, held.quantity}});
    }
    std::stable_sort(all.begin(), all.end(), [longestFirst](const auto &a, const auto &b) {
        return longestFirst ? a.second.quantity > b.second.quantity : a.first < b.first;
    });
    std::vector<AtHand> sorted;
    sorted.reserve(all.size());
    for (auto &[place, one] : all)
        sorted.push_back(std::move(one));
    return sorted;
}

PromisedTo Ledger::promisedTo(const Part &part, const Bars &bars, std::string_view but) const
{
    const auto all = wanted(part.number, but);
    if (all.empty())
        return {};
    return served(all, atHand(part.number, isLength(part.unit)), bars);
}

std::map<BalanceKey, std::int64_t> Ledger::promisedAt(const Part &part, const Bars &bars,
                                                      std::string_view but) const
{
    std::map<BalanceKey, std::int64_t> promised;
    for (const auto &[key, builds] : promisedTo(part, bars, but)) {
        for (const auto &[build, quantity] : builds)
            promised[key] += quantity;
    }
    return promised;
}

bool Ledger::canBeKept(const Promise &promise, const Bars &bars) const
{
    const Claim now = claim({promise.part, promise.build});
    Claim then = now;
    if (__builtin_add_overflow(now.promised, promise.quantity, &then.promised))
        return false;
    const std::int64_t more = then.outstanding() - now.outstanding();
    if (more <= 0)
        return true;
    auto all = wanted(promise.part, {});
    const auto before = sumOf(served(all, atHand(promise.part, false), bars));
    all.push_back({promise.build, more});
    return sumOf(served(all, atHand(promise.part, false), bars)) == before + more;
}

std::int64_t Ledger::takesPromised(const Movement &movement, const Bars &bars) const
{
    const bool own = movement.deed == Deed::Issue;
    const auto all = wanted(movement.part, own ? std::string_view(movement.document) : "");
    if (all.empty())
        return 0;
    auto lying = atHand(movement.part, false);
    const auto before = sumOf(served(all, lying, bars));
    const BalanceKey from = source(movement);
    for (AtHand &one : lying)
        one.quantity -= one.key == from ? std::min(one.quantity, movement.quantity) : 0;
    const BalanceKey to = target(movement);
    const Place *there = place(to.place);
    if (there && isStock(there->kind) && isFree(to.condition))
        lying.push_back({to, movement.quantity});
    return std::max<std::int64_t>(before - sumOf(served(all, std::move(lying), bars)), 0);
}

} // namespace flarestock
