// SPDX-License-Identifier: MIT
//
// Which quantities of an offer come in question.

#include "model/buying/plan/wishes.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

/// Of one offer; more below the need are thinned out.
constexpr std::int64_t BelowMost = 120;
/// Beyond the need or a price break, for the sake of freight or a minimum order.
constexpr std::int64_t BeyondMost = 60;

std::int64_t lotsFor(const Decimal &quantity, const Decimal &lot)
{
    return divide(quantity, lot, 0, Rounding::Ceiling).toInt64().value_or(1);
}

/// The last before the need, the first of all, and every so many between.
std::set<std::int64_t> thinned(std::int64_t least, std::int64_t top)
{
    std::set<std::int64_t> lots;
    const std::int64_t each = (top - least) / (BelowMost / 2) + 1;
    for (std::int64_t at = least; at <= top; at += at < least + 20 || at > top - 40 ? 1 : each)
        lots.insert(at);
    lots.insert(top);
    return lots;
}

} // namespace

void Wishes::choose(PartWish &wish, OfferChoices &from)
{
    const Offer &offer = *from.offer;
    const Decimal lot = offer.pack * offer.multiple;
    const std::int64_t least = std::max<std::int64_t>(1, lotsFor(offer.minimum, lot));
    const Decimal need = Decimal::scaled(wish.units(), wish.scale);
    const std::int64_t top = std::max(least, lotsFor(need, lot));
    const auto choiceOf = [&](std::int64_t lots) {
        return choice(wish, from, lot * Decimal(lots));
    };
    std::set<std::int64_t> lots{top};
    if (wish.offers.size() > 1) { // Others may cover the rest.
        const bool isFew = top - least <= BelowMost;
        hasAll = hasAll && isFew;
        if (isFew)
            for (std::int64_t at = least; at < top; ++at)
                lots.insert(at);
        else
            lots.merge(thinned(least, top));
    }
    const std::int64_t reach = parcels[from.parcel].reach();
    const LineChoice enough = choiceOf(top);
    std::set<std::int64_t> begins{top};
    for (const Offer::Break &step : offer.breaks) {
        const std::int64_t at = std::max(least, lotsFor(step.from, lot));
        begins.insert(at);
        if (at > top || wish.offers.size() > 1)
            lots.insert(at);
    }
    if (reach > 0) {
        for (const std::int64_t begin : begins)
            for (std::int64_t at = begin; at <= begin + BeyondMost; ++at) {
                if (at > top && choiceOf(at).goods > enough.goods + reach)
                    break;
                if (at > top)
                    lots.insert(at);
            }
    }
    for (const std::int64_t at : lots) {
        LineChoice made = choiceOf(at);
        if (at <= top || made.goods < enough.goods ||
            (reach > 0 && made.goods <= enough.goods + reach))
            from.choices.push_back(std::move(made));
    }
}

} // namespace flarestock
