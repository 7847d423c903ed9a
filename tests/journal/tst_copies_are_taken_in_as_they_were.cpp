// SPDX-License-Identifier: MIT
//
// What was true with a copy of the shop counts as it was written there, pieces as everywhere, and
// what it is worth here is settled behind it. Which copies are away follows from what is written
// down of them. The figures are worked out by hand beside each case.

#include "model/journal/ledger.h"
#include "model/journal/notes/decision.h"
#include "model/journal/notes/trip.h"

#include <QTest>

using namespace flarestock;

namespace {

MovementId idNumber(std::uint8_t number)
{
    std::array<std::uint8_t, 10> random{};
    random[9] = number;
    return MovementId::make(1'780'000'000'000, random);
}

Movement move(std::uint8_t number, std::int64_t quantity, const std::string &from,
              const std::string &to)
{
    Movement movement;
    movement.id = idNumber(number);
    movement.part = "AD-8-10";
    movement.quantity = quantity;
    movement.from = from;
    movement.to = to;
    return movement;
}

Movement worth(Movement movement, std::int64_t value, Deed deed = Deed::Move)
{
    movement.value = value;
    movement.deed = deed;
    return movement;
}

Ledger shopOf(Costing costing)
{
    Ledger ledger({{"A1", "bin", PlaceKind::Bin},
                   {"car", "car", PlaceKind::Car},
                   {"supplier", "supplier", PlaceKind::Supplier},
                   {"difference", "difference", PlaceKind::Difference}},
                  costing);
    // 10 for 1.00 each, then 10 for 2.00 each.
    [&] { QVERIFY(!ledger.apply(worth(move(1, 10, "supplier", "A1"), 10'000'000))); }();
    [&] { QVERIFY(!ledger.apply(worth(move(2, 10, "supplier", "A1"), 20'000'000))); }();
    return ledger;
}

const BalanceKey Bin{"AD-8-10", "A1", {}, PieceCondition::New};

Record asWritten(Trip trip, TripState state)
{
    trip.state = state;
    return trip.asRecord();
}

} // namespace

class TakenInTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void valueStaysWhatItWasThere();
    void piecesHaveToBeThere();
    void layersGoAsTheyLieHere();
    void whatWasSettledIsNotTakenBack();
    void aPromiseCountsWhateverIsFree();
    void tripsComeBackAsTheyWereWritten();
    void damagedTripsAreRefused();
    void placesAreAwayUntilTheCopyIsBack();
    void keptEntriesKeepTheirBytes();
};

void TakenInTest::valueStaysWhatItWasThere()
{
    // The copy knew only the first ten: 4 of them were worth 4.00 there, here 6.00 by the average.
    Ledger ledger = shopOf(Costing::MovingAverage);
    QCOMPARE(ledger.valueOf(Bin, 4), 6'000'000);
    const Movement there = worth(move(3, 4, "A1", "car"), 4'000'000);
    QVERIFY(!ledger.take(there));
    QVERIFY(ledger.balance(Bin) == (Balance{16, 26'000'000}));
    // Value alone, either way, between stock and the differences only.
    QVERIFY(!ledger.apply(worth(move(4, 0, "A1", "difference"), 2'000'000, Deed::Settle)));
    QVERIFY(ledger.balance(Bin) == (Balance{16, 24'000'000}));
    QVERIFY(!ledger.apply(worth(move(5, 0, "difference", "A1"), 1'000'000, Deed::Settle)));
    QVERIFY(ledger.apply(worth(move(6, 0, "A1", "car"), 1, Deed::Settle)));
    QVERIFY(ledger.apply(worth(move(7, 1, "A1", "difference"), 1, Deed::Settle)));
    QVERIFY(ledger.apply(worth(move(8, 0, "A1", "difference"), 1))); // By no other deed.
}

void TakenInTest::piecesHaveToBeThere()
{
    Ledger ledger = shopOf(Costing::MovingAverage);
    QVERIFY(ledger.take(worth(move(3, 21, "A1", "car"), 1)) == Refusal::NotEnough);
    QVERIFY(ledger.take(worth(move(4, 1, "A1", "nowhere"), 1)) == Refusal::UnknownPlace);
    QVERIFY(ledger.balance(Bin) == (Balance{20, 30'000'000}));
}

