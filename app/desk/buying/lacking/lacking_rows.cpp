// SPDX-License-Identifier: MIT

#include "app/desk/buying/lacking/lacking_rows.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/language/sentences.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// One shortage with what says it.
struct Lack {
    const BuyersBook &book;
    const Shortage &shortage;
    const Part &part;
    Units units;

    [[nodiscard]] QString much(const Decimal &amount) const
    {
        return saidMuch(amount, part, units);
    }
    [[nodiscard]] QString day(const std::string &iso) const { return saidDayOf(iso, book.today); }
};

QString saidComing(const Lack &lack, const std::vector<NeedLine::Coming> &coming)
{
    QStringList all;
    for (const NeedLine::Coming &one : coming)
        all.append(BuyingWords::tr("%1 of %2 on %3")
                       .arg(lack.much(one.quantity), saidOrder(one.order), lack.day(one.day)));
    return all.join(QStringLiteral(", "));
}

/// What still comes of the part, in time or too late, whichever build gets it.
QString saidOnItsWay(const Lack &lack)
{
    QStringList all;
    for (const OnOrder &one : lack.book.coming) {
        if (one.part != lack.part.number)
            continue;
        all.append(
            one.day.empty()
                ? BuyingWords::tr("%1, no day said").arg(lack.much(one.quantity))
                : BuyingWords::tr("%1 on %2").arg(lack.much(one.quantity), lack.day(one.day)));
    }
    return all.join(QStringLiteral(", "));
}

QString saidFor(const Lack &lack)
{
    QStringList all;
    for (const Shortage::For &one : lack.shortage.wanted)
        all.append(saidWhom(one.whom, *lack.book.workshop));
    return all.join(QStringLiteral(", "));
}

/// The earliest day by which something of it has to be ordered, and whether that is over.
std::pair<QString, bool> saidOrderBy(const Lack &lack)
{
    std::string first;
    bool isOver = false;
    for (const NeedLine *want : lack.book.wantsOf(lack.shortage)) {
        const std::string &by = want->lastDay();
        if (by.empty() || (!first.empty() && first <= by))
            continue;
        first = by;
        isOver = want->isTooLate();
    }
    if (!first.empty())
        return {isOver ? BuyingWords::tr("%1, is over").arg(lack.day(first)) : lack.day(first),
                isOver};
    return {lack.shortage.day.empty() ? BuyingWords::tr("soon")
                                      : BuyingWords::tr("nobody sells it"),
            false};
}

QString neededBy(const Lack &lack)
{
    if (lack.shortage.day.empty())
        return BuyingWords::tr("no day was said");
    const auto away = daysBetween(lack.book.today, lack.shortage.day);
    return BuyingWords::tr("needed by %1, %2")
        .arg(lack.day(lack.shortage.day), away ? saidAway(*away) : QString());
}

Row lackingRow(const Lack &lack)
{
    Decimal need;
    for (const NeedLine *want : lack.book.wantsOf(lack.shortage))
        need += want->need;
    const auto [orderBy, isPast] = saidOrderBy(lack);
    const QString by = neededBy(lack);
    const QString whom = saidFor(lack);
    const QString coming = saidOnItsWay(lack);
    QString says = BuyingWords::tr("%1, %2: %3 short of %4, %5, for %6; order by %7")
                       .arg(said(lack.part.number), said(lack.part.description),
                            lack.much(lack.shortage.quantity), lack.much(need), by, whom, orderBy);
    if (!coming.isEmpty())
        says = BuyingWords::tr("%1; on its way: %2").arg(says, coming);
    return {lackingKey(lack.shortage),
            {said(lack.part.number), said(lack.part.description), lack.much(lack.shortage.quantity),
             lack.much(need), by, whom, coming, orderBy, isPast, says}};
}

Row fact(const QString &key, const QString &title, const QString &detail, bool flagged = false)
{
    return {key, {title, detail, flagged}};
}

QString saidHad(const Lack &lack, const NeedLine &want)
{
    QStringList had;
    if (want.own.sign() > 0)
        had.append(BuyingWords::tr("%1 its own").arg(lack.much(want.own)));
    if (want.free.sign() > 0)
        had.append(BuyingWords::tr("%1 from stock").arg(lack.much(want.free)));
    if (!want.coming.empty())
        had.append(saidComing(lack, want.coming));
    return had.isEmpty() ? BuyingWords::tr("has none of it") : had.join(QStringLiteral(", "));
}

QString whomKey(const NeedLine &want)
{
    return QString(said(want.whom) + u'|' + said(want.work));
}

