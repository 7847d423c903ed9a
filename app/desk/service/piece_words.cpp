// SPDX-License-Identifier: MIT

#include "app/desk/service/piece_words.h"

#include "app/desk/language/sentences.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"
#include "app/garage/bench_wash.h"
#include "model/servicing/calendar.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

/// "1 run", "12 runs".
QString saidRuns(std::int64_t runs)
{
    return runs == 1 ? ServiceWords::tr("1 run")
                     : ServiceWords::tr("%1 runs").arg(QLocale().toString(runs));
}

QString saidEvents(std::int64_t events)
{
    return events == 1 ? ServiceWords::tr("1 event")
                       : ServiceWords::tr("%1 events").arg(QLocale().toString(events));
}

QString saidHours(const Decimal &hours)
{
    return ServiceWords::tr("%1 h").arg(saidNumber(hours.stripped()));
}

/// What is left of its counts, or how far they are passed: "2 events", "6 runs or 1.5 h".
QString saidLeft(const DueWork &work, bool passed)
{
    QStringList all;
    const std::int64_t sign = passed ? -1 : 1;
    if (work.runsLeft && *work.runsLeft * sign > 0)
        all.append(saidRuns(*work.runsLeft * sign));
    if (work.hoursLeft && (passed ? work.hoursLeft->sign() < 0 : work.hoursLeft->sign() > 0))
        all.append(saidHours(passed ? Decimal(0) - *work.hoursLeft : *work.hoursLeft));
    if (work.eventsLeft && *work.eventsLeft * sign > 0)
        all.append(saidEvents(*work.eventsLeft * sign));
    return all.join(ServiceWords::tr(" or "));
}

/// Nothing else makes it due; so that this is said already where it stands.
bool isOnlyDamaged(const DueWork &work)
{
    return work.piece->damaged && !work.interval && work.lastDay.empty();
}

QString saidOver(const DueWork &work, const std::string &today)
{
    const QString todo = saidTodo(work.todo);
    if (isOnlyDamaged(work))
        return ServiceWords::tr("damaged: replace it");
    if (!work.lastDay.empty() && work.lastDay < today)
        return work.todo == Work::Replaced ? ServiceWords::tr("stopped: good until %1, replace it")
                                                 .arg(saidDate(work.lastDay))
                                           : ServiceWords::tr("over: %1 it, it was due by %2")
                                                 .arg(todo, saidDate(work.lastDay));
    return ServiceWords::tr("over by %1: %2 it now").arg(saidLeft(work, true), todo);
}

QString saidBefore(const DueLine &line, const GarageBook &book)
{
    const DueWork &work = line.work;
    const Event *event = book.workshop->season.event(work.before);
    if (event && event->firstDay == line.by)
        return ServiceWords::tr("%1 before %2, %3")
            .arg(saidTodo(work.todo), said(event->title), saidDate(event->firstDay));
    if (!work.stops.empty())
        return ServiceWords::tr("past its day at %1: good until %2")
            .arg(saidEvent(work.stops.front(), *book.workshop), saidDate(work.lastDay));
    return ServiceWords::tr("%1 before %2").arg(saidTodo(work.todo), saidDate(line.by));
}

double countShare(double left, double every)
{
    return every > 0 ? (every - left) / every : 1;
}

double asDouble(const Decimal &number)
{
    return QLocale::c().toDouble(said(number.text()));
}

} // namespace

QString saidPiece(const LotKey &piece)
{
    return piece.lot.empty() ? said(piece.part)
                             : ServiceWords::tr("%1, %2").arg(said(piece.part), said(piece.lot));
}

QString saidPiece(const FittedPiece &piece, const Workshop &workshop, Units units)
{
    const Part *part = workshop.part(piece.piece.part);
    if (!part || !isLength(part->unit))
        return saidPiece(piece.piece);
    const QString length = saidAmount(Quantity::ofSmallest(piece.quantity, part->unit), units);
    return ServiceWords::tr("%1, %2").arg(saidPiece(piece.piece), length);
}

QString saidUse(const Use &use)
{
    return ServiceWords::tr("%1, %2, %3")
        .arg(saidRuns(use.runs), saidHours(use.hours), saidEvents(use.eventCount()));
}

QString saidTodo(Work work)
{
    return work == Work::Washed      ? ServiceWords::tr("wash")
           : work == Work::Inspected ? ServiceWords::tr("inspect")
                                     : ServiceWords::tr("replace");
}

QString saidWorkDone(Work work)
{
    switch (work) {
    case Work::Fitted:
        return ServiceWords::tr("fitted");
    case Work::Washed:
        return ServiceWords::tr("washed");
    case Work::Replaced:
        return ServiceWords::tr("replaced");
    case Work::Inspected:
        return ServiceWords::tr("inspected");
    case Work::Damaged:
        return ServiceWords::tr("found damaged");
    case Work::TakenOut:
        break;
    }
    return ServiceWords::tr("taken out");
}

QString saidWash(const FittedPiece &piece, const GarageBook &book, const std::string &car)
{
    for (const Interval *one : book.garage.intervalsOf(piece, car)) {
        if (one->washes)
            return ServiceWords::tr("%1 of %2").arg(piece.washed).arg(*one->washes);
    }
    return piece.washed == 0 ? QString() : QLocale().toString(piece.washed);
}

