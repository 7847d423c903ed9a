// SPDX-License-Identifier: MIT

#include "app/desk/buying/buying_words.h"

#include "app/desk/words/spoken.h"
#include "app/workshop/suppliers.h"

#include <QDate>

#include <algorithm>

namespace flarestock {

namespace {

QDate dateOf(const std::string &day)
{
    return QDate::fromString(said(day), Qt::ISODate);
}

} // namespace

QString saidWhom(const std::string &whom, const Workshop &shop)
{
    if (const BuildPlan *plan = shop.build(whom))
        return said(plan->title.empty() ? plan->id : plan->title);
    const Place *place = shop.ledger.place(whom);
    return said(place ? place->title : whom);
}

QString saidMuch(const Decimal &amount, const Part &part, Units units)
{
    return saidAmount(Quantity{amount.stripped(), part.unit}, units);
}

QString saidDayOf(const std::string &day, const std::string &today)
{
    const QDate date = dateOf(day);
    if (!date.isValid())
        return said(day);
    const bool thisYear = date.year() == dateOf(today).year();
    return saidDate(date, thisYear ? WithYear::No : WithYear::Yes);
}

QString saidSupplier(const std::string &id, const Catalogue &catalogue)
{
    return said(supplierName(id, catalogue));
}

QString saidOrder(const std::string &number)
{
    return (isClaimNumber(number) ? BuyingWords::tr("claim %1") : BuyingWords::tr("order %1"))
        .arg(said(number));
}

std::optional<int> daysBetween(const std::string &from, const std::string &to)
{
    const QDate first = dateOf(from);
    const QDate last = dateOf(to);
    if (!first.isValid() || !last.isValid())
        return std::nullopt;
    return static_cast<int>(first.daysTo(last));
}

QString saidAway(int days)
{
    if (days == 0)
        return BuyingWords::tr("today");
    if (days == 1)
        return BuyingWords::tr("tomorrow");
    if (days == -1)
        return BuyingWords::tr("yesterday");
    return days > 0 ? BuyingWords::tr("in %1 days").arg(days)
                    : BuyingWords::tr("%1 days ago").arg(-days);
}

QString saidPrice(const Decimal &price, const Currency &currency)
{
    const auto whole = price.rescaledExact(currency.minorDigits());
    return saidNumber(whole ? *whole : price.stripped());
}

QString saidPriceOf(const Decimal &price, const Currency &currency, Unit unit)
{
    const QString one = saidPrice(price, currency);
    return isLength(unit) ? one + QStringLiteral(" / ") + said(text(unit)) : one;
}

bool hasWords(const QString &text, const QString &typed)
{
    const QStringList words = typed.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(words.begin(), words.end(), [&text](const QString &word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

} // namespace flarestock
