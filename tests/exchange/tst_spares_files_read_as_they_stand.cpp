// SPDX-License-Identifier: MIT
//
// spares.csv, used.csv, kept.csv and a kit of one's own: read as they stand, and each mistake named
// by its place.

#include "model/exchange/shop_toml.h"
#include "model/exchange/spares/kept_csv.h"
#include "model/exchange/spares/kit_csv.h"
#include "model/exchange/spares/spares_csv.h"
#include "text_files.h"

#include <QTest>

#include <set>

using namespace flarestock;

class SparesFilesReadAsTheyStand : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void waysOfSpendingAreRead();
    void limitsOfPlacesAreRead();
    void theDemoReads();
    void namesWhatIsWrong_data();
    void namesWhatIsWrong();

private:
    /// What is said of it; empty where nothing is wrong.
    [[nodiscard]] std::string wrongIn(const std::string &file, const std::string &text) const;
    TextFiles m_demo;
    Catalogue m_catalogue;
    std::vector<Place> m_places;
};

static const std::map<std::string, std::string, std::less<>> Heads = {
    {"spares.csv", "part,spent by,fitted,rate,lasts,per crash,sets\n"},
    {"used.csv", "event,part,pieces\n"},
    {"kept.csv", "part,place,min,max\n"},
    {"kit.csv", "part,rate,price,each\n"}};

void SparesFilesReadAsTheyStand::initTestCase()
{
    m_demo = demoFiles();
    auto catalogue = readCatalogue(m_demo);
    QVERIFY(catalogue.has_value());
    m_catalogue = std::move(*catalogue);
    const auto shop = readShop(m_demo.at("shop.toml"), "shop.toml");
    QVERIFY(shop.has_value());
    m_places = shop->places;
}

std::string SparesFilesReadAsTheyStand::wrongIn(const std::string &file,
                                                const std::string &text) const
{
    const auto said = [](const auto &read) { return read ? std::string() : read.error().text(); };
    if (file == "spares.csv")
        return said(readSpendings(text, file));
    if (file == "used.csv")
        return said(readPastUses(text, file));
    if (file == "kept.csv")
        return said(readKept(text, file, m_catalogue, m_places));
    return said(readKit(text, file));
}

void SparesFilesReadAsTheyStand::waysOfSpendingAreRead()
{
    const auto read =
        readSpendings(Heads.at("spares.csv") + "A,chance,2 x car-1; car-2,0.05 per hour,,,\n"
                                               "B,wear,car-1,,12 runs,,\n"
                                               "C,crash,,0.1 per event,,2,3\n"
                                               "D,,,,,,\n",
                      "spares.csv");
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    const PartSpending &chance = read->at(0);
    QCOMPARE(chance.by, Spending::Chance);
    QCOMPARE(chance.fitted.at("car-1"), std::int64_t(2));
    QCOMPARE(chance.fitted.at("car-2"), std::int64_t(1));
    QCOMPARE(*chance.rate, "0.05"_dec);
    QCOMPARE(chance.in, RunningIn::Hours);
    QCOMPARE(read->at(1).by, Spending::Wear);
    QCOMPARE(*read->at(1).lasts, "12"_dec);
    QCOMPARE(read->at(1).in, RunningIn::Runs);
    QCOMPARE(read->at(2).by, Spending::Crash);
    QCOMPARE(read->at(2).perCrash, std::int64_t(2));
    QCOMPARE(read->at(2).sets, std::int64_t(3));
    QCOMPARE(read->at(3).by, Spending::Chance);
    QVERIFY(!read->at(3).rate);
}

