// SPDX-License-Identifier: MIT

#include "app/desk/abreast/abreast_words.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// One want with what says it.
struct SaidWant {
    const AbreastBook &book;
    const NeedLine &line;
    Units units;

    [[nodiscard]] QString much(const Decimal &amount) const
    {
        return saidMuch(amount, *line.part, units);
    }
    [[nodiscard]] QString day(const std::string &iso) const { return saidDayOf(iso, book.today); }
};

QString saidWanting(const AbreastBook &book, const NeedLine &line)
{
    const QString whom = saidWhom(line.whom, *book.workshop);
    return line.work.empty() ? whom : AbreastWords::tr("%1: %2").arg(whom, said(line.work));
}

/// Who has pieces of it that this one could have used, and why.
QString saidServedBefore(const SaidWant &want)
{
    QStringList all;
    const auto &wants = want.book.wantsOf(want.line.part->number);
    bool isBefore = true;
    for (const NeedLine *one : wants) {
        isBefore = isBefore && one != &want.line;
        if (one == &want.line)
            continue;
        const QString whom = saidWanting(want.book, *one);
        if (isBefore && one->free.sign() > 0)
            all.append(AbreastWords::tr("%1 to %2, %3")
                           .arg(want.much(one->free), whom, saidBuildDay(want.book, one->day)));
        const auto own = isOfBuild(*one) ? want.book.own(*one) : AbreastBook::Own();
        if (own.reserved.sign() > 0)
            all.append(AbreastWords::tr("%1 reserved for %2").arg(want.much(own.reserved), whom));
    }
    return saidFew(all, 4);
}

/// The first after it that does not get all from stock.
const NeedLine *firstAfter(const SaidWant &want)
{
    const auto &wants = want.book.wantsOf(want.line.part->number);
    auto at = std::find(wants.begin(), wants.end(), &want.line);
    if (at == wants.end())
        return nullptr;
    at = std::find_if(at + 1, wants.end(), [](const NeedLine *one) {
        return one->shortBy.sign() > 0 || !one->coming.empty();
    });
    return at == wants.end() ? nullptr : *at;
}

QString saidTheLast(const SaidWant &want)
{
    const NeedLine *after = firstAfter(want);
    const QString much = want.much(want.line.free);
    if (after == nullptr)
        return AbreastWords::tr("It gets the last of the stock: %1.").arg(much);
    if (!isOfBuild(*after))
        return AbreastWords::tr("It gets the last of the stock, %1: %2 comes after it.")
            .arg(much, saidWanting(want.book, *after));
    return after->day == want.line.day
               ? AbreastWords::tr(
                     "It gets the last of the stock, %1: %2 has the same day and stands after it.")
                     .arg(much, saidWanting(want.book, *after))
               : AbreastWords::tr("It gets the last of the stock, %1: its day, %2, comes before "
                                  "that of %3, %4.")
                     .arg(much, saidBuildDay(want.book, want.line.day),
                          saidWanting(want.book, *after), saidBuildDay(want.book, after->day));
}

QString saidOwn(const SaidWant &want)
{
    const AbreastBook::Own own = want.book.own(want.line);
    if (own.inCar.sign() > 0 && own.reserved.sign() > 0)
        return AbreastWords::tr("%1 in its car and %2 reserved stay its own, whatever the days.")
            .arg(want.much(own.inCar), want.much(own.reserved));
    if (own.inCar.sign() > 0)
        return AbreastWords::tr("%1 in its car: that stays its own, whatever the days.")
            .arg(want.much(own.inCar));
    return own.reserved.sign() > 0
               ? AbreastWords::tr("%1 reserved: that stays its own, whatever the days.")
                     .arg(want.much(own.reserved))
               : QString();
}

QString saidComing(const SaidWant &want, const std::vector<NeedLine::Coming> &coming)
{
    QStringList all;
    for (const NeedLine::Coming &one : coming)
        all.append(AbreastWords::tr("%1 of %2, due %3")
                       .arg(want.much(one.quantity), saidOrder(one.order), want.day(one.day)));
    return all.join(QStringLiteral(", "));
}

