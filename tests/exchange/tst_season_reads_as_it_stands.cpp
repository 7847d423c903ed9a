// SPDX-License-Identifier: MIT
//
// The season's events: read as they stand, in the order of their days, and each mistake named by
// its place.

#include "model/exchange/season/season_csv.h"
#include "text_files.h"

#include <QTest>

using namespace flarestock;

class SeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsRows();
    void readsTheDemo();
    void namesWhatIsWrong_data();
    void namesWhatIsWrong();
};

static const std::string Head = "event,title,first day,last day,cars,runs,hours\n";

void SeasonTest::readsRows()
{
    const auto season = readSeason(Head + "b,Second,2027-04-17,2027-04-18,car-1; car-2,2,7.5\n"
                                          "a,First,2027-03-20,,car-2,,\n",
                                   "season.csv");
    QVERIFY2(season.has_value(), season ? "" : season.error().text().c_str());
    QCOMPARE(season->events().size(), std::size_t{2});
    const Event &first = season->events().front();
    QCOMPARE(first.id, std::string("a"));
    QCOMPARE(first.lastDay, std::string("2027-03-20"));
    QVERIFY(!first.runs && !first.hours);
    const Event *second = season->event("B");
    QVERIFY(second != nullptr);
    QCOMPARE(second->cars, (std::vector<std::string>{"car-1", "car-2"}));
    QCOMPARE(*second->runs, "2"_dec);
    QCOMPARE(*second->hours, "7.5"_dec);
    QCOMPARE(season->next("CAR-2", "2027-03-20"), &first);
    QCOMPARE(season->next("car-2", "2027-03-21"), second);
    QCOMPARE(season->next("car-1", "2027-01-01"), second);
    QVERIFY(season->next("car-1", "2027-04-19") == nullptr);
    QCOMPARE(season->from("2027-04-18").size(), std::size_t{1});
}

void SeasonTest::readsTheDemo()
{
    const auto season = readSeason(demoFiles().at("season.csv"), "season.csv");
    QVERIFY2(season.has_value(), season ? "" : season.error().text().c_str());
    QVERIFY(season->events().size() >= 6);
}

void SeasonTest::namesWhatIsWrong_data()
{
    QTest::addColumn<QString>("row");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *text, unsigned column, const char *words) {
        QTest::newRow(text) << QString::fromLatin1(text) << column << QString::fromLatin1(words);
    };
    row(",T,2027-03-20,,car-1,,", 1, "\"event\" is empty");
    row("e,T,2027-02-30,,car-1,,", 5, "no day");
    row("e,T,,,car-1,,", 5, "\"first day\" is empty");
    row("e,T,2027-03-20,2027-03-19,car-1,,", 16, "before it begins on 2027-03-20");
    row("e,T,2027-03-20,,,,", 17, "\"cars\" is empty");
    row("e,T,2027-03-20,,car-1; CAR-1,,", 24, "CAR-1 stands twice");
    row("e,T,2027-03-20,,car-1,-1,", 23, "less than nothing");
    row("e,T,2027-03-20,,car-1,1,long", 25, "\"long\" is no number");
    row("e,T,2027-03-20,,car-1,,\nE,T,2027-04-20,,car-1,,", 1, "E stands twice");
}

void SeasonTest::namesWhatIsWrong()
{
    QFETCH(QString, row);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const auto season = readSeason(Head + row.toStdString() + "\n", "season.csv");
    QVERIFY(!season.has_value());
    QVERIFY2(season.error().sentence().find(words.toStdString()) != std::string::npos,
             season.error().text().c_str());
    QVERIFY2(season.error().column == column, season.error().text().c_str());
}

QTEST_APPLESS_MAIN(SeasonTest)
#include "tst_season_reads_as_it_stands.moc"
