// SPDX-License-Identifier: MIT

#include "model/servicing/due.h"

#include "model/servicing/calendar.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 5> StandingTexts = {"fine", "soon", "before", "now", "over"};

/// One count of an interval: what it ran, every how much, and how much it ran at how many events.
struct Counted {
    Decimal used;
    Decimal every;
    Decimal atEvents;
    std::int64_t events = 0;
    std::string_view word;
    /// What the season expects of an event; nullptr: one, for the event itself.
    std::optional<Decimal> ComingEvent::*expected = nullptr;
};

const Use &useSince(const FittedPiece &piece, Work todo)
{
    return todo == Work::Washed      ? piece.sinceWorked
           : todo == Work::Inspected ? piece.sinceSeen
                                     : piece.sinceFitted;
}

const std::string &daySince(const FittedPiece &piece, Work todo)
{
    return todo == Work::Washed ? piece.worked : todo == Work::Inspected ? piece.seen : piece.since;
}

std::string sinceText(Work todo, const FittedPiece &piece)
{
    const bool never = todo == Work::Washed ? piece.washed == 0 : piece.seen == piece.since;
    return todo == Work::Replaced || never ? "since fitted"
           : todo == Work::Washed          ? "since washed"
                                           : "since looked at";
}

void worse(DueWork &due, DueStanding standing)
{
    due.standing = std::max(due.standing, standing);
}

/// What it will run at an event, times `scale`; nothing where nobody knows.
std::optional<Decimal> expectedAt(const ComingEvent &event, const Counted &one,
                                  const Decimal &scale)
{
    if (!one.expected)
        return scale;
    if (const auto &said = event.*one.expected)
        return *said * scale;
    return one.events > 0 ? std::optional(one.atEvents) : std::nullopt;
}

/// The first of the events in which more than every so much would have been run. All is reckoned
/// times the number of past events, so that an average needs no division.
void beforeEvent(DueWork &due, const Counted &one, const DueAsked &asked)
{
    const Decimal scale(std::max<std::int64_t>(one.events, 1));
    Decimal then = one.used * scale;
    for (const ComingEvent &event : asked.events) {
        if (event.id == due.before)
            return;
        const auto more = expectedAt(event, one, scale);
        if (!more)
            return;
        then += *more;
        if (then <= one.every * scale)
            continue;
        due.before = event.id;
        return worse(due, DueStanding::Before);
    }
}

void count(DueWork &due, const Counted &one, const DueAsked &asked)
{
    const Decimal left = one.every - one.used;
    if (left.sign() < 0)
        worse(due, DueStanding::Over);
    else if (left.isZero())
        worse(due, DueStanding::Now);
    else if (left * Decimal(100) <= one.every * Decimal(due.interval->warnPercent))
        worse(due, DueStanding::Soon);
    beforeEvent(due, one, asked);
    const std::string word(one.word);
    const bool isOne = word.size() > 1 && one.used == Decimal(1);
    due.why.push_back(
        one.used.stripped().text() + " " + (isOne ? word.substr(0, word.size() - 1) : word) + " " +
        sinceText(due.interval->todo, *due.piece) + ", every " + one.every.stripped().text());
}

void countUse(DueWork &due, const DueAsked &asked)
{
    const Interval &interval = *due.interval;
    const Use &use = useSince(*due.piece, interval.todo);
    const Use all = asked.life->use();
    const std::int64_t events = all.eventCount();
    if (interval.runs) {
        due.runsLeft = *interval.runs - use.runs;
        count(due,
              {Decimal(use.runs), Decimal(*interval.runs), Decimal(all.runs), events, "runs",
               &ComingEvent::runs},
              asked);
    }
    if (interval.hours) {
        due.hoursLeft = *interval.hours - use.hours;
        count(due, {use.hours, *interval.hours, all.hours, events, "h", &ComingEvent::hours},
              asked);
    }
    if (interval.events) {
        due.eventsLeft = *interval.events - use.eventCount();
        count(due, {Decimal(use.eventCount()), Decimal(*interval.events), 1, 1, "events"}, asked);
    }
}

void countDays(DueWork &due, const DueAsked &asked)
{
    due.lastDay = lastDayOf(*due.piece, due.interval);
    if (due.lastDay.empty())
        return;
    const int ahead = due.interval ? due.interval->warnDays : Interval().warnDays;
    const std::int64_t left = daysApart(asked.today, due.lastDay);
    if (left < 0)
        worse(due, DueStanding::Over);
    else if (left <= ahead)
        worse(due, DueStanding::Soon);
    if (due.lastDay < asked.by)
        worse(due, DueStanding::Before);
    const bool mayRun = due.todo != Work::Replaced;
    for (const ComingEvent &event : asked.events) {
        if (mayRun && event.id == due.before)
            break; // It has to be done before that anyway.
        if (event.lastDay <= due.lastDay)
            continue;
        worse(due, DueStanding::Before);
        if (mayRun) {
            due.before = event.id;
            break;
        }
        due.stops.push_back(event.id);
    }
    due.why.push_back((mayRun ? "to be done by " : "may be used until ") + due.lastDay);
}

DueWork damagedPiece(const FittedPiece &piece, const DueAsked &asked)
{
    DueWork due;
    due.piece = &piece;
    due.standing = DueStanding::Over;
    due.why = {"damaged"};
    for (const ComingEvent &event : asked.events)
        due.stops.push_back(event.id);
    return due;
}

} // namespace

std::string_view text(DueStanding standing) noexcept
{
    return StandingTexts[static_cast<std::size_t>(standing)];
}

std::string lastDayOf(const FittedPiece &piece, const Interval *interval)
{
    std::vector<std::string> days;
    if (!interval && !piece.useBy.empty())
        days.push_back(piece.useBy);
    if (interval && interval->age)
        days.push_back(
            dayAfterMonths(piece.made.empty() ? piece.since : piece.made, *interval->age));
    if (interval && interval->months)
        days.push_back(dayAfterMonths(daySince(piece, interval->todo), *interval->months));
    return days.empty() ? std::string() : *std::min_element(days.begin(), days.end());
}

std::vector<DueWork> dueOf(const FittedPiece &piece, const PieceKind &kindOf,
                           const std::vector<const Interval *> &intervals, const DueAsked &asked)
{
    if (piece.damaged) // Whatever else counts for it, it is replaced first.
        return {damagedPiece(piece, asked)};
    std::vector<DueWork> all;
    if (!piece.useBy.empty()) {
        DueWork own;
        own.piece = &piece;
        countDays(own, asked);
        all.push_back(std::move(own));
    }
    const std::string spent = spentBecause(piece, intervals);
    const std::string unwashed = notWashedBecause(kindOf);
    for (const Interval *interval : intervals) {
        DueWork due;
        due.piece = &piece;
        due.interval = interval;
        due.todo = interval->todo;
        countUse(due, asked);
        countDays(due, asked);
        if (due.todo == Work::Washed && !(spent.empty() && unwashed.empty())) {
            due.todo = Work::Replaced;
            due.why.push_back(spent.empty() ? unwashed : spent);
        }
        all.push_back(std::move(due));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const DueWork &a, const DueWork &b) { return a.standing > b.standing; });
    return all;
}

} // namespace flarestock
