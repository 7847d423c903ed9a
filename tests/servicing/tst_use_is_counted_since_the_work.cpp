// SPDX-License-Identifier: MIT
//
// Promise: how far a piece ran is counted since it was fitted, washed and looked at, day by day;
// what was taken back does not count; a piece with a serial keeps what it ran wherever it goes.
//
// The figures are added up by hand beside each step. No source outside the project: counting is
// all.

#include "model/servicing/car_life.h"

#include <QTest>

#include <array>

using namespace flarestock;

namespace {

MovementId idOf(std::uint8_t number)
{
    std::array<std::uint8_t, 16> bytes{};
    bytes.back() = number;
    return MovementId::ofBytes(bytes);
}

class Book {
public:
    Record &ran(const std::string &event, const std::string &day, std::int64_t runs,
                const char *hours, const std::string &car = "car-2")
    {
        Outing outing;
        outing.id = next();
        outing.car = car;
        outing.event = event;
        outing.day = day;
        outing.runs = runs;
        outing.hours = Decimal::parse(hours).value();
        return records.emplace_back(outing.asRecord());
    }
    Record &work(Work work, const std::string &day, LotKey piece = {"EC-100-L", ""},
                 LotKey old = {}, const std::string &car = "car-2")
    {
        Serviced done;
        done.id = next();
        done.car = car;
        done.work = work;
        done.position = "pre element";
        done.piece = std::move(piece);
        done.old = std::move(old);
        done.day = day;
        return records.emplace_back(done.asRecord());
    }
    void takeBack(const Record &past)
    {
        Record back = takingBack(past);
        back.id = next();
        records.push_back(back);
    }
    [[nodiscard]] CarLives lives(std::vector<SeatedPiece> seats = {}) const
    {
        return carLives({std::move(seats), standingOf(records)}).value();
    }
    [[nodiscard]] FittedPiece piece() const { return *lives().at("car-2").at("pre element"); }

    std::vector<Record> records;

private:
    MovementId next() { return idOf(++m_number); }
    std::uint8_t m_number = 0;
};

std::string said(const Use &use)
{
    return std::to_string(use.runs) + " runs " + use.hours.stripped().text() + " h " +
           std::to_string(use.eventCount()) + " events";
}

} // namespace

