// SPDX-License-Identifier: MIT
//
// Promise: intervals.csv is read as it stands, and a row that is wrong is pointed at; the usual
// intervals of a shop that has none of its own say each where they come from.

#include "model/exchange/servicing/intervals_csv.h"

#include <QTest>

using namespace flarestock;

namespace {

const std::string Header = "kind,medium,part,position,car,do,runs,hours,events,months,age,washes,"
                           "warn percent,warn days,source\n";

} // namespace

class IntervalsReadAsTheyStand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aRowIsRead()
    {
        const auto read =
            readIntervals(Header + "element,stainless mesh,,,car-2,wash,12,2.5,1,6,,8,25,14,ours\n",
                          "intervals.csv");
        QVERIFY(read);
        const Interval &one = read->front();
        QCOMPARE(one.kind, std::optional(Kind::Element));
        QCOMPARE(one.medium, std::string("stainless mesh"));
        QCOMPARE(one.car, std::string("car-2"));
        QCOMPARE(one.todo, Work::Washed);
        QCOMPARE(one.runs, std::optional(12));
        QCOMPARE(one.hours->text(), std::string("2.5"));
        QCOMPARE(one.events, std::optional(1));
        QCOMPARE(one.months, std::optional(6));
        QVERIFY(!one.age);
        QCOMPARE(one.washes, std::optional(8));
        QCOMPARE(one.warnPercent, 25);
        QCOMPARE(one.warnDays, 14);
        QCOMPARE(one.source, std::string("ours"));
    }
    void aWrongRowIsPointedAt_data()
    {
        QTest::addColumn<QString>("row");
        QTest::newRow("fits everything") << ",,,,,replace,10,,,,,,,,";
        QTest::newRow("never") << "pump,,,,,replace,,,,,,,,,";
        QTest::newRow("no such work") << "pump,,,,,polish,10,,,,,,,,";
        QTest::newRow("no work") << "pump,,,,,,10,,,,,,,,";
        QTest::newRow("no such kind") << "pomp,,,,,replace,10,,,,,,,,";
        QTest::newRow("paper is washed") << "element,paper,,,,wash,10,,,,,,,,";
        QTest::newRow("half a run") << "pump,,,,,replace,1.5,,,,,,,,";
        QTest::newRow("no hours") << "pump,,,,,replace,,0,,,,,,,";
        QTest::newRow("washes of what is replaced") << "pump,,,,,replace,10,,,,,3,,,";
    }
    void aWrongRowIsPointedAt()
    {
        QFETCH(QString, row);
        const auto read = readIntervals(
            Header + "hose,,,,,inspect,,,3,,,,,,\n" + row.toStdString() + "\n", "intervals.csv");
        QVERIFY(!read);
        QVERIFY2(read.error().text().find("3") != std::string::npos, read.error().text().c_str());
    }
    void theSameTwiceIsRefused()
    {
        const std::string row = "pump,,EP-460,,,inspect,10,,,,,,,,\n";
        QVERIFY(!readIntervals(Header + row + "pump,,ep-460,,,inspect,12,,,,,,,,\n", "i.csv"));
        QVERIFY(readIntervals(Header + row + "pump,,EP-460,,,replace,12,,,,,,,,\n", "i.csv"));
    }
    void theUsualOnesSayWhereTheyComeFrom()
    {
        QVERIFY(!usualIntervals().empty());
        for (const Interval &one : usualIntervals()) {
            const bool says = one.source.find("no source") != std::string::npos ||
                              one.source.find("judgement") != std::string::npos;
            QVERIFY2(says, one.source.c_str());
            QVERIFY(one.todo != Work::Washed || !isNeverWashed(one.medium));
        }
    }
};

QTEST_APPLESS_MAIN(IntervalsReadAsTheyStand)
#include "tst_intervals_read_as_they_stand.moc"
