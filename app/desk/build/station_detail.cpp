// SPDX-License-Identifier: MIT

#include "app/desk/build/detail.h"
#include "app/desk/build/detail_words.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

std::vector<Row> portRows(const PlacedStation &station)
{
    std::vector<Row> rows;
    for (const PartPort &port : station.part->ports) {
        const QString role = port.role == PortRole::Either ? QString() : said(text(port.role));
        rows.push_back(
            {said(port.name),
             {QStringLiteral("port"), said(port.port.text()),
              role.isEmpty() || role == said(port.name)
                  ? said(port.name)
                  : QString(said(port.name) + QStringLiteral(", ") + role),
              QString(), false, -1, QString(said(port.name) + u' ' + said(port.port.text()))}});
    }
    return rows;
}

QString priceOf(const WorkedOut &worked, const Part &part)
{
    const auto stock = worked.shelf->find(part.number);
    const Currency currency = worked.bill->total.currency;
    if (stock != worked.shelf->end() && stock->second.free.amount.sign() > 0)
        return saidMoney(
            {stock->second.carriedUnitCost().toDecimal(currency.minorDigits(), Rounding::HalfEven),
             currency});
    const Offer *offer = worked.catalogue->bestOffer(part, Decimal(1));
    if (offer == nullptr)
        return DetailWords::tr("no price");
    return saidMoney(
        Money{offer->priceEach(Decimal(1)), offer->currency}.toMinorDigits(Rounding::HalfEven));
}

Row partRow(const WorkedOut &worked, const Part &part, bool inUse)
{
    const Whereabouts at = whereabouts(*worked.shelf, part, Decimal(1));
    const QString where = at.isShort ? DetailWords::tr("leaves 1 short") : at.text;
    return {said(part.number),
            {said(part.number), QString(said(part.description) + QStringLiteral("; ") + where),
             priceOf(worked, part), at.isShort ? 1 : 0, inUse, said(part.number)}};
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

Whereabouts whereabouts(const Shelf &shelf, const Part &part, const Decimal &wanted)
{
    const auto found = shelf.find(part.number);
    if (found == shelf.end() || found->second.free.amount.sign() <= 0)
        return {DetailWords::tr("none here"), true};
    const FreeStock &stock = found->second;
    const QString place = stock.places.empty() ? QString() : said(stock.places.front().place);
    const QString free = saidQuantity(stock.free);
    return {place.isEmpty() ? free : DetailWords::tr("%1 in %2").arg(free, place),
            stock.free.amount < wanted};
}

Detail stationDetail(const WorkedOut &worked, const PlacedStation &station)
{
    Detail detail;
    detail.title = said(station.station != nullptr ? station.station->title : station.id);
    detail.slot = said(station.id);
    detail.picked = station.picked;
    detail.why = said(station.why);
    if (station.part == nullptr) {
        detail.subtitle = DetailWords::tr("nothing in the catalogue meets this station's demand");
        detail.mark = Standing::Open;
        detail.toBuy = true;
        detail.standing = DetailWords::tr("open");
    } else {
        const Whereabouts at = whereabouts(*worked.shelf, *station.part, Decimal(1));
        detail.subtitle = QString(said(station.part->number) + QStringLiteral("  ·  ") +
                                  said(station.part->description));
        detail.mark = at.isShort ? Standing::Short : Standing::Made;
        detail.toBuy = at.isShort;
        detail.standing = at.isShort ? DetailWords::tr("not on the shelf") : at.text;
        detail.pieces = portRows(station);
        detail.ways.push_back(partRow(worked, *station.part, true));
    }
    for (const Part *other : station.others) {
        if (other != station.part)
            detail.ways.push_back(partRow(worked, *other, false));
    }
    if (station.picked && station.better != nullptr && station.better != station.part)
        detail.better = DetailWords::tr("your pick stays; not picked, it would be %1")
                            .arg(said(station.better->number));
    return detail;
}

} // namespace flarestock
