// SPDX-License-Identifier: MIT

#include "model/systems/expanding/ranking.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

/// Less than zero where a is cheaper; what has no price comes last.
int comparedByCost(const Ranked &a, const Ranked &b)
{
    if (a.cost && b.cost)
        return *a.cost < *b.cost ? -1 : (*b.cost < *a.cost ? 1 : 0);
    return a.cost ? -1 : (b.cost ? 1 : 0);
}

bool comesBefore(const Ranked &a, const Ranked &b, Preference preference)
{
    const int here = static_cast<int>(b.here) - static_cast<int>(a.here);
    const int adapters = a.adapters - b.adapters;
    const int misfits = a.misfits - b.misfits;
    const int cost = comparedByCost(a, b);
    std::array<int, 4> order = {here, adapters, cost, misfits};
    if (preference == Preference::Joints)
        order = {adapters, misfits, here, cost};
    if (preference == Preference::Money)
        order = {cost, here, adapters, misfits};
    if (a.doubtful != b.doubtful)
        return b.doubtful;
    for (const int one : order)
        if (one != 0)
            return one < 0;
    return a.part->number < b.part->number;
}

} // namespace

void rank(std::vector<Ranked> &parts, Preference preference)
{
    std::sort(parts.begin(), parts.end(), [preference](const Ranked &a, const Ranked &b) {
        return comesBefore(a, b, preference);
    });
}

std::string supplyText(const Part &part, Allotment &allotment)
{
    const Decimal left = allotment.left(part);
    if (left.sign() > 0)
        return Quantity{left.stripped(), part.unit}.spoken() + " on the shelf";
    const auto price = allotment.cost(part, 1, false);
    return price ? "to be bought, " + price->rescaled(2, Rounding::HalfEven).text()
                 : "to be bought, without a price";
}

} // namespace flarestock
