// SPDX-License-Identifier: MIT

#include "model/programme/programme.h"

#include "model/programme/digits.h"

#include <algorithm>
#include <cassert>
#include <cstdlib>
#include <numeric>

namespace flarestock {

namespace {

using Clock = std::chrono::steady_clock;

/// An aim with a larger factor is asked a second time. The library's own tolerances are 1e-7 of
/// what it sums up.
constexpr std::int64_t PlainFactorMost = 10'000;

/// Each number once, without those that count nothing.
LinearSum merged(LinearSum sum)
{
    std::sort(sum.begin(), sum.end(),
              [](const Term &a, const Term &b) { return a.number < b.number; });
    LinearSum once;
    for (const Term &term : sum) {
        if (!once.empty() && once.back().number == term.number)
            once.back().times += term.times;
        else
            once.push_back(term);
    }
    once.erase(
        std::remove_if(once.begin(), once.end(), [](const Term &term) { return term.times == 0; }),
        once.end());
    return once;
}

std::int64_t commonFactor(const LinearSum &sum)
{
    std::int64_t common = 0;
    for (const Term &term : sum)
        common = std::gcd(common, term.times);
    return std::max<std::int64_t>(common, 1);
}

void divide(LinearSum &sum, std::int64_t by)
{
    for (Term &term : sum)
        term.times /= by;
}

/// The same limit with the smallest factors; whole numbers keep the one where they keep the other.
Programme::Limit reduced(Programme::Limit limit)
{
    const std::int64_t common = commonFactor(limit.sum);
    divide(limit.sum, common);
    if (limit.range.least > NoLimit::Below)
        limit.range.least = -floorOf(-limit.range.least, common);
    if (limit.range.most < NoLimit::Above)
        limit.range.most = floorOf(limit.range.most, common);
    return limit;
}

std::int64_t worth(const LinearSum &sum, const std::vector<std::int64_t> &values)
{
    std::int64_t worth = 0;
    for (const Term &term : sum)
        worth += term.times * values[term.number];
    return worth;
}

} // namespace

std::size_t Programme::number(std::int64_t least, std::int64_t most)
{
    assert(least <= most);
    m_numbers.push_back({least, most});
    return m_numbers.size() - 1;
}

void Programme::keep(LinearSum sum, std::int64_t least, std::int64_t most)
{
    m_limits.push_back({merged(std::move(sum)), {least, most}});
}

void Programme::aim(LinearSum sum)
{
    m_aims.push_back(merged(std::move(sum)));
}

void Programme::startWith(std::vector<std::int64_t> values)
{
    m_start = std::move(values);
}

bool Programme::holds(const std::vector<std::int64_t> &values) const
{
    if (values.size() != m_numbers.size())
        return false;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (values[i] < m_numbers[i].least || values[i] > m_numbers[i].most)
            return false;
    return std::all_of(m_limits.begin(), m_limits.end(), [&](const Limit &limit) {
        const std::int64_t sum = worth(limit.sum, values);
        return sum >= limit.range.least && sum <= limit.range.most;
    });
}

bool Programme::isBeyond() const
{
    const auto beyond = [this](const LinearSum &sum) {
        std::int64_t all = 0;
        for (const Term &term : sum) {
            const Range &of = m_numbers[term.number];
            for (const std::int64_t end : {of.least, of.most}) {
                std::int64_t product = 0;
                if (__builtin_mul_overflow(term.times, end, &product) || product >= SumMost ||
                    product <= -SumMost)
                    return true;
                all += product < 0 ? -product : product;
                if (all >= SumMost)
                    return true;
            }
        }
        return false;
    };
    return std::any_of(m_numbers.begin(), m_numbers.end(),
                       [](const Range &range) {
                           return range.least <= -SumMost || range.most >= SumMost;
                       }) ||
           std::any_of(m_limits.begin(), m_limits.end(),
                       [&](const Limit &limit) { return beyond(limit.sum); }) ||
           std::any_of(m_aims.begin(), m_aims.end(), beyond);
}

bool Programme::isBetter(const std::vector<std::int64_t> &values,
                         const std::vector<std::int64_t> &than) const
{
    for (const LinearSum &aim : m_aims) {
        const std::int64_t one = worth(aim, values);
        const std::int64_t other = worth(aim, than);
        if (one != other)
            return one < other;
    }
    return false;
}

/// The aims one after the other, each with those before it held where they are.
class Programme::Solving {
public:
    Solving(const Programme &programme, std::chrono::milliseconds within)
        : m_programme(programme), m_end(Clock::now() + within)
    {
        m_search.numbers = programme.m_numbers;
        for (const Limit &limit : programme.m_limits)
            keepInDigits(m_search, reduced(limit));
        if (programme.holds(programme.m_start))
            m_best = programme.m_start;
    }