/// The build or place; "Coupe: pre-filter, element" of what is due to a car.
QString saidWanting(const NeedLine &want, const Workshop &shop)
{
    const QString whom = saidWhom(want.whom, shop);
    return want.work.empty() ? whom : BuyingWords::tr("%1: %2").arg(whom, said(want.work));
}

void addOrdering(std::vector<Row> &facts, const Lack &lack, const NeedLine &want)
{
    const QString key = whomKey(want);
    if (!want.late.empty())
        facts.push_back(fact(key + QStringLiteral("|late"), BuyingWords::tr("comes too late"),
                             saidComing(lack, want.late), true));
    if (!want.quicker.empty())
        facts.push_back(fact(key + QStringLiteral("|quicker"), BuyingWords::tr("in time yet"),
                             BuyingWords::tr("%1, ordered by %2")
                                 .arg(saidSupplier(want.quicker, lack.book.workshop->catalogue),
                                      lack.day(want.quickerBy))));
}

void addOffers(std::vector<Row> &facts, const Lack &lack)
{
    const Catalogue &catalogue = lack.book.workshop->catalogue;
    for (const Offer &offer : catalogue.offers(lack.part)) {
        const Decimal each = offer.priceEach(lack.shortage.quantity);
        facts.push_back(fact(QStringLiteral("offer|") + said(offer.supplier),
                             saidSupplier(offer.supplier, catalogue),
                             BuyingWords::tr("%1 %2 each, %3 days")
                                 .arg(saidPrice(each, offer.currency), said(offer.currency.code()),
                                      QString::number(offer.leadDays))));
    }
}

} // namespace

QStringList lackingCells()
{
    return {QStringLiteral("part"),   QStringLiteral("what"),    QStringLiteral("lacks"),
            QStringLiteral("of"),     QStringLiteral("by"),      QStringLiteral("whom"),
            QStringLiteral("coming"), QStringLiteral("orderBy"), QStringLiteral("isPast"),
            QStringLiteral("says")};
}

QString lackingKey(const Shortage &shortage)
{
    return QString(said(shortage.part) + u'|' + said(shortage.day));
}

std::vector<Row> lackingRows(const BuyersBook &book, Units units)
{
    std::vector<Row> rows;
    for (const Shortage &shortage : book.shortages)
        if (const Part *part = book.workshop->part(shortage.part))
            rows.push_back(lackingRow({book, shortage, *part, units}));
    return rows;
}

QStringList lackingFactCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("flagged")};
}

std::vector<Row> lackingFacts(const BuyersBook &book, const Shortage &shortage, Units units)
{
    const Part *part = book.workshop->part(shortage.part);
    if (part == nullptr)
        return {};
    const Lack lack{book, shortage, *part, units};
    std::vector<Row> facts;
    const auto [orderBy, isPast] = saidOrderBy(lack);
    facts.push_back(fact(QStringLiteral("by"), neededBy(lack),
                         BuyingWords::tr("order by: %1").arg(orderBy), isPast));
    for (const NeedLine *want : book.wantsOf(shortage)) {
        facts.push_back(
            fact(whomKey(*want), saidWanting(*want, *book.workshop),
                 BuyingWords::tr("short %1 of %2: %3")
                     .arg(lack.much(want->shortBy), lack.much(want->need), saidHad(lack, *want))));
        addOrdering(facts, lack, *want);
    }
    if (const QString coming = saidOnItsWay(lack); !coming.isEmpty())
        facts.push_back(fact(QStringLiteral("coming"), BuyingWords::tr("on its way"), coming));
    if (!shortage.instead.empty()) {
        QStringList instead;
        for (const std::string &number : shortage.instead)
            instead.append(said(number));
        facts.push_back(fact(QStringLiteral("instead"), BuyingWords::tr("lies free instead"),
                             instead.join(QStringLiteral(", "))));
    }
    addOffers(facts, lack);
    return facts;
}

QStringList lackingNotes(const BuyersBook &book)
{
    QStringList notes;
    for (const std::string &note : book.unsure)
        notes.append(inWords(note));
    for (const LevelSeen &seen : book.needs.levels)
        notes.append(
            BuyingWords::tr("%1 at %2 is %3: nobody counts it.")
                .arg(said(seen.part), saidWhom(seen.place, *book.workshop), saidLevel(seen.level)));
    for (const std::string &note : book.needs.notes)
        notes.append(inWords(note));
    return notes;
}

} // namespace flarestock
