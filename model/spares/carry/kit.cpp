// SPDX-License-Identifier: MIT

#include "model/spares/carry/kit.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace flarestock {

namespace {

constexpr double Untold = 1e-12; ///< As SpareDemand::fewest() has it, of the logarithm.
/// So many kits are followed up side by side; with more the search is none that proves.
constexpr std::size_t KitsMost = 200'000;

/// One more of a part, and what that adds to the logarithm of what is covered.
struct Increment {
    double gain = 0;
    double price = 0;
};

/// What covering more takes at least, with the parts from one on, if pieces could be cut up.
class Fractions {
public:
    explicit Fractions(std::vector<Increment> increments) : m_sums(1)
    {
        std::sort(increments.begin(), increments.end(),
                  [](const auto &a, const auto &b) { return a.gain * b.price > b.gain * a.price; });
        for (const Increment &one : increments)
            m_sums.push_back({m_sums.back().gain + one.gain, m_sums.back().price + one.price});
    }
    /// Infinite where it cannot be had.
    [[nodiscard]] double atLeast(double gain) const
    {
        if (gain <= 0)
            return 0;
        const auto above =
            std::lower_bound(m_sums.begin(), m_sums.end(), gain,
                             [](const Increment &sum, double wanted) { return sum.gain < wanted; });
        if (above == m_sums.end())
            return INFINITY;
        const Increment &below = *(above - 1);
        return below.price +
               (above->price - below.price) * (gain - below.gain) / (above->gain - below.gain);
    }

private:
    std::vector<Increment> m_sums;
};

/// A choice for the first parts.
struct Partial {
    std::int64_t cost = 0;
    double log = 0;
    std::size_t before = 0; ///< Which of the part before.
    std::int64_t carried = 0;
};

class KitSearch {
public:
    KitSearch(const std::vector<KitPart> &parts, double certainty)
        : m_parts(parts), m_wanted(std::log(certainty) - Untold)
    {
        for (const KitPart &part : parts)
            m_least.push_back(part.demand.fewest(certainty)); // The others cover no more than all.
    }

    KitPlan planned()
    {
        KitPlan plan;
        plan.way = marginalWay();
        Kit marginal{m_least, 0, 1};
        if (!plan.way.empty())
            marginal.carried = plan.way.back().then.carried;
        m_most = costOf(marginal.carried);
        prepareBounds();
        const auto found = search();
        plan.best = kitOf(found.empty() ? marginal.carried : found);
        plan.isProven = !m_leftOut;
        plan.noLess = m_leftOut ? std::min(*m_leftOut, plan.best.cost) : plan.best.cost;
        return plan;
    }

private:
    [[nodiscard]] double logOf(std::size_t part, std::int64_t carried) const
    {
        return std::log(m_parts[part].demand.covered(carried));
    }
    [[nodiscard]] std::int64_t costOf(const std::vector<std::int64_t> &carried) const
    {
        std::int64_t cost = 0;
        for (std::size_t i = 0; i < carried.size(); ++i)
            cost += carried[i] * m_parts[i].priceEach;
        return cost;
    }
    [[nodiscard]] Kit kitOf(const std::vector<std::int64_t> &carried) const
    {
        Kit kit{carried, costOf(carried), 1};
        for (std::size_t i = 0; i < carried.size(); ++i)
            kit.covered *= m_parts[i].demand.covered(carried[i]);
        return kit;
    }

    /// From the least of each on, always what covers most for its money.
    std::vector<KitStep> marginalWay() const
    {
        std::vector<KitStep> way;
        std::vector<std::int64_t> carried = m_least;
        std::vector<double> logs;
        double sum = 0;
        for (std::size_t i = 0; i < carried.size(); ++i)
            sum += logs.emplace_back(logOf(i, carried[i]));
        while (sum < m_wanted) {
            std::size_t best = 0;
            double bestRate = -1;
            for (std::size_t i = 0; i < carried.size(); ++i) {
                const double rate = (logOf(i, carried[i] + 1) - logs[i]) /
                                    static_cast<double>(m_parts[i].priceEach);
                if (rate > bestRate) {
                    best = i;
                    bestRate = rate;
                }
            }
            const double next = logOf(best, ++carried[best]);
            sum += next - logs[best];
            logs[best] = next;
            way.push_back({best, kitOf(carried)});
        }
        return way;
    }

