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
    std::int64_t least = m_one;
    for (const Offer &offer : offers)
        for (const auto &at : offer.breaks)
            least = std::min(least, toMicro(at.priceEach));
    m_fallsTo = static_cast<int>(std::min<std::int64_t>(1000, least / (m_one / 1000 + 1)));
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

std::int64_t BuyingPrice::leastMore() const
{
    if (m_byCount.empty() || !m_rises)
        return m_byCount.empty() ? m_one : 0;
    std::int64_t least = m_byCount.front();
    for (std::size_t i = 1; i < m_byCount.size(); ++i)
        least = std::min(least, m_byCount[i] - m_byCount[i - 1]);
    return least;
}

Supplies::Supplies(const StockedParts &stocked, const Shelf &shelf)
    : m_stocked(stocked), m_slots(stocked.parts.size(), 0)
{
    for (const auto &[number, stock] : shelf) {
        const Part *part = stocked.catalogue->find(number);
        const StockedIndex index = part ? stocked.place(*part) : StockedParts::None;
        if (index != StockedParts::None)
            setFree(index, wholeFree(stock.usable()), &stock);
    }
}

Supplies::Supplies(const StockedParts &stocked, const Shelf &shelf, const FreeLeft &left)
    : m_stocked(stocked), m_slots(stocked.parts.size(), 0)
{
    for (StockedIndex index = 0; index < stocked.parts.size(); ++index) {
        const Part &part = *stocked.parts[index].part;
        const int free = wholeFree(left(part));
        if (free == 0)
            continue;
        const auto found = shelf.find(part.number);
        setFree(index, free, found == shelf.end() ? nullptr : &found->second);
    }
}

void Supplies::setFree(StockedIndex index, int free, const FreeStock *stock)
{
    if (m_slots[index] == 0 && free == 0)
        return;
    if (m_slots[index] == 0) {
        m_here.emplace_back();
        m_slots[index] = static_cast<std::uint32_t>(m_here.size());
    }
    m_here[m_slots[index] - 1] = {free, stock};
}

int Supplies::freeOf(StockedIndex index) const noexcept
{
    return m_slots[index] == 0 ? 0 : m_here[m_slots[index] - 1].free;
}

void Supplies::setLeft(const Part &part, const Decimal &left)
{
    const StockedIndex index = m_stocked.place(part);
    if (index == StockedParts::None || m_slots[index] == 0)
        return;
    setFree(index, wholeFree(left), m_here[m_slots[index] - 1].stock);
    for (std::size_t i = 0; i < m_least.size(); ++i) {
        if (!m_least[i].empty())
            m_least[i][index] = leastOf(index, static_cast<Preference>(i));
    }
}

const std::vector<std::uint64_t> &Supplies::least(Preference preference)
{
    auto &row = m_least[static_cast<std::size_t>(preference)];
    if (row.empty()) {
        row.reserve(m_stocked.parts.size());
        for (StockedIndex index = 0; index < m_stocked.parts.size(); ++index)
            row.push_back(leastOf(index, preference));
    }
    return row;
}

/// Of a free one and one to buy, whichever is less: a search may take several, and what is free now
/// may be gone later.
std::uint64_t Supplies::leastOf(StockedIndex index, Preference preference)
{
    const RankScale scale(preference);
    const BuyingPrice &price = m_stocked.parts[index].price;
    WayRank bought;
    bought.toBuy = 1;
    bought.unpriced = price.isSold() ? 0 : 1;
    bought.costMicro = price.leastMore();
    const int free = freeOf(index);
    if (free == 0)
        return scale.single(bought);
    // What is here and what is bought are rounded as one sum: each may take a millionth less.
    bought.costMicro = std::max<std::int64_t>(0, bought.costMicro - 1);
    WayRank here;
    if (price.rises())
        here.costMicro = std::max<std::int64_t>(0, cost(index, 1).micro - 1);
    return std::min(scale.single(here), scale.single(bought));
}

Supplies::Cost Supplies::cost(StockedIndex index, int count)
{
    const BuyingPrice &price = m_stocked.parts[index].price;
    const int free = freeOf(index);
    Cost cost;
    cost.toBuy = std::max(0, count - free);
    cost.unpriced = price.isSold() ? 0 : cost.toBuy;
    if (free == 0) {
        cost.micro = price.micro(count);
        return cost;
    }
    Here &part = m_here[m_slots[index] - 1];
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

Decimal Supplies::amount(StockedIndex index, int count)
{
    const std::int64_t micro = cost(index, count).micro;
    const bool isCutOff = micro == 0 || micro > MicroMax / 2; // By toMicro() or BuyingPrice.
    return isCutOff ? exactCost(index, count) : Decimal::scaled(micro, CostScale);
}

Decimal Supplies::exactCost(StockedIndex index, int count)
{
    const int toBuy = std::max(0, count - freeOf(index));
    const FreeStock *stock = toBuy == count ? nullptr : m_here[m_slots[index] - 1].stock;
    return exactCost(*m_stocked.catalogue, *m_stocked.parts[index].part, stock,
                     {count - toBuy, toBuy});
}

} // namespace flarestock