void TakenInTest::layersGoAsTheyLieHere()
{
    // 12 went there for 12.00; here the oldest 12 are ten of the first and two of the
    // second: 14.00.
    Ledger ledger = shopOf(Costing::FirstInFirstOut);
    QVERIFY(ledger.apply(worth(move(3, 12, "A1", "car"), 12'000'000)) == Refusal::WrongValue);
    QVERIFY(!ledger.take(worth(move(3, 12, "A1", "car"), 12'000'000)));
    QVERIFY(ledger.layersAt(Bin) == (Layers{{2, {8, 16'000'000}}}));
    QCOMPARE(ledger.balance(Bin).value, 18'000'000);
    QVERIFY(!ledger.apply(worth(move(4, 0, "A1", "difference"), 2'000'000, Deed::Settle)));
    QVERIFY(sumOf(ledger.layersAt(Bin)) == ledger.balance(Bin));
    // Taken back here it brings those very layers, and what they are worth.
    Movement back = move(5, 12, "car", "A1");
    back.reverses = idNumber(3);
    back.value = ledger.valueOf(back);
    QCOMPARE(back.value, 14'000'000);
    QVERIFY(!ledger.apply(back));
    QVERIFY(ledger.balance(Bin) == (Balance{20, 30'000'000}));
    QVERIFY(ledger.layersAt(Bin) == (Layers{{1, {10, 10'000'000}}, {2, {10, 20'000'000}}}));
}

void TakenInTest::whatWasSettledIsNotTakenBack()
{
    Ledger ledger = shopOf(Costing::FirstInFirstOut);
    QVERIFY(!ledger.apply(worth(move(3, 0, "difference", "A1"), 5, Deed::Settle)));
    Movement back = worth(move(4, 0, "A1", "difference"), 5);
    back.reverses = idNumber(3);
    QVERIFY(ledger.apply(back) == Refusal::NotTheReverse);
}

void TakenInTest::aPromiseCountsWhateverIsFree()
{
    Ledger ledger = shopOf(Costing::MovingAverage);
    const Promise much{idNumber(3), "coupe", "AD-8-10", 30, "hand", {}, 0};
    QVERIFY(ledger.apply(much) == Refusal::NotFree);
    QVERIFY(!ledger.take(much));
    QCOMPARE(ledger.claim({"AD-8-10", "coupe"}).promised, 30);
}

void TakenInTest::tripsComeBackAsTheyWereWritten()
{
    Trip trip;
    trip.id = idNumber(1);
    trip.trip = idNumber(2).text();
    trip.name = "lakeside";
    trip.places = {"T1", "T 2"};
    trip.state = TripState::Brought;
    trip.chains = {{"00ff", 3, 8, {{11, 13}, {20, 22}}}, {"ab", 1, 1, {{7, 7}}}};
    trip.documents = 4;
    trip.goesOn = true;
    const auto read = Trip::read(trip.asRecord());
    QVERIFY(read);
    QVERIFY(read->chains == trip.chains && read->places == trip.places);
    QVERIFY(read->goesOn && read->documents == 4 && read->trip == trip.trip);
}

void TakenInTest::damagedTripsAreRefused()
{
    Trip trip;
    trip.trip = "x";
    trip.state = TripState::Brought;
    trip.chains = {{"ab", 1, 3, {{7, 9}}}};
    for (const char *chains : {"ab", "ab 1", "ab 1-3", "ab 1-3 7-8", "ab 3-1 7-9", "ab 1-3 9-7",
                               "ab 1-3 7-9x", "ab 1-3 7-9 10-10"}) {
        Record record = trip.asRecord();
        record.fields["chains"] = chains;
        QVERIFY2(!Trip::read(record), chains);
    }
    Record record = trip.asRecord();
    record.fields["state"] = "gone";
    QVERIFY(!Trip::read(record));
}

void TakenInTest::placesAreAwayUntilTheCopyIsBack()
{
    Trip trip;
    trip.trip = "one";
    trip.name = "lakeside";
    trip.places = {"T1", "T2"};
    std::vector<Record> written{asWritten(trip, TripState::Taken)};
    QVERIFY(Trips::of(written)->away("T1"));
    Trip released = trip;
    released.places = {"T1"};
    written.push_back(asWritten(released, TripState::Released));
    QVERIFY(!Trips::of(written)->away("T1") && Trips::of(written)->away("T2"));
    Trip brought = trip;
    brought.goesOn = true;
    written.push_back(asWritten(brought, TripState::Brought));
    QVERIFY(Trips::of(written)->away("T2"));
    brought.goesOn = false;
    written.push_back(asWritten(brought, TripState::Brought));
    QVERIFY(!Trips::of(written)->away("T2"));
    // Another of the same name: the one that is away is meant.
    trip.trip = "two";
    written.push_back(asWritten(trip, TripState::Taken));
    const auto trips = Trips::of(written);
    QCOMPARE(trips->named("lakeside")->taken.trip, std::string("two"));
    QCOMPARE(trips->named("one")->brought.size(), 2U);
}

void TakenInTest::keptEntriesKeepTheirBytes()
{
    const KeptEntry kept{idNumber(3), "movement", {0, 1, 0xfe, 0xff}, "hand", 5};
    const Record record = kept.asRecord(idNumber(4));
    QVERIFY(keptBytes(record) == kept.bytes);
    Record other = record;
    other.fields["entry"] = "0g";
    QVERIFY(!keptBytes(other));
}

QTEST_GUILESS_MAIN(TakenInTest)
#include "tst_copies_are_taken_in_as_they_were.moc"
