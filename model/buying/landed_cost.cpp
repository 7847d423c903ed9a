// SPDX-License-Identifier: MIT

#include "model/buying/landed_cost.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace flarestock {

namespace {

std::vector<std::size_t> largestFirst(const std::vector<Decimal> &cut)
{
    std::vector<std::size_t> order(cut.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&cut](std::size_t left, std::size_t right) {
        return cut[left] > cut[right];
    });
    return order;
}

} // namespace

std::vector<std::int64_t> sharedOut(std::int64_t total, const std::vector<Decimal> &weights)
{
    assert(!weights.empty());
    assert(std::all_of(weights.begin(), weights.end(),
                       [](const Decimal &weight) { return weight.sign() >= 0; }));
    const Decimal all = std::accumulate(weights.begin(), weights.end(), Decimal());
    if (all.isZero())
        return sharedOut(total, std::vector<Decimal>(weights.size(), Decimal(1)));
    const std::int64_t sign = total < 0 ? -1 : 1;
    const Decimal whole = Decimal(total).abs();
    std::vector<std::int64_t> shares;
    std::vector<Decimal> cut; // Of each share, all over the same divisor.
    std::int64_t left = total;
    for (const Decimal &weight : weights) {
        const Decimal share = divide(whole * weight, all, 0, Rounding::Down);
        cut.push_back(whole * weight - share * all);
        shares.push_back(sign * share.toInt64().value_or(0)); // Not more than the total.
        left -= shares.back();
    }
    const auto order = largestFirst(cut);
    for (std::size_t next = 0; left != 0; ++next, left -= sign)
        shares[order[next]] += sign;
    return shares;
}

Result<std::vector<std::int64_t>> landedValues(const std::vector<Decimal> &landed,
                                               const Decimal &rate)
{
    if (landed.empty())
        return std::vector<std::int64_t>();
    const Decimal sum = std::accumulate(landed.begin(), landed.end(), Decimal());
    const auto total = (sum * rate * Decimal(1'000'000)).rescaled(0, Rounding::HalfEven).toInt64();
    const bool belowZero = std::any_of(landed.begin(), landed.end(),
                                       [](const Decimal &line) { return line.sign() < 0; });
    if (!total || belowZero || rate.sign() <= 0)
        return problem("the order",
                       "has a line that costs less than nothing, or more than a shop "
                       "can count",
                       "Look at its discount and its rate.");
    return sharedOut(*total, landed);
}

std::int64_t valueComing(const CameOfLine &ordered, const CameOfLine &before, std::int64_t coming)
{
    assert(ordered.quantity > 0 && coming > 0);
    if (before.quantity >= ordered.quantity)
        return 0;
    const std::int64_t missing = ordered.quantity - before.quantity;
    if (coming >= missing)
        return std::max<std::int64_t>(ordered.value - before.value, 0);
    const auto then = Rational(Decimal(before.quantity + coming), Decimal(ordered.quantity))
                          .times(Decimal(ordered.value))
                          .toDecimal(0, Rounding::HalfEven)
                          .toInt64();
    return std::clamp<std::int64_t>(then.value_or(0) - before.value, 0,
                                    std::max<std::int64_t>(ordered.value - before.value, 0));
}

} // namespace flarestock