    void prepareBounds()
    {
        std::vector<Increment> increments;
        m_restCost.assign(m_parts.size() + 1, 0);
        m_restLog.assign(m_parts.size() + 1, 0);
        m_rest.assign(m_parts.size() + 1, Fractions({}));
        const std::int64_t room = m_most - costOf(m_least);
        for (std::size_t i = m_parts.size(); i-- > 0;) {
            m_restCost[i] = m_restCost[i + 1] + m_least[i] * m_parts[i].priceEach;
            m_restLog[i] = m_restLog[i + 1] + logOf(i, m_least[i]);
            double before = logOf(i, m_least[i]);
            for (std::int64_t more = 1; more * m_parts[i].priceEach <= room; ++more) {
                const double then = logOf(i, m_least[i] + more);
                if (then - before <= 0)
                    break; // All that a double can tell is covered.
                increments.push_back({then - before, static_cast<double>(m_parts[i].priceEach)});
                before = then;
            }
            m_rest[i] = Fractions(increments);
        }
    }

    /// What a choice for the parts before `next` costs at least when it is made whole; nothing
    /// where it cannot cover enough, or costs more than what is known already.
    [[nodiscard]] std::optional<std::int64_t> atLeast(const Partial &partial,
                                                      std::size_t next) const
    {
        const double rest = m_rest[next].atLeast(m_wanted - partial.log - m_restLog[next]);
        const auto room = static_cast<double>(m_most - partial.cost - m_restCost[next]);
        const double low = rest * (1 - 1e-9) - 1;
        if (!(low <= room))
            return std::nullopt;
        return partial.cost + m_restCost[next] +
               std::max<std::int64_t>(0, static_cast<std::int64_t>(std::ceil(low)));
    }

    /// The choices for one part more, only those that nothing cheaper covers as well as.
    std::vector<Partial> followed(const std::vector<Partial> &before, std::size_t part)
    {
        std::vector<Partial> all;
        std::vector<double> logs; // From the least of it on.
        for (std::size_t at = 0; at < before.size(); ++at)
            for (std::int64_t carried = m_least[part];; ++carried) {
                const auto more = static_cast<std::size_t>(carried - m_least[part]);
                const std::int64_t cost = before[at].cost + carried * m_parts[part].priceEach;
                if (cost + m_restCost[part + 1] > m_most)
                    break;
                if (logs.size() <= more)
                    logs.push_back(logOf(part, carried));
                const Partial next{cost, before[at].log + logs[more], at, carried};
                if (atLeast(next, part + 1))
                    all.push_back(next);
            }
        std::sort(all.begin(), all.end(), [](const Partial &a, const Partial &b) {
            return a.cost != b.cost ? a.cost < b.cost : a.log > b.log;
        });
        std::vector<Partial> best;
        for (const Partial &one : all)
            if (best.empty() || one.log > best.back().log)
                best.push_back(one);
        leaveOut(best, part + 1);
        return best;
    }

    /// Where there are too many, those that promise to cost most.
    void leaveOut(std::vector<Partial> &partials, std::size_t next)
    {
        if (partials.size() <= KitsMost)
            return;
        std::sort(partials.begin(), partials.end(), [&](const Partial &a, const Partial &b) {
            return *atLeast(a, next) < *atLeast(b, next);
        });
        const std::int64_t low = *atLeast(partials[KitsMost], next);
        m_leftOut = std::min(low, m_leftOut.value_or(low));
        partials.resize(KitsMost);
    }

    /// None where rounding leaves out even what marginal allocation has found.
    std::vector<std::int64_t> search()
    {
        std::vector<std::vector<Partial>> steps{{Partial{}}};
        for (std::size_t i = 0; i < m_parts.size(); ++i)
            steps.push_back(followed(steps.back(), i));
        // Of the last those remain that cover enough; the cheapest stands first, by what it covers.
        std::size_t at = 0;
        const auto &last = steps.back();
        if (last.empty())
            return {};
        for (std::size_t i = 0; i < last.size(); ++i)
            if (last[i].cost < last[at].cost)
                at = i;
        std::vector<std::int64_t> carried(m_parts.size());
        for (std::size_t i = m_parts.size(); i-- > 0;) {
            carried[i] = steps[i + 1][at].carried;
            at = steps[i + 1][at].before;
        }
        return carried;
    }

    const std::vector<KitPart> &m_parts;
    double m_wanted; ///< Logarithm.
    std::vector<std::int64_t> m_least;
    std::int64_t m_most = 0; ///< A kit of this cost is known.
    std::vector<std::int64_t> m_restCost;
    std::vector<double> m_restLog;
    std::vector<Fractions> m_rest; ///< By the first part of the rest.
    std::optional<std::int64_t> m_leftOut;
};

} // namespace

KitPlan planKit(const std::vector<KitPart> &parts, double certainty)
{
    assert(certainty > 0 && certainty < 1);
    if (parts.empty())
        return {};
    return KitSearch(parts, certainty).planned();
}

} // namespace flarestock