void SparesFilesReadAsTheyStand::limitsOfPlacesAreRead()
{
    const auto read = readKept(Heads.at("kept.csv") + "cp-6,TRAILER-2,2,\nPT-8,SH-1,36,144\n",
                               "kept.csv", m_catalogue, m_places);
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    QCOMPARE(read->front().part, std::string("CP-6"));
    QCOMPARE(read->front().place, std::string("trailer-2"));
    QCOMPARE(read->front().most, read->front().least);
    QCOMPARE(read->back().least, std::int64_t(36) * 203'200); // An inch is 203,200 x 125 nm.
    QCOMPARE(read->back().most, std::int64_t(144) * 203'200);
}

void SparesFilesReadAsTheyStand::theDemoReads()
{
    for (const char *name : {"spares.csv", "used.csv", "kept.csv"})
        QCOMPARE(wrongIn(name, m_demo.at(name)), std::string());
    const auto spares = readSpendings(m_demo.at("spares.csv"), "spares.csv");
    std::set<Spending, std::less<>> ways;
    for (const PartSpending &one : *spares) {
        QVERIFY2(m_catalogue.find(one.part), one.part.c_str());
        ways.insert(one.by);
    }
    QCOMPARE(ways.size(), std::size_t{3}); // The demo shows each way.
}

void SparesFilesReadAsTheyStand::namesWhatIsWrong_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<QString>("rows");
    QTest::addColumn<QString>("where");
    QTest::addColumn<QString>("words");
    const auto wrong = [](const char *file, const char *rows, const char *where,
                          const char *words) {
        QTest::addRow("%s: %s", file, rows) << QString::fromUtf8(file) << QString::fromUtf8(rows)
                                            << QString::fromUtf8(where) << QString::fromUtf8(words);
    };
    wrong("spares.csv", "A,luck,,,,,", "line 2, column 3", "luck");
    wrong("spares.csv", "A,wear,,,,,", "line 2", "nothing says after how much");
    wrong("spares.csv", "A,wear,,,0 runs,,", "line 2, column 10", "nothing says after how much");
    wrong("spares.csv", "A,chance,,,12 runs,,", "line 2, column 12", "does not wear out");
    wrong("spares.csv", "A,wear,,,12 laps,,", "line 2, column 10", "12 laps");
    wrong("spares.csv", "A,chance,,-1 per run,,,", "line 2, column 11", "-1 per run");
    wrong("spares.csv", "A,chance,0 x car-1,,,,", "line 2, column 10", "no number of a car");
    wrong("spares.csv", "A,crash,,,,0,", "line 2, column 12", "per crash");
    wrong("spares.csv", "A,,,,,,\na,,,,,,", "line 3, column 1", "stands twice");
    wrong("spares.csv", ",,,,,,", "line 2, column 1", "part");
    wrong("used.csv", "hill,A,-1", "line 2, column 8", "less than nothing");
    wrong("used.csv", "hill,A,some", "line 2, column 8", "some");
    wrong("used.csv", ",A,1", "line 2, column 1", "event");
    wrong("used.csv", "hill,A,", "line 2, column 8", "pieces");
    wrong("kept.csv", "NO-1,trailer-2,1,", "line 2, column 1", "no part of the catalogue");
    wrong("kept.csv", "CP-6,car-1,1,", "line 2, column 6", "no shelf, bin or drawer");
    wrong("kept.csv", "CP-6,trailer-2,3,2", "line 2, column 18", "below the minimum");
    wrong("kept.csv", "CP-6,trailer-2,,2", "line 2, column 16", "min");
    wrong("kept.csv", "CP-6,trailer-2,0.5,", "line 2, column 16", "0.5");
    wrong("kept.csv", "CP-6,trailer-2,1,\nCP-6,trailer-2,2,", "line 3, column 1", "stands twice");
    wrong("kit.csv", "", "kit.csv", "names no part");
    wrong("kit.csv", "A,-0.1,5,", "line 2, column 3", "less than never");
    wrong("kit.csv", "A,0.1,0,", "line 2, column 7", "0");
    wrong("kit.csv", "A,0.1,0.1234567,", "line 2, column 7", "six decimals");
    wrong("kit.csv", "A,0.1,5,\nA,0.1,5,", "line 3, column 1", "stands twice");
}

void SparesFilesReadAsTheyStand::namesWhatIsWrong()
{
    QFETCH(const QString, file);
    QFETCH(const QString, rows);
    QFETCH(const QString, where);
    QFETCH(const QString, words);
    const std::string name = file.toStdString();
    const std::string said =
        wrongIn(name, Heads.at(name) + rows.toStdString() + (rows.isEmpty() ? "" : "\n"));
    QVERIFY2(said.find(name) != std::string::npos, said.c_str());
    QVERIFY2(said.find(where.toStdString()) != std::string::npos, said.c_str());
    QVERIFY2(said.find(words.toStdString()) != std::string::npos, said.c_str());
}

QTEST_APPLESS_MAIN(SparesFilesReadAsTheyStand)
#include "tst_spares_files_read_as_they_stand.moc"
