// SPDX-License-Identifier: MIT

#include "app/desk/service/deeds/work_deed.h"

#include "app/desk/language/sentences.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"
#include "app/garage/bench_wash.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

struct DeedName {
    CarDeed deed;
    const char *name;
    QChar letter;
};

constexpr std::array<DeedName, 7> DeedNames = {{{CarDeed::Wash, "wash", u'W'},
                                                {CarDeed::Replace, "replace", u'R'},
                                                {CarDeed::Inspect, "inspect", u'I'},
                                                {CarDeed::Damaged, "damaged", u'D'},
                                                {CarDeed::TakeOut, "takeOut", u'O'},
                                                {CarDeed::Fit, "fit", u'F'},
                                                {CarDeed::Ran, "ran", u'E'}}};

QString labelOf(CarDeed deed)
{
    switch (deed) {
    case CarDeed::Wash:
        return ServiceWords::tr("Wash");
    case CarDeed::Replace:
        return ServiceWords::tr("Replace");
    case CarDeed::Inspect:
        return ServiceWords::tr("Inspect");
    case CarDeed::Damaged:
        return ServiceWords::tr("Damaged");
    case CarDeed::TakeOut:
        return ServiceWords::tr("Take out");
    case CarDeed::Fit:
        return ServiceWords::tr("Fit");
    case CarDeed::Ran:
        break;
    }
    return ServiceWords::tr("It ran");
}

QString detailOf(CarDeed deed)
{
    switch (deed) {
    case CarDeed::Wash:
        return ServiceWords::tr("opened, washed, back in");
    case CarDeed::Replace:
        return ServiceWords::tr("the old one out, another in");
    case CarDeed::Inspect:
        return ServiceWords::tr("looked at, found good");
    case CarDeed::Damaged:
        return ServiceWords::tr("looked at, found damaged: it is spent");
    case CarDeed::TakeOut:
        return ServiceWords::tr("out of the car; its place stays empty");
    case CarDeed::Fit:
        return ServiceWords::tr("says what is there, or puts it there");
    case CarDeed::Ran:
        break;
    }
    return ServiceWords::tr("how far the car ran at an event");
}

/// Whether a hand would think of washing it, so that it is told why not.
bool isThoughtOf(const FittedPiece &piece, const GarageBook &book)
{
    const PieceKind kind = book.garage.kindOf(piece);
    return kind.kind == Kind::Element || kind.kind == Kind::Filter || kind.kind == Kind::Pump;
}

/// The shop has an interval by which it is washed.
bool isWashedHere(const FittedPiece &piece, const WorkSubject &subject)
{
    const auto intervals = subject.book->garage.intervalsOf(piece, subject.at.car);
    return std::any_of(intervals.begin(), intervals.end(),
                       [](const Interval *one) { return one->todo == Work::Washed; });
}

QString whyNotWashed(const WorkSubject &subject)
{
    const FittedPiece piece = subject.out() ? asFitted(*subject.out()) : *subject.piece();
    const Garage &garage = subject.book->garage;
    if (subject.out() && !subject.book->isToldApart(*subject.out(), subject.at.car))
        return ServiceWords::tr("It has no tag of its own, so that nobody can tell it from others. "
                                "Say under Stock what it is.");
    const std::string why = notWashedBecause(garage.kindOf(piece));
    if (!isThoughtOf(piece, *subject.book) && (!why.empty() || !isWashedHere(piece, subject)))
        return ServiceWords::tr("This is nothing that is washed.");
    if (!why.empty())
        return ServiceWords::tr("No wash: %1 %2.").arg(said(piece.piece.part), inWords(why));
    if (const std::string spent = spentBecause(piece, garage.intervalsOf(piece, subject.at.car));
        !spent.empty())
        return ServiceWords::tr("No wash: it is spent, %1. Replace it.").arg(said(spent));
    return {};
}

} // namespace

QStringList workCells()
{
    return {QStringLiteral("label"), QStringLiteral("letter"), QStringLiteral("detail"),
            QStringLiteral("says")};
}

std::optional<CarDeed> carDeedNamed(const QString &name)
{
    for (const DeedName &one : DeedNames) {
        if (name == QLatin1String(one.name) || name.toUpper() == one.letter)
            return one.deed;
    }
    return std::nullopt;
}

QString whyNotDone(CarDeed deed, const WorkSubject &subject)
{
    if (!subject.hasCar())
        return ServiceWords::tr("Choose a car first.");
    if (deed == CarDeed::Ran || deed == CarDeed::Fit)
        return {};
    if (subject.out())
        return deed == CarDeed::Wash ? whyNotWashed(subject)
                                     : ServiceWords::tr("It is out of the car.");
    if (!subject.piece())
        return ServiceWords::tr("Nothing is there. Fit what goes there first.");
    if (deed == CarDeed::Wash)
        return whyNotWashed(subject);
    if (deed == CarDeed::Damaged && subject.piece()->damaged)
        return ServiceWords::tr("It was found damaged already. Replace it.");
    if (deed == CarDeed::Inspect && subject.piece()->damaged)
        return ServiceWords::tr(
            "It was found damaged: no look makes it good again. Replace it; where "
            "that was a slip, take it back under What was done here.");
    return {};
}

std::vector<Row> workRows(const WorkSubject &subject)
{
    std::vector<Row> rows;
    for (const DeedName &one : DeedNames) {
        if (!whyNotDone(one.deed, subject).isEmpty())
            continue;
        const QString label = labelOf(one.deed);
        rows.push_back({QString::fromLatin1(one.name),
                        {label, QString(one.letter), detailOf(one.deed),
                         ServiceWords::tr("%1, key %2").arg(label, QString(one.letter))}});
    }
    return rows;
}

QString saidWorkTitle(CarDeed deed, const WorkSubject &subject)
{
    const Place *car = subject.book->car(subject.at.car);
    const QString where = car ? said(car->title) : QString();
    if (deed == CarDeed::Ran)
        return ServiceWords::tr("%1 ran").arg(where);
    if (deed == CarDeed::Fit)
        return ServiceWords::tr("Fit something in %1").arg(where);
    return ServiceWords::tr("%1: %2 of %3")
        .arg(labelOf(deed), said(subject.book->saidPosition(subject.at)), where);
}

QString saidWorkButton(CarDeed deed)
{
    switch (deed) {
    case CarDeed::Wash:
        return ServiceWords::tr("Washed, back in");
    case CarDeed::Replace:
        return ServiceWords::tr("Replaced");
    case CarDeed::Inspect:
        return ServiceWords::tr("Found good");
    case CarDeed::Damaged:
        return ServiceWords::tr("Found damaged");
    case CarDeed::TakeOut:
        return ServiceWords::tr("Taken out");
    case CarDeed::Fit:
        return ServiceWords::tr("It is in");
    case CarDeed::Ran:
        break;
    }
    return ServiceWords::tr("It ran so far");
}

} // namespace flarestock
