// SPDX-License-Identifier: MIT

#include "app/desk/stock/deeds/stock_deed.h"

#include "app/desk/stock/deeds/deed_words.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

struct Named {
    StockDeed deed;
    const char *name;
};
constexpr std::array<Named, 10> Names{{{StockDeed::Take, "take"},
                                       {StockDeed::PutBack, "putBack"},
                                       {StockDeed::Move, "move"},
                                       {StockDeed::Count, "count"},
                                       {StockDeed::Receive, "receive"},
                                       {StockDeed::Lend, "lend"},
                                       {StockDeed::Scrap, "scrap"},
                                       {StockDeed::Judge, "judge"},
                                       {StockDeed::Keep, "keep"},
                                       {StockDeed::Level, "level"}}};

QString label(StockDeed deed)
{
    switch (deed) {
    case StockDeed::Take:
        return DeedWords::tr("Take");
    case StockDeed::PutBack:
        return DeedWords::tr("Put back");
    case StockDeed::Move:
        return DeedWords::tr("Move");
    case StockDeed::Count:
        return DeedWords::tr("Count");
    case StockDeed::Receive:
        return DeedWords::tr("Receive");
    case StockDeed::Lend:
        return DeedWords::tr("Lend");
    case StockDeed::Scrap:
        return DeedWords::tr("Throw away");
    case StockDeed::Judge:
        return DeedWords::tr("Condition");
    case StockDeed::Keep:
        return DeedWords::tr("Keep");
    case StockDeed::Level:
        break;
    }
    return DeedWords::tr("Level");
}

bool isInStock(const DeedSubject &subject)
{
    return subject.place() != nullptr && isStock(subject.place()->kind) && subject.there() > 0;
}

bool hasKind(const DeedSubject &subject, PlaceKind kind)
{
    for (const Place &place : subject.book->workshop->ledger.places()) {
        if (place.kind == kind)
            return true;
    }
    return false;
}

bool isCountable(const DeedSubject &subject)
{
    return subject.entry->part != nullptr;
}

/// Why it cannot be done; empty where it can.
QString barrierOf(StockDeed deed, const DeedSubject &subject)
{
    const QString nothing =
        DeedWords::tr("No piece is chosen that lies in stock; choose one where it lies.");
    switch (deed) {
    case StockDeed::Take:
    case StockDeed::Move:
    case StockDeed::Scrap:
    case StockDeed::Judge:
        return isInStock(subject) ? QString() : nothing;
    case StockDeed::Lend:
        if (!hasKind(subject, PlaceKind::Borrower) && !hasKind(subject, PlaceKind::Repair))
            return DeedWords::tr("The shop has no borrower and no repairer among its places.");
        return isInStock(subject) ? QString() : nothing;
    case StockDeed::PutBack:
        return subject.place() != nullptr && !isStock(subject.place()->kind)
                   ? QString()
                   : DeedWords::tr("Nothing of it is chosen that is in a car, lent or out for "
                                   "repair.");
    case StockDeed::Receive:
        if (!hasKind(subject, PlaceKind::Supplier))
            return DeedWords::tr("The shop has no supplier among its places.");
        [[fallthrough]];
    case StockDeed::Count:
    case StockDeed::Keep:
        return isCountable(subject) ? QString() : DeedWords::tr("A tin of odds is not counted.");
    case StockDeed::Level:
        break;
    }
    return subject.entry->here + subject.entry->trailer == 0
               ? QString()
               : DeedWords::tr("It is counted; a level is for what nobody counts.");
}