QString saidEvent(const std::string &event, const Workshop &workshop)
{
    const Event *known = workshop.season.event(event);
    return said(known && !known->title.empty() ? known->title : event);
}

QString saidSystem(const std::string &system)
{
    if (system == "fuel")
        return ServiceWords::tr("fuel");
    if (system == "brakes")
        return ServiceWords::tr("brakes");
    if (system == "oil")
        return ServiceWords::tr("oil");
    return system == "coolant" ? ServiceWords::tr("coolant") : said(system);
}

QString saidStanding(const DueLine &line, const GarageBook &book)
{
    const DueWork &work = line.work;
    const QString left = saidLeft(work, false);
    switch (work.standing) {
    case DueStanding::Over:
        return saidOver(work, book.today);
    case DueStanding::Now:
        return ServiceWords::tr("%1 it now").arg(saidTodo(work.todo));
    case DueStanding::Before:
        return saidBefore(line, book);
    case DueStanding::Soon:
    case DueStanding::Fine:
        break;
    }
    const bool isSoon = work.standing == DueStanding::Soon;
    const QString until = work.lastDay.empty() ? QString() : saidDate(work.lastDay);
    if (!until.isEmpty())
        return isSoon ? ServiceWords::tr("%1 by %2").arg(saidTodo(work.todo), until)
                      : ServiceWords::tr("fine until %1").arg(until);
    return isSoon ? ServiceWords::tr("%1 within %2").arg(saidTodo(work.todo), left)
                  : ServiceWords::tr("fine for %1").arg(left);
}

QString saidReasons(const DueWork &work)
{
    if (isOnlyDamaged(work))
        return {};
    QStringList all;
    for (const std::string &one : work.why)
        all.append(saidFigures(inWords(one)));
    return all.join(QStringLiteral("; "));
}

double shareUsed(const DueLine &line, const std::string &today)
{
    const DueWork &work = line.work;
    double share = work.piece->damaged ? 1 : 0;
    if (work.interval && work.runsLeft)
        share = std::max(share, countShare(static_cast<double>(*work.runsLeft),
                                           static_cast<double>(*work.interval->runs)));
    if (work.interval && work.hoursLeft)
        share =
            std::max(share, countShare(asDouble(*work.hoursLeft), asDouble(*work.interval->hours)));
    if (work.interval && work.eventsLeft)
        share = std::max(share, countShare(static_cast<double>(*work.eventsLeft),
                                           static_cast<double>(*work.interval->events)));
    if (work.lastDay.empty())
        return share;
    const FittedPiece &piece = *work.piece;
    const bool byAge = work.interval && work.interval->age && !piece.made.empty();
    const std::string &from = byAge                          ? piece.made
                              : work.todo == Work::Washed    ? piece.worked
                              : work.todo == Work::Inspected ? piece.seen
                                                             : piece.since;
    return std::max(share, countShare(static_cast<double>(daysApart(today, work.lastDay)),
                                      static_cast<double>(daysApart(from, work.lastDay))));
}

Standing::Mark markOf(DueStanding standing)
{
    switch (standing) {
    case DueStanding::Fine:
        return Standing::Made;
    case DueStanding::Soon:
        return Standing::Needs;
    case DueStanding::Before:
        return Standing::Caution;
    case DueStanding::Now:
    case DueStanding::Over:
        break;
    }
    return Standing::Trap;
}

PieceStanding standingOf(const FittedPiece *piece, const GarageBook &book, const std::string &car)
{
    if (piece == nullptr)
        return {Standing::Short, ServiceWords::tr("nothing is there"), -1};
    const auto works = book.worksOf(*piece);
    PieceStanding standing{Standing::Made, ServiceWords::tr("fine: no interval counts for it"), -1};
    if (!works.empty()) {
        standing.mark = markOf(works.front()->work.standing);
        standing.words = saidStanding(*works.front(), book);
        for (const DueLine *line : works)
            standing.share = std::max(standing.share, shareUsed(*line, book.today));
    }
    const auto intervals = book.garage.intervalsOf(*piece, car);
    if (piece->damaged || spentBecause(*piece, intervals).empty())
        return piece->damaged ? PieceStanding{Standing::Open, standing.words, 1} : standing;
    return {Standing::Open,
            ServiceWords::tr("spent, washed %1: replace it").arg(saidWash(*piece, book, car)), 1};
}

PieceStanding standingAt(const CarPosition &at, const GarageBook &book)
{
    const PieceOut *out = book.out(at);
    if (!out)
        return standingOf(book.piece(at), book, at.car);
    const FittedPiece piece = asFitted(*out);
    const bool isWashed = book.isToldApart(*out, at.car) &&
                          notWashedBecause(book.garage.kindOf(piece)).empty() &&
                          spentBecause(piece, book.garage.intervalsOf(piece, at.car)).empty();
    return {Standing::Note,
            isWashed ? ServiceWords::tr("to be checked: washed, it can go in again")
                     : ServiceWords::tr("to be checked: say under Stock what it is"),
            -1};
}

} // namespace flarestock
