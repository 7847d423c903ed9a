// SPDX-License-Identifier: MIT
//
// What is said of a part wherever it stands in a detail: where it lies, and what it costs.

#include "app/desk/opened/detail.h"
#include "app/desk/opened/detail_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Whether there is so much of it: of what is cut, in one piece, or cut for this build before.
bool holds(const FreeStock &stock, const Decimal &wanted)
{
    if (stock.cutBefore && stock.cutBefore->amount >= wanted)
        return true;
    if (stock.pieces.empty())
        return stock.free.amount >= wanted;
    return std::any_of(stock.pieces.begin(), stock.pieces.end(), [&](const Quantity &piece) {
        const auto length = piece.exactlyIn(stock.free.unit);
        return length && length->amount >= wanted;
    });
}

/// "1 in the car, 2 in A2, 1 in TR-D3": each place with what lies there; what is free and lies at
/// none of them the build has got. What is too much for a line is "elsewhere".
QString saidPlaces(const FreeStock &stock, Units units)
{
    constexpr qsizetype Named = 2;
    Decimal rest = stock.free.amount;
    for (const FreeStock::AtPlace &at : stock.places)
        rest -= at.free.amount;
    QStringList places;
    if (rest.sign() > 0)
        places.append(
            DetailWords::tr("%1 in the car").arg(saidAmount({rest, stock.free.unit}, units)));
    Decimal elsewhere;
    for (const FreeStock::AtPlace &at : stock.places) {
        if (places.size() < Named)
            places.append(
                DetailWords::tr("%1 in %2").arg(saidAmount(at.free, units), said(at.place)));
        else
            elsewhere += at.free.amount;
    }
    if (elsewhere.sign() > 0)
        places.append(
            DetailWords::tr("%1 elsewhere").arg(saidAmount({elsewhere, stock.free.unit}, units)));
    return places.join(QStringLiteral(", "));
}

} // namespace

QStringList pieceCells()
{
    return {QStringLiteral("form"),  QStringLiteral("title"),   QStringLiteral("detail"),
            QStringLiteral("place"), QStringLiteral("isShort"), QStringLiteral("mark"),
            QStringLiteral("says")};
}

QStringList wayCells()
{
    return {QStringLiteral("title"),   QStringLiteral("detail"), QStringLiteral("cost"),
            QStringLiteral("shortOf"), QStringLiteral("inUse"),  QStringLiteral("pick")};
}

Whereabouts whereabouts(const Shelf &shelf, const Part &part, const Decimal &wanted, Units units)
{
    const auto found = shelf.find(part.number);
    if (found == shelf.end() || found->second.usable().sign() <= 0)
        return {DetailWords::tr("none here"), true};
    const FreeStock &stock = found->second;
    if (stock.level && *stock.level != StockLevel::Out) // Nobody counts it.
        return {said(stock.seen), false};
    return {saidPlaces(stock, units), !holds(stock, wanted)};
}

QString saidPrice(const WorkedOut &worked, const Part &part, const Decimal &wanted)
{
    const Currency currency = worked.bill->total.currency;
    const auto stock = worked.shelf->find(part.number);
    if (stock != worked.shelf->end() && stock->second.free.amount.sign() > 0) {
        const Rational cost = stock->second.carriedUnitCost().times(wanted);
        return saidMoney({cost.toDecimal(currency.minorDigits(), Rounding::HalfEven), currency});
    }
    const Offer *offer = worked.catalogue->bestOffer(part, wanted);
    if (offer == nullptr)
        return DetailWords::tr("no price");
    return saidMoney(Money{offer->priceEach(wanted) * wanted, offer->currency}.toMinorDigits(
        Rounding::HalfEven));
}

QString titleOf(const WorkedOut &worked, const std::string &station)
{
    const PlacedStation *placed = worked.expansion->station(station);
    return said(placed != nullptr && placed->station != nullptr ? placed->station->title : station);
}

} // namespace flarestock
