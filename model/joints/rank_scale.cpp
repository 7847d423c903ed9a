// SPDX-License-Identifier: MIT

#include "model/joints/rank_scale.h"

#include <algorithm>

namespace flarestock {

namespace {

// A way of 8 pieces has 9 links, each of at most two needs of at most two things: 8 + 36 things.
constexpr unsigned NeedBits = 5;
constexpr unsigned NarrowBits = 5;
constexpr unsigned ThingBits = 6;
constexpr unsigned PieceBits = 4;
constexpr unsigned LinkBits = 4;
constexpr unsigned LeadBits = NeedBits + NarrowBits;
/// Costs by the preference: behind all criteria in units of 1024 millionths, or behind three of
/// them in millionths.
constexpr unsigned LastCostBits = 64 - LeadBits - 2 * ThingBits - PieceBits - LinkBits;
constexpr unsigned LastCostCut = 10;
constexpr unsigned MoneyCostBits = 64 - LeadBits - ThingBits;

/// Puts one criterion behind those that the number has.
void put(std::uint64_t &number, unsigned bits, std::int64_t criterion)
{
    number = number << bits | static_cast<std::uint64_t>(criterion);
}

std::int64_t cost(std::int64_t units, unsigned bits)
{
    return std::clamp<std::int64_t>(units, 0, (std::int64_t{1} << bits) - 1);
}

} // namespace

std::uint64_t RankScale::weigh(const WayRank &rank, unsigned spare) const noexcept
{
    std::uint64_t number = 0;
    put(number, NeedBits, rank.unanswered);
    put(number, NarrowBits, rank.narrow);
    if (m_preference == Preference::Money) {
        put(number, ThingBits, rank.unpriced);
        put(number, MoneyCostBits, cost(rank.costMicro, MoneyCostBits - spare));
        return number;
    }
    if (m_preference == Preference::Joints)
        put(number, PieceBits, rank.pieces);
    put(number, ThingBits, rank.toBuy);
    if (m_preference == Preference::Shelf)
        put(number, PieceBits, rank.pieces);
    put(number, LinkBits, rank.cautions);
    put(number, ThingBits, rank.unpriced);
    put(number, LastCostBits, cost(rank.costMicro >> LastCostCut, LastCostBits - spare));
    return number;
}

} // namespace flarestock