/// What of a length lies here and serves nobody: its pieces are too short for what is wanted.
QString saidTooShort(const SaidWant &want)
{
    const Part &part = *want.line.part;
    const auto stock = want.book.workshop->shelf.find(part.number);
    if (!isLength(part.unit) || want.line.shortBy.sign() <= 0 ||
        stock == want.book.workshop->shelf.end())
        return {};
    Decimal left = stock->second.free.amount;
    for (const NeedLine *one : want.book.wantsOf(part.number))
        left = left - one->free;
    return left.sign() > 0 ? AbreastWords::tr("%1 more lie here, in pieces that are too short.")
                                 .arg(want.much(left))
                           : QString();
}

/// Who brings it in time where the best offer does not.
QString saidQuicker(const SaidWant &want)
{
    if (want.line.quicker.empty())
        return {};
    return AbreastWords::tr("In time yet: %1, ordered by %2.")
        .arg(saidSupplier(want.line.quicker, want.book.workshop->catalogue),
             want.day(want.line.quickerBy));
}

} // namespace

QString saidFew(const QStringList &all, int most)
{
    if (all.size() <= most)
        return all.join(QStringLiteral(", "));
    const int left = static_cast<int>(all.size()) - most + 1;
    return AbreastWords::tr("%1, and %2 more")
        .arg(all.mid(0, most - 1).join(QStringLiteral(", ")), QString::number(left));
}

QString saidBuildDay(const AbreastBook &book, const std::string &day)
{
    return day.empty() ? AbreastWords::tr("no day said") : saidDayOf(day, book.today);
}

QString saidGot(const AbreastBook &book, const NeedLine &line, Units units)
{
    const SaidWant want{book, line, units};
    const AbreastBook::Own own = book.own(line);
    QStringList all;
    if (own.inCar.sign() > 0)
        all.append(AbreastWords::tr("%1 in the car").arg(want.much(own.inCar)));
    if (own.reserved.sign() > 0)
        all.append(AbreastWords::tr("%1 reserved").arg(want.much(own.reserved)));
    if (line.free.sign() > 0)
        all.append((book.getsTheLast(line) ? AbreastWords::tr("%1 here, the last")
                                           : AbreastWords::tr("%1 here"))
                       .arg(want.much(line.free)));
    for (const NeedLine::Coming &one : line.coming)
        all.append(AbreastWords::tr("%1 due %2").arg(want.much(one.quantity), want.day(one.day)));
    if (line.shortBy.sign() > 0)
        all.append(AbreastWords::tr("short %1").arg(want.much(line.shortBy)));
    return all.join(QStringLiteral(", "));
}

QString saidOrdering(const AbreastBook &book, const NeedLine &line)
{
    if (line.shortBy.sign() <= 0)
        return {};
    if (line.orderBy.empty())
        return line.day.empty() ? AbreastWords::tr("order soon")
                                : AbreastWords::tr("nobody sells it");
    const QString day = saidDayOf(line.lastDay(), book.today);
    if (!line.quicker.empty()) // Of another one it is in time yet.
        return AbreastWords::tr("order by %1 of %2").arg(day, said(line.quicker));
    return (line.isPastDue ? AbreastWords::tr("order by %1, is over")
                           : AbreastWords::tr("order by %1"))
        .arg(day);
}

QString saidGotAndOrdering(const AbreastBook &book, const NeedLine &line, Units units)
{
    const QString got = saidGot(book, line, units);
    const QString ordering = saidOrdering(book, line);
    return ordering.isEmpty() ? got : QString(got + QStringLiteral(", ") + ordering);
}

QStringList saidWhy(const AbreastBook &book, const NeedLine &line, Units units)
{
    const SaidWant want{book, line, units};
    QStringList all{saidOwn(want)};
    if (book.getsTheLast(line))
        all.append(saidTheLast(want));
    const bool lacks = line.shortBy.sign() > 0 || !line.coming.empty();
    const QString before = lacks ? saidServedBefore(want) : QString();
    if (!before.isEmpty())
        all.append(AbreastWords::tr("What lies here goes first: %1.").arg(before));
    else if (lacks && line.free.sign() <= 0 && line.own.sign() <= 0)
        all.append(AbreastWords::tr("None lies here."));
    all.append(saidTooShort(want));
    if (!line.coming.empty())
        all.append(AbreastWords::tr("On its way: %1.").arg(saidComing(want, line.coming)));
    if (!line.late.empty())
        all.append(AbreastWords::tr("Comes too late: %1.").arg(saidComing(want, line.late)));
    if (line.shortBy.sign() > 0)
        all.append(saidQuicker(want));
    all.removeAll(QString());
    return all;
}

} // namespace flarestock
