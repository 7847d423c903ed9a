// SPDX-License-Identifier: MIT

#include "model/programme/digits.h"

#include <algorithm>
#include <cstdlib>

namespace flarestock {

namespace {

std::int64_t largestFactor(const LinearSum &sum)
{
    std::int64_t largest = 0;
    for (const Term &term : sum)
        largest = std::max<std::int64_t>(largest, std::abs(term.times));
    return largest;
}

std::size_t addNumber(Search &search, Programme::Range range)
{
    search.numbers.push_back(range);
    return search.numbers.size() - 1;
}

/// Takes the last digit off a number; the last of all keeps its sign and size.
std::int64_t takeDigit(std::int64_t &number, bool isLast)
{
    const std::int64_t rest = isLast ? 0 : floorOf(number, DigitBase);
    const std::int64_t digit = isLast ? number : number - rest * DigitBase;
    number = rest;
    return digit;
}

/// The sum, and a spare that is zero or more where it is asked for, come to `value`.
void keepSum(Search &search, LinearSum sum, std::int64_t value, bool isSpare)
{
    std::int64_t spare = isSpare ? value - rangeIn(search.numbers, sum).least : 0;
    if (spare < 0) {
        search.limits.push_back({{}, {1, 1}}); // Nothing comes so low.
        return;
    }
    std::int64_t largest = largestFactor(sum);
    std::optional<std::size_t> carried;
    for (bool isLast = false; !isLast; largest /= DigitBase) {
        isLast = largest <= DigitBase;
        Programme::Limit row;
        for (Term &term : sum)
            row.sum.push_back({term.number, takeDigit(term.times, isLast)});
        if (isSpare) {
            row.sum.push_back({addNumber(search, {0, isLast ? spare : DigitBase - 1}), 1});
            spare /= DigitBase;
        }
        if (carried)
            row.sum.push_back({*carried, 1});
        const std::int64_t digit = takeDigit(value, isLast);
        if (!isLast) {
            const auto range = rangeIn(search.numbers, row.sum);
            carried = addNumber(search, {floorOf(range.least - digit, DigitBase),
                                         floorOf(range.most - digit, DigitBase)});
            row.sum.push_back({*carried, -DigitBase});
        }
        row.range = {digit, digit};
        search.limits.push_back(std::move(row));
    }
}

} // namespace

std::int64_t floorOf(std::int64_t number, std::int64_t by) noexcept
{
    return number / by - (number % by < 0 ? 1 : 0);
}

Programme::Range rangeIn(const std::vector<Programme::Range> &numbers, const LinearSum &sum)
{
    Programme::Range range;
    for (const Term &term : sum) {
        const Programme::Range &of = numbers[term.number];
        range.least += term.times * (term.times > 0 ? of.least : of.most);
        range.most += term.times * (term.times > 0 ? of.most : of.least);
    }
    return range;
}

void keepInDigits(Search &search, const Programme::Limit &limit)
{
    const auto [least, most] = limit.range;
    if (largestFactor(limit.sum) <= DigitBase) {
        search.limits.push_back(limit);
        return;
    }
    if (least == most) {
        keepSum(search, limit.sum, most, false);
        return;
    }
    if (most < NoLimit::Above)
        keepSum(search, limit.sum, most, true);
    if (least > NoLimit::Below) {
        LinearSum turned = limit.sum;
        for (Term &term : turned)
            term.times = -term.times;
        keepSum(search, std::move(turned), -least, true);
    }
}

} // namespace flarestock
