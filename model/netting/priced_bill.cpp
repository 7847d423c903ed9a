// SPDX-License-Identifier: MIT

#include "model/netting/priced_bill.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

constexpr std::int32_t UnitCostPlacesLeast = 4;
constexpr std::int32_t UnitCostPlacesMost = 10;

Decimal allotted(const BillLine &line, const FreeStock &stock)
{
    // A tool comes back, so that one promised to another build still need not be bought.
    if (stock.level && *stock.level != StockLevel::Out)
        return line.need.amount; // Nobody counts it, and there is enough.
    const Decimal &here = line.consumed ? stock.free.amount : stock.onHand.amount;
    if (line.cuts.empty())
        return std::clamp(here, Decimal(), line.need.amount);
    std::vector<Quantity> pieces = stock.pieces;
    if (pieces.empty() && here.sign() > 0)
        pieces.push_back({here, line.need.unit});
    return std::min(cuttable(line.cuts, pieces), line.need.amount);
}

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
    if (stock)
        priced.free = allotted(line, *stock);
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

/// A length in the unit of the first cut; lengths of one part convert exactly between in and mm.
Decimal inUnit(const Quantity &length, Unit unit)
{
    if (length.unit == unit)
        return length.amount;
    const auto converted = length.in(unit);
    assert(converted && "pieces and cuts of one part are lengths");
    return converted->toDecimal(6, Rounding::Floor);
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

Decimal cuttable(const std::vector<Quantity> &cuts, const std::vector<Quantity> &pieces)
{
    if (cuts.empty())
        return {};
    const Unit unit = cuts.front().unit;
    std::vector<Decimal> longestFirst;
    std::vector<Decimal> shortestFirst;
    longestFirst.reserve(cuts.size());
    shortestFirst.reserve(pieces.size());
    for (const Quantity &cut : cuts)
        longestFirst.push_back(inUnit(cut, unit));
    for (const Quantity &piece : pieces)
        shortestFirst.push_back(inUnit(piece, unit));
    std::sort(longestFirst.begin(), longestFirst.end(), std::greater<>());
    std::sort(shortestFirst.begin(), shortestFirst.end());
    Decimal sum;
    for (const Decimal &cut : longestFirst) {
        const auto piece = std::lower_bound(shortestFirst.begin(), shortestFirst.end(), cut);
        if (piece == shortestFirst.end())
            continue;
        sum += cut;
        *piece -= cut;
        // The rest moves to its place among the shorter ones.
        std::rotate(std::lower_bound(shortestFirst.begin(), piece, *piece), piece, piece + 1);
    }
    return sum;
}

} // namespace flarestock
