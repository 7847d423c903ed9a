// SPDX-License-Identifier: MIT

#include "model/parts/purchase.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

Purchase cheapestPurchase(const Offer &offer, const Decimal &need)
{
    assert(offer.pack.sign() > 0 && !offer.breaks.empty());
    const auto inPacks = [&offer](const Decimal &least) {
        return divide(least, offer.pack, 0, Rounding::Ceiling) * offer.pack;
    };
    const auto buying = [&offer](const Decimal &quantity) {
        return Purchase{&offer, quantity, quantity * offer.priceEach(quantity)};
    };
    Purchase best = buying(inPacks(std::max({need, offer.minimum, offer.pack})));
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
