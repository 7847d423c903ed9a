// SPDX-License-Identifier: MIT
//
// What a hand writes down beside movements is read back as it was written; the newest word counts;
// what was written down of an action that was taken back does not.

#include "model/journal/notes/shop_notes.h"
#include "tests/journal/few_places.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

LevelSeen levelOf(std::uint32_t number, StockLevel level)
{
    return {idNumber(number), "SL-C", "A1", level, "half a bottle", "fitter", 1'780'000'000'000};
}

Keeping keepingOf(std::uint32_t number, std::int64_t least, std::int64_t most)
{
    return {idNumber(number), "AD-8-10", "A1", least, most, "fitter", 1'780'000'000'000};
}

MadeHose hoseOf(const std::string &tag, const std::string &action)
{
    MadeHose hose;
    hose.id = idNumber(70);
    hose.tag = tag;
    hose.hose = "PT-6";
    hose.hoseLot = "PT-6-C";
    hose.startEnd = "HE-6";
    hose.farEnd = "HE-6-90";
    hose.cut = 4'572'000;
    hose.seats = 5'008'880;
    hose.clocking = "90 deg";
    hose.pressure = "2000 psi";
    hose.medium = "water";
    hose.passed = true;
    hose.testedBy = "foreman";
    hose.madeOn = "2026-11-28";
    hose.useBy = "2031-11-30";
    hose.who = "fitter";
    hose.action = action;
    hose.at = 1'780'000'000'000;
    return hose;
}

OpenedBox boxOf(const std::string &action)
{
    return {idNumber(71), "EP-460", "",     "opened/1",       {"BK-460", "CL-T60", "CL-T60"},
            {"CL-T60"},   "fitter", action, 1'780'000'000'000};
}

Instead insteadOf(const std::string &action)
{
    return {idNumber(72), "coupe",      "RG-908", "RN-908",         2,
            "fitter",     "none there", action,   1'780'000'000'000};
}

} // namespace

class NotesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachIsReadAsItWasWritten();
    void noneIsReadAsAnother();
    void theNewestWordCounts();
    void whatWasTakenBackDoesNotCount();
};

template <class T>
void comesBack(const T &written)
{
    const Record record = written.asRecord();
    const auto read = T::read(record);
    QVERIFY2(read, qPrintable(QString::fromStdString(std::string(text(record.kind)))));
    const Record again = read->asRecord();
    QVERIFY(again.id == record.id && again.kind == record.kind);
    QCOMPARE(again.subject, record.subject);
    QCOMPARE(again.fields, record.fields);
    QCOMPARE(again.who, record.who);
    QCOMPARE(again.at, record.at);
    QVERIFY(parseRecordKind(text(record.kind)).value() == record.kind);
}

void NotesTest::eachIsReadAsItWasWritten()
{
    comesBack(levelOf(1, StockLevel::Low));
    comesBack(keepingOf(2, 3, 8));
    comesBack(hoseOf("L-17", ""));
    comesBack(boxOf(""));
    comesBack(insteadOf(""));
    // A field that is lost on the way would be lost in both records: these are asked for.
    const auto hose = MadeHose::read(hoseOf("L-17", "").asRecord()).value();
    QVERIFY(hose.passed && hose.isTested());
    QCOMPARE(hose.seats, 5'008'880);
    QCOMPARE(hose.useBy, std::string("2031-11-30"));
    const auto box = OpenedBox::read(boxOf("").asRecord()).value();
    QCOMPARE(box.taken, (std::vector<std::string>{"BK-460", "CL-T60", "CL-T60"}));
    QCOMPARE(box.missing, std::vector<std::string>{"CL-T60"});
    QVERIFY(LevelSeen::read(levelOf(1, StockLevel::Out).asRecord())->level == StockLevel::Out);
}

void NotesTest::noneIsReadAsAnother()
{
    QVERIFY(!MadeHose::read(levelOf(1, StockLevel::Low).asRecord()));
    QVERIFY(!LevelSeen::read(keepingOf(2, 3, 8).asRecord()));
    QVERIFY(!Keeping::read(boxOf("").asRecord()));
    QVERIFY(!OpenedBox::read(insteadOf("").asRecord()));
    QVERIFY(!Instead::read(hoseOf("L-17", "").asRecord()));
    QVERIFY(!Keeping::read(keepingOf(2, 8, 3).asRecord())); // A maximum below the minimum.
}

void NotesTest::theNewestWordCounts()
{
    const Ledger ledger(fewPlaces());
    const auto notes = ShopNotes::of({levelOf(1, StockLevel::Plenty).asRecord(),
                                      levelOf(2, StockLevel::Low).asRecord(),
                                      keepingOf(3, 3, 8).asRecord(), keepingOf(4, 1, 2).asRecord()},
                                     ledger)
                           .value();
    QVERIFY(notes.levels.at({"SL-C", "A1"}).level == StockLevel::Low);
    QCOMPARE(notes.keepings.at({"AD-8-10", "A1"}).most, 2);
    const auto ended =
        ShopNotes::of({keepingOf(3, 3, 8).asRecord(), keepingOf(5, 0, 0).asRecord()}, ledger)
            .value();
    QVERIFY(ended.keepings.empty());
}

void NotesTest::whatWasTakenBackDoesNotCount()
{
    Ledger ledger(fewPlaces());
    Movement made = moved(1, 4, "opening", "A1", 4'000'000);
    QVERIFY(!carriedOut(ledger, made));
    const std::vector<Record> records{hoseOf("L-17", made.id.text()).asRecord(),
                                      boxOf(made.id.text()).asRecord(),
                                      insteadOf(made.id.text()).asRecord()};
    const auto before = ShopNotes::of(records, ledger).value();
    QVERIFY(before.hoses.contains("L-17"));
    QCOMPARE(before.opened.size(), std::size_t{1});
    QCOMPARE(before.build("coupe").instead.size(), std::size_t{1});
    Movement back = takenBack(made, 2);
    QVERIFY(!carriedOut(ledger, back));
    const auto after = ShopNotes::of(records, ledger).value();
    QVERIFY(after.hoses.empty() && after.opened.empty());
    QVERIFY(after.build("coupe").instead.empty());
}

QTEST_APPLESS_MAIN(NotesTest)
#include "tst_notes_come_back_as_they_were_written.moc"
