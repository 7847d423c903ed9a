// SPDX-License-Identifier: MIT

#include "model/exact/money.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace flarestock {

Money Money::toMinorDigits(Rounding mode) const
{
    return {amount.rescaled(currency.minorDigits(), mode), currency};
}

std::string Money::text() const
{
    return amount.text() + " " + std::string(currency.code());
}

Money operator+(const Money &left, const Money &right)
{
    assert(left.currency == right.currency);
    return {left.amount + right.amount, left.currency};
}

Money operator-(const Money &left, const Money &right)
{
    assert(left.currency == right.currency);
    return {left.amount - right.amount, left.currency};
}

std::vector<Money> shares(const Money &total, const std::vector<Decimal> &weights)
{
    assert(std::all_of(weights.begin(), weights.end(),
                       [](const Decimal &weight) { return weight.sign() >= 0; }));
    const Decimal allWeights = std::accumulate(weights.begin(), weights.end(), Decimal());
    assert(allWeights.sign() > 0);
    const std::int32_t digits = total.currency.minorDigits();
    const Decimal absolute = total.amount.abs().rescaled(digits, Rounding::Down);
    assert(absolute == total.amount.abs());

    // Each share cut to whole minor units, and what was cut of it, all over the same divisor.
    std::vector<Decimal> amounts;
    std::vector<Decimal> cut;
    for (const Decimal &weight : weights) {
        amounts.push_back(divide(absolute * weight, allWeights, digits, Rounding::Down));
        cut.push_back(absolute * weight - amounts.back() * allWeights);
    }
    std::vector<std::size_t> byCut(weights.size());
    std::iota(byCut.begin(), byCut.end(), std::size_t{0});
    std::stable_sort(byCut.begin(), byCut.end(), [&cut](std::size_t left, std::size_t right) {
        return cut[left] > cut[right];
    });
    const Decimal minorUnit = Decimal::scaled(1, digits);
    Decimal left = std::accumulate(amounts.begin(), amounts.end(), absolute, std::minus<>());
    for (auto next = byCut.begin(); left.sign() > 0; ++next, left -= minorUnit)
        amounts[*next] += minorUnit;

    std::vector<Money> result;
    for (const Decimal &amount : amounts)
        result.push_back({total.amount.sign() < 0 ? -amount : amount, total.currency});
    return result;
}

} // namespace flarestock
