// SPDX-License-Identifier: MIT

#include "model/netting/priced_bill.h"

namespace flarestock {

namespace {

constexpr std::int32_t UnitCostPlacesLeast = 4;
constexpr std::int32_t UnitCostPlacesMost = 10;

/// free × carried unit cost + short × the offer's price for the short quantity, exact.
std::optional<Rational> exactCost(const PricedLine &line, const FreeStock *stock)
{
    Rational cost;
    if (line.free.sign() > 0)
        cost = stock->carriedUnitCost().times(line.free);
    if (line.shortBy.sign() <= 0)
        return cost;
    if (!line.offer)
        return std::nullopt;
    return cost.plus(Rational(line.offer->priceEach(line.shortBy) * line.shortBy));
}

PricedLine pricedLine(const BillLine &line, const Catalogue &catalogue, const FreeStock *stock,
                      const Currency &currency)
{
    PricedLine priced;
    priced.line = &line;
    priced.free = allotted(line, stock);
    priced.shortBy = line.need.amount - priced.free;
    if (priced.shortBy.sign() > 0) {
        priced.offer = catalogue.bestOffer(*line.part, priced.shortBy, currency);
        priced.otherCurrency = !priced.offer && !catalogue.offers(*line.part).empty();
    }
    const auto cost = exactCost(priced, stock);
    if (!cost)
        return priced;
    priced.unitCost = cost->over(Rational(line.need.amount));
    priced.cost = Money{cost->toDecimal(currency.minorDigits(), Rounding::HalfEven), currency};
    return priced;
}

} // namespace

std::string PricedLine::unitCostText() const
{
    if (!unitCost)
        return {};
    const auto exact = unitCost->exactDecimal(UnitCostPlacesMost);
    if (!exact)
        return unitCost->toDecimal(UnitCostPlacesMost, Rounding::HalfEven).text();
    const Decimal shortest = exact->stripped();
    return shortest.scale() >= UnitCostPlacesLeast
               ? shortest.text()
               : shortest.rescaled(UnitCostPlacesLeast, Rounding::HalfEven).text();
}

PricedBill price(const Expansion &expansion, const Catalogue &catalogue, const Shelf &shelf,
                 const Currency &currency)
{
    PricedBill bill{{}, Money{Decimal::scaled(0, currency.minorDigits()), currency}, {}, true};
    bill.lines.reserve(expansion.lines.size());
    for (const BillLine &line : expansion.lines) {
        const auto found = shelf.find(line.part->number);
        const FreeStock *stock = found == shelf.end() ? nullptr : &found->second;
        bill.lines.push_back(pricedLine(line, catalogue, stock, currency));
        const PricedLine &priced = bill.lines.back();
        if (priced.cost)
            bill.total = bill.total + *priced.cost;
        else
            bill.unpriced.push_back(line.part->number);
        if (priced.shortBy.sign() > 0)
            bill.complete = false;
    }
    return bill;
}

} // namespace flarestock
