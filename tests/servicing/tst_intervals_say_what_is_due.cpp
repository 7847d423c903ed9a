// SPDX-License-Identifier: MIT
//
// Promise: the row that says most about a piece counts; what is due now, before which event, and
// which events a day stops; paper and glass fibre are never washed; an element is spent after so
// many washes, or damaged.
//
// Days by the calendar (ISO 8601; of a shorter month its last day: common practice, no source).
// That paper and glass are replaced and never washed: common practice, no source. The rest is
// arithmetic by hand beside each row.

#include "model/servicing/calendar.h"
#include "model/servicing/due.h"

#include <QTest>

using namespace flarestock;

namespace {

FittedPiece pieceAt(const char *position, std::int64_t runs, std::int64_t events = 0)
{
    FittedPiece piece;
    piece.position = position;
    piece.piece = {"EC-100-L", "T1"};
    piece.since = piece.worked = piece.seen = "2027-01-01";
    for (Use *use : {&piece.sinceFitted, &piece.sinceWorked, &piece.sinceSeen}) {
        use->runs = runs;
        use->hours = Decimal(runs);
        for (std::int64_t i = 0; i < events; ++i)
            use->events.insert(std::to_string(i));
    }
    return piece;
}

const PieceKind Mesh{Kind::Element, "stainless mesh", true, false};
const PieceKind Glass{Kind::Element, "microglass", true, false}; // Even where a catalogue lets it.

Interval every(Work todo, std::optional<int> runs, std::optional<int> events = {})
{
    Interval one;
    one.kind = Kind::Element;
    one.todo = todo;
    one.runs = runs;
    one.events = events;
    return one;
}

const std::vector<ComingEvent> Events = {{"first", "First", "2027-03-20", "2027-03-21", {}, {}},
                                         {"second", "Second", "2027-04-17", "2027-04-18", {}, {}},
                                         {"third", "Third", "2027-05-08", "2027-05-09", {}, {}}};

struct Asked {
    CarLife life;
    std::vector<ComingEvent> events = Events;
    std::string today = "2027-03-01";

    [[nodiscard]] DueWork due(const FittedPiece &piece, const Interval &interval,
                              const PieceKind &kind = Mesh) const
    {
        const std::vector<const Interval *> all{&interval};
        return dueOf(piece, kind, all, {&life, events, today}).front();
    }
};

/// So many runs at so many events.
CarLife ranAt(std::int64_t events, std::int64_t runsEach)
{
    CarLife life;
    for (std::int64_t i = 0; i < events; ++i) {
        Outing outing;
        outing.event = std::to_string(i);
        outing.runs = runsEach;
        life.outings.push_back(outing);
    }
    return life;
}

std::string joined(const std::vector<std::string> &all)
{
    std::string text;
    for (const std::string &one : all)
        text += one + " ";
    return text;
}

} // namespace