class UseIsCountedSinceTheWork : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// What was found when it was replaced was found on the one that went out.
    void aNoteStaysWithItsPiece()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01").fields["note"] = "from the old car";
        QCOMPARE(book.piece().note, std::string("from the old car"));
        book.work(Work::Replaced, "2027-03-20", {"EC-100-L", ""}, {"EC-100-L", "T-1"})
            .fields["note"] = "torn mesh";
        QCOMPARE(book.piece().note, std::string());
        QCOMPARE(book.lives().at("car-2").out.front().note, std::string("torn mesh"));
        book.work(Work::Inspected, "2027-03-21").fields["note"] = "clean";
        QCOMPARE(book.piece().note, std::string("clean"));
    }
    void twoDaysOfOneEventAreOneEvent()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01");
        book.ran("hill", "2027-03-20", 3, "0.2");
        book.ran("hill", "2027-03-21", 4, "0.3");
        book.ran("test", "2027-04-02", 5, "1.25");
        QCOMPARE(said(book.piece().sinceFitted), std::string("12 runs 1.75 h 2 events"));
    }
    void washingStartsAgainAndLookingDoesNot()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01");
        book.ran("a", "2027-03-02", 3, "0.5");
        book.work(Work::Washed, "2027-03-03");
        book.ran("b", "2027-03-04", 4, "0.5");
        book.work(Work::Inspected, "2027-03-05");
        book.ran("c", "2027-03-06", 5, "0.5");
        const FittedPiece piece = book.piece();
        QCOMPARE(said(piece.sinceFitted), std::string("12 runs 1.5 h 3 events"));
        QCOMPARE(said(piece.sinceWorked), std::string("9 runs 1 h 2 events"));
        QCOMPARE(said(piece.sinceSeen), std::string("5 runs 0.5 h 1 events"));
        QCOMPARE(piece.washed, std::int64_t(1));
        QCOMPARE(piece.worked, std::string("2027-03-03"));
    }
    void whatIsWrittenDownLateCountsOnItsDay()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01");
        book.work(Work::Washed, "2027-03-10");
        book.ran("late", "2027-03-05", 6, "1"); // Before the wash.
        QCOMPARE(said(book.piece().sinceFitted), std::string("6 runs 1 h 1 events"));
        QCOMPARE(said(book.piece().sinceWorked), std::string("0 runs 0 h 0 events"));
    }
    void ofOneDayTheOrderOfWritingCounts()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01");
        book.ran("a", "2027-03-05", 2, "0");
        book.work(Work::Washed, "2027-03-05");
        book.ran("a", "2027-03-05", 3, "0");
        QCOMPARE(said(book.piece().sinceWorked), std::string("3 runs 0 h 1 events"));
    }
    void whatWasTakenBackDoesNotCountUntilThatIsTakenBack()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01");
        const Record outing = book.ran("a", "2027-03-02", 7, "1");
        const Record wash = book.work(Work::Washed, "2027-03-03");
        book.takeBack(outing);
        book.takeBack(wash);
        QCOMPARE(said(book.piece().sinceFitted), std::string("0 runs 0 h 0 events"));
        QCOMPARE(book.piece().washed, std::int64_t(0));
        book.takeBack(book.records[3]); // What took the outing back.
        QCOMPARE(said(book.piece().sinceFitted), std::string("7 runs 1 h 1 events"));
        book.takeBack(book.records.back());
        QCOMPARE(said(book.piece().sinceFitted), std::string("0 runs 0 h 0 events"));
    }
    void aTaggedElementKeepsItsWashesInAnotherCar()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01", {"EC-100-L", "T1"});
        book.ran("a", "2027-03-02", 4, "1");
        book.work(Work::Washed, "2027-03-03", {"EC-100-L", "T1"});
        book.work(Work::Replaced, "2027-03-04", {"EC-100-L", "T2"}, {"EC-100-L", "T1"});
        book.ran("b", "2027-03-05", 9, "2"); // T2 alone.
        book.work(Work::Fitted, "2027-03-06", {"EC-100-L", "T1"}, {}, "car-1");
        book.ran("c", "2027-03-07", 5, "1", "car-1");
        const CarLives lives = book.lives();
        const FittedPiece &again = *lives.at("car-1").at("pre element");
        QCOMPARE(again.washed, std::int64_t(1));
        QCOMPARE(said(again.life), std::string("9 runs 2 h 2 events"));
        QCOMPARE(said(again.sinceFitted), std::string("5 runs 1 h 1 events"));
        QCOMPARE(said(book.piece().sinceFitted), std::string("9 runs 2 h 1 events"));
    }
    void whatWentOutIsTold()
    {
        Book book;
        book.work(Work::Fitted, "2027-03-01", {"EC-100-L", "T1"});
        book.work(Work::Replaced, "2027-03-04", {"EC-100-L", "T2"}, {"EC-100-L", "T1"});
        const CarLives lives = book.lives();
        QCOMPARE(lives.at("car-2").out.size(), std::size_t(1));
        QCOMPARE(lives.at("car-2").out.front().piece.lot, std::string("T1"));
        book.work(Work::Fitted, "2027-03-06", {"EC-100-L", "T1"});
        QCOMPARE(book.lives().at("car-2").out.size(), std::size_t(1)); // T2 then.
        QCOMPARE(book.lives().at("car-2").out.front().piece.lot, std::string("T2"));
    }
    void whatABuildPutInCountsFromItsDay()
    {
        Book book;
        book.ran("before", "2027-03-01", 3, "1");
        book.ran("same day", "2027-03-02", 4, "1");
        const CarLives lives = book.lives({{"car-2",
                                            "coupe-fuel/pump",
                                            "coupe-fuel",
                                            {"EP-460", "SN 7"},
                                            1,
                                            "2027-03-02",
                                            {},
                                            {}}});
        const FittedPiece &pump = *lives.at("car-2").at("coupe-fuel/pump");
        QCOMPARE(said(pump.sinceFitted), std::string("4 runs 1 h 1 events"));
        QCOMPARE(lives.at("car-2").use().runs, std::int64_t(7));
    }
    void recordsSayThemselvesAndAreRead()
    {
        Serviced done;
        done.id = idOf(9);
        done.car = "car-2";
        done.work = Work::Replaced;
        done.position = "p";
        done.build = "coupe-fuel";
        done.piece = {"PT-6", "4417/1"};
        done.quantity = 4'000'000;
        done.old = {"PT-6", "4416"};
        done.oldIs = PieceCondition::NotToBeUsed;
        done.washed = 2;
        done.hadRuns = 3;
        done.hadHours = Decimal::parse("1.5").value();
        done.made = "2026-01-31";
        done.useBy = "2027-12-31";
        done.day = "2027-02-01";
        done.action = idOf(8).text();
        const auto read = Serviced::read(done.asRecord());
        QVERIFY(read);
        QCOMPARE(read->asRecord().fields, done.asRecord().fields);
        QCOMPARE(read->quantity, done.quantity);
        Record wrong = done.asRecord();
        wrong.fields["day"] = "soon";
        QVERIFY(!Serviced::read(wrong));
        wrong.fields["day"] = "2027-02-01";
        wrong.fields["work"] = "polished";
        QVERIFY(!Serviced::read(wrong));
    }
};

QTEST_APPLESS_MAIN(UseIsCountedSinceTheWork)
#include "tst_use_is_counted_since_the_work.moc"