    Solution solution()
    {
        Solution made;
        if (m_programme.m_numbers.empty()) {
            m_best.emplace();
            made.proven = m_programme.m_aims.size();
            m_impossible = !m_programme.holds(*m_best);
        } else if (m_programme.m_aims.empty()) {
            look({});
        }
        while (made.proven < m_programme.m_aims.size()) {
            const LinearSum &aim = m_programme.m_aims[made.proven];
            if (!isLowest(aim))
                break;
            const std::int64_t lowest = worth(aim, *m_best);
            keepInDigits(m_search, reduced({aim, {lowest, lowest}}));
            ++made.proven;
        }
        return said(std::move(made));
    }

private:
    /// Searches for as long as there is time left, and keeps what is better than the best so far
    /// and holds.
    Searched look(const LinearSum &aim)
    {
        const auto left =
            std::chrono::duration_cast<std::chrono::milliseconds>(m_end - Clock::now());
        if (left.count() <= 0)
            return {};
        m_search.aim = aim;
        const std::int64_t common = commonFactor(aim);
        divide(m_search.aim, common);
        Searched searched = searchedByCbc(m_search, left);
        if (!searched.values.empty())
            searched.values.resize(m_programme.size());
        if (searched.bound) { // Of the sum as it was said.
            const std::int64_t most = SumMost / common;
            *searched.bound = std::clamp(*searched.bound, -most, most) * common;
        }
        m_impossible = searched.end == Searched::End::Impossible && !m_best;
        if (m_programme.holds(searched.values) &&
            (!m_best || m_programme.isBetter(searched.values, *m_best)))
            m_best = searched.values;
        return searched;
    }

    /// Brings an aim down; whether it is proven that it goes no lower.
    bool isLowest(const LinearSum &aim)
    {
        const Range box = rangeIn(m_programme.m_numbers, aim);
        if (m_best && worth(aim, *m_best) == box.least)
            return true;
        const Searched searched = look(aim);
        m_bound = std::max(box.least, searched.bound.value_or(box.least));
        if (!m_best)
            return false;
        m_bound = std::min(m_bound, worth(aim, *m_best));
        const bool ended = searched.end == Searched::End::Lowest &&
                           m_programme.holds(searched.values) &&
                           worth(aim, searched.values) == worth(aim, *m_best);
        return ended && (isPlain(aim) || isNothingLower(aim));
    }

    static bool isPlain(const LinearSum &aim)
    {
        const std::int64_t common = commonFactor(aim);
        return std::all_of(aim.begin(), aim.end(), [common](const Term &term) {
            return std::abs(term.times / common) <= PlainFactorMost;
        });
    }

    bool isNothingLower(const LinearSum &aim)
    {
        for (int asked = 0; asked < 8; ++asked) {
            const std::int64_t lowest = worth(aim, *m_best);
            const Search before = m_search;
            keepInDigits(m_search, reduced({aim, {NoLimit::Below, lowest - 1}}));
            const Searched searched = look({});
            m_search = before;
            if (searched.end == Searched::End::Impossible)
                return true;
            if (worth(aim, *m_best) == lowest)
                break;
        }
        m_bound = std::min(m_bound, worth(aim, *m_best));
        return false;
    }

    Solution said(Solution made) const
    {
        if (m_impossible || !m_best) {
            made.outcome =
                m_impossible ? Solution::Outcome::Impossible : Solution::Outcome::Nothing;
            made.proven = 0;
            return made;
        }
        made.outcome = Solution::Outcome::Found;
        made.values = *m_best;
        for (const LinearSum &aim : m_programme.m_aims)
            made.aims.push_back(worth(aim, *m_best));
        if (made.proven < made.aims.size())
            made.bound = m_bound;
        return made;
    }

    const Programme &m_programme;
    Clock::time_point m_end;
    Search m_search;
    std::optional<std::vector<std::int64_t>> m_best;
    bool m_impossible = false;
    std::int64_t m_bound = 0;
};

Solution Programme::solve(std::chrono::milliseconds within) const
{
    if (isBeyond()) {
        Solution beyond;
        beyond.outcome = Solution::Outcome::Beyond;
        return beyond;
    }
    return Solving(*this, within).solution();
}

} // namespace flarestock