class IntervalsSayWhatIsDue : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void monthsEndOnTheLastDay_data()
    {
        QTest::addColumn<QString>("day");
        QTest::addColumn<int>("months");
        QTest::addColumn<QString>("then");
        QTest::newRow("plain") << "2026-01-15" << 6 << "2026-07-15";
        QTest::newRow("shorter month") << "2026-08-31" << 6 << "2027-02-28";
        QTest::newRow("leap year") << "2027-08-31" << 6 << "2028-02-29";
        QTest::newRow("over the year") << "2026-12-31" << 2 << "2027-02-28";
        QTest::newRow("five years") << "2024-02-29" << 60 << "2029-02-28";
    }
    void monthsEndOnTheLastDay()
    {
        QFETCH(QString, day);
        QFETCH(int, months);
        QFETCH(QString, then);
        QCOMPARE(QString::fromStdString(dayAfterMonths(day.toStdString(), months)), then);
    }
    void daysAreCounted()
    {
        QCOMPARE(daysApart("2026-12-01", "2026-12-12"), std::int64_t(11));
        QCOMPARE(daysApart("2028-02-28", "2028-03-01"), std::int64_t(2));
        QCOMPARE(daysApart("2027-03-01", "2027-02-28"), std::int64_t(-1));
    }
    void theRowThatSaysMostCounts()
    {
        Intervals all;
        all.push_back(every(Work::Washed, 10)); // Kind alone.
        Interval medium = every(Work::Washed, 9);
        medium.medium = "Stainless Mesh";
        Interval car = every(Work::Washed, 8);
        car.car = "car-2";
        Interval part = every(Work::Washed, 7);
        part.part = "ec-100-l";
        Interval position;
        position.todo = Work::Washed;
        position.runs = 6;
        position.position = "prefilter.element";
        for (const Interval &one : {medium, car, part, position}) {
            all.push_back(one);
            const auto best = intervalsFor(all, pieceAt("coupe-fuel/filters/prefilter.element", 0),
                                           Mesh, "car-2");
            QCOMPARE(best.size(), std::size_t(1));
            QCOMPARE(*best.front()->runs, *one.runs);
        }
        // Of the other car, another part, another position.
        FittedPiece other = pieceAt("x", 0);
        other.piece.part = "EC-150-S";
        QCOMPARE(*intervalsFor(all, other, Mesh, "car-1").front()->runs, 9);
        QCOMPARE(*intervalsFor(all, pieceAt("myprefilter.element", 0), Mesh, "car-1").front()->runs,
                 7); // No end of that name.
        QVERIFY(intervalsFor(all, other, {Kind::Pump, {}, true, false}, "car-1").empty());
    }
    void runsAreReachedAndPassed_data()
    {
        QTest::addColumn<int>("runs");
        QTest::addColumn<QString>("standing");
        QTest::addColumn<int>("left");
        QTest::newRow("nothing") << 0 << "fine" << 10;
        QTest::newRow("before the last fifth") << 7 << "fine" << 3;
        QTest::newRow("last fifth") << 8 << "soon" << 2;
        QTest::newRow("reached") << 10 << "now" << 0;
        QTest::newRow("passed") << 11 << "over" << -1;
    }
    void runsAreReachedAndPassed()
    {
        QFETCH(int, runs);
        QFETCH(QString, standing);
        QFETCH(int, left);
        Asked asked;
        asked.events.clear();
        const FittedPiece piece = pieceAt("p", runs);
        const Interval interval = every(Work::Washed, 10);
        const DueWork due = asked.due(piece, interval);
        QCOMPARE(QString::fromLatin1(text(due.standing).data()), standing);
        QCOMPARE(*due.runsLeft, std::int64_t(left));
    }
    void theEventIsNamedBeforeWhichItHasToBeDone()
    {
        // 4 runs so far, 6 at an event: 10 after the first is not more than 10; 16 after the
        // second.
        Asked asked;
        asked.life = ranAt(2, 6);
        const FittedPiece piece = pieceAt("p", 4);
        const Interval ten = every(Work::Washed, 10);
        DueWork due = asked.due(piece, ten);
        QCOMPARE(due.before, std::string("second"));
        QCOMPARE(due.standing, DueStanding::Before);
        // What the season expects counts before what was run so far: 7 at the first.
        asked.events.front().runs = Decimal(7);
        due = asked.due(piece, ten);
        QCOMPARE(due.before, std::string("first"));
        // Of a car that has run nowhere, and of which nothing is expected, nobody knows.
        asked.life = {};
        asked.events = Events;
        due = asked.due(piece, ten);
        QCOMPARE(due.before, std::string());
        QCOMPARE(due.standing, DueStanding::Fine);
    }
    void everyEventMeansBeforeTheNext()
    {
        Asked asked;
        const Interval each = every(Work::Washed, {}, 1);
        const FittedPiece fresh = pieceAt("p", 0, 0);
        QCOMPARE(asked.due(fresh, each).before, std::string("second"));
        const FittedPiece used = pieceAt("p", 3, 1);
        const DueWork due = asked.due(used, each);
        QCOMPARE(due.before, std::string("first"));
        QCOMPARE(due.standing, DueStanding::Now);
    }
    void aDayStopsOnlyTheEventsThatEndAfterIt()
    {
        Asked asked;
        FittedPiece tank = pieceAt("tank", 0);
        tank.useBy = "2027-04-17"; // The first day of the second event, which ends a day later.
        const auto all = dueOf(tank, {Kind::Tank, "cell", true, false}, {},
                               {&asked.life, asked.events, asked.today});
        QCOMPARE(all.size(), std::size_t(1));
        QCOMPARE(joined(all.front().stops), std::string("second third "));
        QCOMPARE(all.front().standing, DueStanding::Before);
        tank.useBy = "2027-05-09"; // The last day itself is still good.
        const auto good = dueOf(tank, {Kind::Tank, "cell", true, false}, {},
                                {&asked.life, asked.events, asked.today});
        QCOMPARE(good.front().standing, DueStanding::Fine);
        QVERIFY(good.front().stops.empty());
        tank.useBy = "2027-02-28"; // Over today.
        const auto over = dueOf(tank, {Kind::Tank, "cell", true, false}, {},
                                {&asked.life, asked.events, asked.today});
        QCOMPARE(over.front().standing, DueStanding::Over);
    }
    void whatWasNotLookedAtInTimeStopsNoEvent()
    {
        Asked asked;
        Interval look;
        look.kind = Kind::Pump;
        look.todo = Work::Inspected;
        look.months = 1; // Since it was fitted: by 2027-02-01, which is over today.
        const DueWork due = asked.due(pieceAt("pump", 0), look);
        QCOMPARE(due.standing, DueStanding::Over);
        QVERIFY(due.stops.empty());
        QCOMPARE(due.before, std::string("first"));
        look.todo = Work::Replaced;
        QCOMPARE(joined(asked.due(pieceAt("pump", 0), look).stops),
                 std::string("first second third "));
    }
    void ageCountsFromTheDayItWasMade()
    {
        Interval six;
        six.kind = Kind::Hose;
        six.age = 72;
        FittedPiece hose = pieceAt("supply.hose", 0);
        QCOMPARE(lastDayOf(hose, &six), std::string("2033-01-01")); // Not known: since fitted.
        hose.made = "2021-04-18";
        QCOMPARE(lastDayOf(hose, &six), std::string("2027-04-18"));
        Interval both = six;
        both.months = 1; // Since fitted, whichever comes first.
        QCOMPARE(lastDayOf(hose, &both), std::string("2027-02-01"));
    }
    void paperAndGlassAreNeverWashed()
    {
        QVERIFY(notWashedBecause(Mesh).empty());
        QVERIFY(notWashedBecause(Glass).find("never washed") != std::string::npos);
        QVERIFY(!notWashedBecause({Kind::Element, "Paper", true, false}).empty());
        QVERIFY(!notWashedBecause({Kind::Element, "bronze", false, false}).empty());
        QVERIFY(!notWashedBecause({Kind::Pump, {}, true, true}).empty());
        Asked asked;
        const FittedPiece piece = pieceAt("p", 12);
        const Interval interval = every(Work::Washed, 10);
        QCOMPARE(asked.due(piece, interval, Glass).todo, Work::Replaced);
    }
    void anElementIsSpentAfterItsWashes()
    {
        Interval interval = every(Work::Washed, 10);
        interval.washes = 3;
        FittedPiece piece = pieceAt("p", 1);
        piece.washed = 2;
        QVERIFY(spentBecause(piece, {&interval}).empty());
        piece.washed = 3;
        QCOMPARE(spentBecause(piece, {&interval}), std::string("washed 3 of 3 times"));
        Asked asked;
        const DueWork due = asked.due(piece, interval);
        QCOMPARE(due.todo, Work::Replaced);
        QCOMPARE(due.standing, DueStanding::Fine); // It runs on to the end of its interval.
    }
    void damagedIsOverAndStopsAll()
    {
        Asked asked;
        FittedPiece piece = pieceAt("p", 0);
        piece.damaged = true;
        const Interval interval = every(Work::Washed, 10);
        const DueWork due = asked.due(piece, interval);
        QCOMPARE(due.standing, DueStanding::Over);
        QCOMPARE(due.todo, Work::Replaced);
        QCOMPARE(due.stops.size(), std::size_t(3));
    }
};

QTEST_APPLESS_MAIN(IntervalsSayWhatIsDue)
#include "tst_intervals_say_what_is_due.moc"
