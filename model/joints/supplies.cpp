// SPDX-License-Identifier: MIT

#include "model/joints/supplies.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

constexpr std::int32_t CostScale = 6;

const Decimal *priceEach(const Catalogue &catalogue, const Part &part, int count)
{
    const Decimal quantity(count);
    const Offer *offer = catalogue.bestOffer(part, quantity);
    return offer == nullptr ? nullptr : &offer->priceEach(quantity);
}

int wholeFree(const Decimal &left)
{
    if (left.sign() <= 0)
        return 0;
    const auto whole = left.rescaled(0, Rounding::Floor).toInt64();
    return whole ? static_cast<int>(std::min<std::int64_t>(*whole, 1'000'000)) : 1'000'000;
}

} // namespace

std::int64_t toMicro(const Decimal &amount)
{
    const Decimal micro = (amount * Decimal(1'000'000)).rescaled(0, Rounding::HalfEven);
    const auto whole = micro.toInt64();
    if (!whole)
        return micro.sign() < 0 ? 0 : MicroMax;
    return std::clamp<std::int64_t>(*whole, 0, MicroMax);
}

BuyingPrice::BuyingPrice(const Catalogue &catalogue, const Part &part)
{
    const auto offers = catalogue.offers(part);
    m_sold = !offers.empty();
    if (!m_sold)
        return;
    m_one = toMicro(*priceEach(catalogue, part, 1));
    if (offers.size() == 1 && offers.front().breaks.size() == 1 &&
        offers.front().breaks[0].priceEach.scale() <= CostScale)
        return;
    m_byCount.reserve(CountMax);
    for (int count = 1; count <= CountMax; ++count) {
        m_byCount.push_back(toMicro(*priceEach(catalogue, part, count) * Decimal(count)));
        m_rises = m_rises && (count == 1 || m_byCount.back() >= m_byCount[m_byCount.size() - 2]);
    }
}

std::int64_t BuyingPrice::micro(int count) const
{
    assert(count >= 0);
    if (count == 0)
        return 0;
    if (m_byCount.empty())
        return std::min(m_one, MicroMax / count) * count;
    assert(count <= CountMax); // a way has at most six pieces and seven links
    return m_byCount[static_cast<std::size_t>(count - 1)];
}

Supplies::Supplies(const Catalogue &catalogue, const std::vector<Stocked> &stocked,
                   const Shelf &shelf, const FreeLeft &left)
    : m_catalogue(catalogue), m_stocked(stocked), m_shelf(shelf), m_left(left),
      m_slots(stocked.size(), 0)
{
}

Supplies::Known &Supplies::known(StockedIndex index)
{
    std::uint32_t &slot = m_slots[index];
    if (slot == 0) {
        Known fresh;
        const Part &part = *m_stocked[index].part;
        fresh.free = wholeFree(m_left(part));
        if (fresh.free > 0) {
            const auto found = m_shelf.find(part.number);
            fresh.stock = found == m_shelf.end() ? nullptr : &found->second;
        }
        m_known.push_back(fresh);
        slot = static_cast<std::uint32_t>(m_known.size());
    }
    return m_known[slot - 1];
}

Supplies::Cost Supplies::cost(StockedIndex index, int count)
{
    Known &part = known(index);
    const BuyingPrice &price = m_stocked[index].price;
    Cost cost;
    cost.toBuy = std::max(0, count - part.free);
    cost.unpriced = price.isSold() ? 0 : cost.toBuy;
    if (part.free == 0) {
        cost.micro = price.micro(count);
        return cost;
    }
    const auto place = static_cast<std::size_t>(count - 1);
    if (place >= part.micro.size()) {
        cost.micro = toMicro(exactCost(index, count));
        return cost;
    }
    if (part.micro[place] < 0)
        part.micro[place] = toMicro(exactCost(index, count));
    cost.micro = part.micro[place];
    return cost;
}

Decimal Supplies::exactCost(const Catalogue &catalogue, const Part &part, const FreeStock *stock,
                            std::array<int, 2> hereAndToBuy)
{
    const auto [here, toBuy] = hereAndToBuy;
    Rational sum;
    if (here > 0 && stock != nullptr)
        sum = stock->carriedUnitCost().times(Decimal(here));
    if (toBuy > 0) {
        if (const Decimal *each = priceEach(catalogue, part, toBuy))
            sum = sum.plus(Rational(*each * Decimal(toBuy)));
    }
    return sum.toDecimal(CostScale, Rounding::HalfEven);
}

Decimal Supplies::exactCost(StockedIndex index, int count)
{
    const Known &part = known(index);
    const int toBuy = std::max(0, count - part.free);
    return exactCost(m_catalogue, *m_stocked[index].part, part.stock, {count - toBuy, toBuy});
}

} // namespace flarestock
