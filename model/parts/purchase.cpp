// SPDX-License-Identifier: MIT

#include "model/parts/purchase.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

Purchase cheapestPurchase(const Offer &offer, const Decimal &need)
{
    assert(offer.pack.sign() > 0 && offer.multiple.sign() > 0 && !offer.breaks.empty());
    const Decimal lot = offer.pack * offer.multiple;
    const auto inPacks = [&lot](const Decimal &least) {
        return divide(least, lot, 0, Rounding::Ceiling) * lot;
    };
    const auto buying = [&offer](const Decimal &quantity) {
        return Purchase{&offer, quantity, quantity * offer.priceEach(quantity)};
    };
    Purchase best = buying(inPacks(std::max({need, offer.minimum, lot})));
    const Decimal least = best.quantity;
    for (const Offer::Break &step : offer.breaks) {
        if (step.from <= least)
            continue;
        Purchase more = buying(inPacks(step.from));
        if (more.cost < best.cost)
            best = std::move(more);
    }
    return best;
}

} // namespace flarestock
