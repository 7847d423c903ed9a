// SPDX-License-Identifier: MIT
//
// Where the pieces of a part lie, and what of them is free.

#include "app/desk/stock/card/card_words.h"
#include "app/desk/stock/card/part_card.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"

#include <QDateTime>

#include <algorithm>

namespace flarestock {

namespace {

QString keyOf(const BalanceKey &key)
{
    return QStringList{said(key.place), said(key.lot), said(text(key.condition))}.join(u'|');
}

const char *kindOf(PlaceKind kind)
{
    switch (kind) {
    case PlaceKind::Drawer:
        return "drawer";
    case PlaceKind::Car:
        return "car";
    case PlaceKind::Borrower:
    case PlaceKind::Repair:
        return "away";
    default:
        return "bin";
    }
}

/// Whether a hand could take it from there.
bool isReal(PlaceKind kind)
{
    return isStock(kind) || kind == PlaceKind::Car || kind == PlaceKind::Borrower ||
           kind == PlaceKind::Repair;
}

struct Lies {
    const Place *place = nullptr;
    BalanceKey key;
    std::int64_t quantity = 0;
};

/// In the order of places, the stock first.
std::vector<Lies> liesOf(const CardAsked &asked)
{
    std::vector<Lies> lies;
    const Ledger &ledger = asked.book.workshop->ledger;
    for (const auto &[key, held] : ledger.balancesOf(asked.entry.number)) {
        const Place *place = ledger.place(key.place);
        if (place && isReal(place->kind) && held.quantity > 0)
            lies.push_back({place, key, held.quantity});
    }
    std::stable_sort(lies.begin(), lies.end(), [](const Lies &a, const Lies &b) {
        const bool aStock = isStock(a.place->kind);
        const bool bStock = isStock(b.place->kind);
        return aStock != bStock ? aStock : a.place < b.place; // Both point into one list.
    });
    return lies;
}

QString detailOf(const CardAsked &asked, const Lies &lies)
{
    const Workshop &shop = *asked.book.workshop;
    QStringList detail;
    if (!lies.key.lot.empty())
        detail.append(said(lies.key.lot));
    detail.append(saidCondition(lies.key.condition));
    if (!isStock(lies.place->kind))
        detail.append(said(lies.place->title));
    const auto facts = shop.notes.lots.find({lies.key.part, lies.key.lot});
    if (facts == shop.notes.lots.end())
        return detail.join(QStringLiteral(", "));
    if (!facts->second.owner.empty())
        detail.append(CardWords::tr("only for %1").arg(said(facts->second.owner)));
    for (const std::string &last : {facts->second.useBy, facts->second.certified}) {
        if (!last.empty())
            detail.append(last < asked.book.day
                              ? CardWords::tr("past its day %1").arg(saidDate(last))
                              : CardWords::tr("until %1").arg(saidDate(last)));
    }
    return detail.join(QStringLiteral(", "));
}

bool isFreeThere(const CardAsked &asked, const Lies &lies)
{
    const auto facts = asked.book.workshop->notes.lots.find({lies.key.part, lies.key.lot});
    return isStock(lies.place->kind) && isFree(lies.key.condition) &&
           (facts == asked.book.workshop->notes.lots.end() ||
            facts->second.serves({}, asked.book.day));
}

std::vector<Row> seenRows(const CardAsked &asked)
{
    std::vector<Row> rows;
    for (const auto &[at, seen] : asked.book.workshop->notes.levels) {
        if (seen.part != asked.entry.number || !asked.entry.level)
            continue;
        const QString day = QLocale().toString(QDateTime::fromMSecsSinceEpoch(seen.at).date(),
                                               QStringLiteral("d MMM"));
        const QString detail = seen.holds.empty()
                                   ? CardWords::tr("seen %1").arg(day)
                                   : CardWords::tr("%1, seen %2").arg(said(seen.holds), day);
        const QString place = said(seen.place);
        rows.push_back({keyOf({seen.part, seen.place, {}, {}}),
                        {place, saidLevel(seen.level), detail, seen.level != StockLevel::Out,
                         QStringLiteral("seen"),
                         CardWords::tr("%1: %2, %3").arg(place, saidLevel(seen.level), detail)}});
    }
    return rows;
}

} // namespace

QStringList lyingCells()
{
    return {QStringLiteral("place"),  QStringLiteral("amount"), QStringLiteral("detail"),
            QStringLiteral("isFree"), QStringLiteral("kind"),   QStringLiteral("says")};
}

std::vector<Row> lyingRows(const CardAsked &asked)
{
    std::vector<Row> rows = seenRows(asked);
    if (asked.entry.part == nullptr)
        return rows;
    for (const Lies &lies : liesOf(asked)) {
        const QString place = said(lies.key.place);
        const QString amount = saidStock(lies.quantity, *asked.entry.part, asked.units);
        const QString detail = detailOf(asked, lies);
        rows.push_back({keyOf(lies.key),
                        {place, amount, detail, isFreeThere(asked, lies),
                         QString::fromLatin1(kindOf(lies.place->kind)),
                         CardWords::tr("%1 at %2, %3").arg(amount, place, detail)}});
    }
    return rows;
}

std::optional<BalanceKey> lyingAt(const StockEntry &entry, const QString &key)
{
    const QStringList parts = key.split(u'|');
    if (parts.size() != 3)
        return {};
    const auto condition = parsePieceCondition(parts.at(2).toStdString());
    if (!condition)
        return {};
    return BalanceKey{entry.number, parts.at(0).toStdString(), parts.at(1).toStdString(),
                      *condition};
}

QString cardSum(const CardAsked &asked)
{
    const StockEntry &entry = asked.entry;
    if (entry.part == nullptr || entry.level)
        return CardWords::tr("nobody counts it");
    const std::int64_t all = entry.here + entry.trailer;
    if (all == 0)
        return CardWords::tr("none in stock");
    const auto amount = [&](std::int64_t some) {
        return saidStock(some, *entry.part, asked.units);
    };
    const bool isInBoth = entry.here > 0 && entry.trailer > 0;
    QString sum = isInBoth ? CardWords::tr("%1 here + %2 in the trailer")
                                 .arg(amount(entry.here), amount(entry.trailer))
                  : entry.here > 0 ? CardWords::tr("%1 in stock").arg(amount(all))
                                   : CardWords::tr("%1 in stock, in the trailer").arg(amount(all));
    if (entry.promised > 0)
        sum += CardWords::tr(" − %1 promised").arg(amount(entry.promised));
    if (const std::int64_t other = all - entry.promised - entry.free; other > 0)
        sum += CardWords::tr(" − %1 not to be taken").arg(amount(other));
    if (entry.free != all || isInBoth)
        sum += CardWords::tr(" = %1 free").arg(amount(entry.free));
    if (!isLength(entry.part->unit))
        return sum;
    std::vector<std::int64_t> pieces;
    for (const Lies &lies : liesOf(asked)) {
        if (isStock(lies.place->kind))
            pieces.push_back(lies.quantity);
    }
    std::sort(pieces.rbegin(), pieces.rend());
    QStringList lengths;
    for (const std::int64_t piece : pieces)
        lengths.append(amount(piece));
    return lengths.size() < 2
               ? CardWords::tr("%1, in one piece").arg(sum)
               : CardWords::tr("%1: %2").arg(sum, lengths.join(QStringLiteral(" + ")));
}

} // namespace flarestock