QString purpose(StockDeed deed)
{
    switch (deed) {
    case StockDeed::Take:
        return DeedWords::tr("For a build, to a car, or used up here.");
    case StockDeed::PutBack:
        return DeedWords::tr("From a car, a borrower or a repairer to its place.");
    case StockDeed::Move:
        return DeedWords::tr("To another bin, shelf or drawer.");
    case StockDeed::Count:
        return DeedWords::tr("Count first; then it is said what the book had.");
    case StockDeed::Receive:
        return DeedWords::tr("From a supplier, without an order.");
    case StockDeed::Lend:
        return DeedWords::tr("To somebody, or out for repair, until a day.");
    case StockDeed::Scrap:
        return DeedWords::tr("It goes to scrap, with the reason.");
    case StockDeed::Judge:
        return DeedWords::tr("What it is from now on: good, to be checked, not to be used.");
    case StockDeed::Keep:
        return DeedWords::tr("How much a place is to hold.");
    case StockDeed::Level:
        break;
    }
    return DeedWords::tr("Plenty, low or out, of what nobody counts.");
}

} // namespace

QString saidLengthsPromised(const DeedSubject &subject)
{
    const StockEntry *entry = subject.entry;
    if (entry == nullptr || entry->part == nullptr || entry->part->unit == Unit::Each ||
        entry->promised <= 0)
        return {};
    return DeedWords::tr(
               "%1 of it are promised to builds as a length, not as pieces: look at their "
               "pick lists before a long piece is cut or goes away.")
        .arg(saidStock(entry->promised, *entry->part, subject.units));
}

/// The rest of the shop may be used in a copy as well, but nobody guards it there.
QString saidNotAlong(const DeedSubject &subject)
{
    const Place *place = subject.place();
    if (!subject.along || place == nullptr || !isStock(place->kind) ||
        std::find(subject.along->begin(), subject.along->end(), place->id) != subject.along->end())
        return {};
    return DeedWords::tr("%1 did not come along with this copy: what lies there is used at home "
                         "meanwhile. Write it down only if you have the piece in your hand; what "
                         "then does not agree is asked when the copy is brought.")
        .arg(said(place->id));
}

const Place *DeedSubject::place() const
{
    return pieces ? book->workshop->ledger.place(pieces->place) : nullptr;
}

std::int64_t DeedSubject::there() const
{
    return pieces ? book->workshop->ledger.balance(*pieces).quantity : 0;
}

QStringList deedCells()
{
    return {QStringLiteral("label"), QStringLiteral("ready"), QStringLiteral("detail"),
            QStringLiteral("says")};
}

std::vector<Row> deedRows(const DeedSubject &subject)
{
    std::vector<Row> rows;
    if (subject.entry == nullptr)
        return rows;
    for (const auto &[deed, name] : Names) {
        const QString why = barrierOf(deed, subject);
        const QString detail = why.isEmpty() ? purpose(deed) : why;
        rows.push_back({QString::fromLatin1(name),
                        {label(deed), why.isEmpty(), detail,
                         QString(label(deed) + QStringLiteral(". ") + detail)}});
    }
    return rows;
}

std::optional<StockDeed> deedNamed(const QString &name)
{
    for (const auto &[deed, known] : Names) {
        if (name == QLatin1String(known))
            return deed;
    }
    return {};
}

QString saidDeedTitle(StockDeed deed, const DeedSubject &subject)
{
    const QString number = said(subject.entry->number);
    switch (deed) {
    case StockDeed::Take:
        return DeedWords::tr("Take %1").arg(number);
    case StockDeed::PutBack:
        return DeedWords::tr("Put %1 back").arg(number);
    case StockDeed::Move:
        return DeedWords::tr("Move %1").arg(number);
    case StockDeed::Count:
        return DeedWords::tr("Count %1").arg(number);
    case StockDeed::Receive:
        return DeedWords::tr("Receive %1").arg(number);
    case StockDeed::Lend:
        return DeedWords::tr("Lend %1").arg(number);
    case StockDeed::Scrap:
        return DeedWords::tr("Throw %1 away").arg(number);
    case StockDeed::Judge:
        return DeedWords::tr("What is %1 from now on?").arg(number);
    case StockDeed::Keep:
        return DeedWords::tr("How much of %1 is kept?").arg(number);
    case StockDeed::Level:
        break;
    }
    return DeedWords::tr("How much of %1 is there?").arg(number);
}

} // namespace flarestock
