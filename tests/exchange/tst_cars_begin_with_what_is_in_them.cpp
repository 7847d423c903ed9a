// SPDX-License-Identifier: MIT
//
// What is in the cars and how far they ran when the shop begins: read as it stands, and each
// mistake named by its place.

#include "model/exchange/servicing/fitted_csv.h"
#include "model/exchange/servicing/outings_csv.h"
#include "model/exchange/shop_toml.h"
#include "text_files.h"

#include <QTest>

using namespace flarestock;

class CarsBeginWithWhatIsInThem : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void piecesAreReadAsTheyStand();
    void outingsAreReadAsTheyStand();
    void theDemoReads();
    void namesWhatIsWrong_data();
    void namesWhatIsWrong();

private:
    TextFiles m_demo;
    Catalogue m_catalogue;
    std::vector<Place> m_places;
};

static const std::string FittedHead =
    "car,position,part,lot,since,length,washed,runs,hours,made,use by\n";
static const std::string OutingsHead = "car,event,day,runs,hours\n";

void CarsBeginWithWhatIsInThem::initTestCase()
{
    m_demo = demoFiles();
    auto catalogue = readCatalogue(m_demo);
    QVERIFY(catalogue.has_value());
    m_catalogue = std::move(*catalogue);
    const auto shop = readShop(m_demo.at("shop.toml"), "shop.toml");
    QVERIFY(shop.has_value());
    m_places = shop->places;
}

void CarsBeginWithWhatIsInThem::piecesAreReadAsTheyStand()
{
    const auto read = readFitted(
        FittedHead + "CAR-2,coarse,em-40-s,T-1,2026-03-14,,3,12,4.5,2026-01-02,2027-06-30\n"
                     "car-2,supply,PT-8,,2026-03-14,24,,,,,\n"
                     "car-2,front brakes/fluid,DOT 4,bottle 7,2026-03-14,,,,,,\n",
        "fitted.csv", m_catalogue, m_places);
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    QCOMPARE(read->size(), std::size_t{3});
    const Serviced &coarse = read->front();
    QCOMPARE(coarse.work, Work::Fitted);
    QCOMPARE(coarse.car, std::string("car-2"));
    QCOMPARE(coarse.piece.part, std::string("EM-40-S"));
    QCOMPARE(coarse.piece.lot, std::string("T-1"));
    QCOMPARE(coarse.washed, std::int64_t(3));
    QCOMPARE(coarse.hadRuns, std::int64_t(12));
    QCOMPARE(coarse.hadHours, "4.5"_dec);
    QCOMPARE(coarse.made, std::string("2026-01-02"));
    QCOMPARE(coarse.useBy, std::string("2027-06-30"));
    QCOMPARE(read->at(1).quantity, std::int64_t(24) * 203'200); // An inch is 203,200 x 125 nm.
    QCOMPARE(read->at(2).piece.part, std::string("DOT 4"));
}

void CarsBeginWithWhatIsInThem::outingsAreReadAsTheyStand()
{
    const auto read = readOutings(OutingsHead + "Car-1,oxlow-day,2026-08-23,3,12.25\n"
                                                "car-2,shake-down,2026-03-01,,0.5\n",
                                  "outings.csv", m_places);
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    QCOMPARE(read->front().car, std::string("car-1"));
    QCOMPARE(read->front().runs, std::int64_t(3));
    QCOMPARE(read->front().hours, "12.25"_dec);
    QCOMPARE(read->back().runs, std::int64_t(0));
}

void CarsBeginWithWhatIsInThem::theDemoReads()
{
    const auto fitted = readFitted(m_demo.at("fitted.csv"), "fitted.csv", m_catalogue, m_places);
    QVERIFY2(fitted.has_value(), fitted ? "" : fitted.error().text().c_str());
    const auto outings = readOutings(m_demo.at("outings.csv"), "outings.csv", m_places);
    QVERIFY2(outings.has_value(), outings ? "" : outings.error().text().c_str());
    std::set<std::string> cars;
    for (const Serviced &one : *fitted)
        cars.insert(one.car);
    for (const Outing &one : *outings)
        QVERIFY(cars.contains(one.car));
    QCOMPARE(cars.size(), std::size_t{3});
}

void CarsBeginWithWhatIsInThem::namesWhatIsWrong_data()
{
    QTest::addColumn<QString>("row");
    QTest::addColumn<bool>("isOuting");
    QTest::addColumn<QString>("words");
    const auto fitted = [](const char *row, const char *words) {
        QTest::newRow(words) << QString::fromUtf8(row) << false << QString::fromUtf8(words);
    };
    fitted("car-9,a,EM-40-S,,2026-03-14,,,,,,", "no car \"car-9\"");
    fitted("A1,a,EM-40-S,,2026-03-14,,,,,,", "no car \"A1\"");
    fitted("car-1,a,EM-40-X,,2026-03-14,,,,,,", "\"EM-40-X\" is no part");
    fitted("car-1,a,EM-40-S,,14.3.2026,,,,,,", "\"14.3.2026\" is no day");
    fitted("car-1,a,EM-40-S,,2026-03-14,24,,,,,", "is counted, not cut");
    fitted("car-1,a,PT-8,,2026-03-14,,,,,,", "nobody says how long");
    fitted("car-1,a,EM-40-S,,2026-03-14,,-1,,,,", "-1");
    fitted("car-1,a,EM-40-S,,2026-03-14,,,,-0.5,,", "less than no hours");
    fitted("car-1,a,EM-40-S,,2026-03-14,,,,,,\ncar-1,A,EM-40-S,,2026-03-14,,,,,,", "stands twice");
    const auto outing = [](const char *row, const char *words) {
        QTest::newRow(words) << QString::fromUtf8(row) << true << QString::fromUtf8(words);
    };
    outing("car-1,oxlow-day,2026-08-23,,", "neither runs nor hours");
    outing("car-1,,2026-08-23,1,", "event");
    outing("car-1,oxlow-day,2026-08-23,1,-2", "less than no hours");
    outing("car-8,oxlow-day,2026-08-23,1,", "no car \"car-8\"");
}

void CarsBeginWithWhatIsInThem::namesWhatIsWrong()
{
    QFETCH(const QString, row);
    QFETCH(const bool, isOuting);
    QFETCH(const QString, words);
    const std::string text = (isOuting ? OutingsHead : FittedHead) + row.toStdString() + "\n";
    std::string said;
    if (isOuting) {
        const auto read = readOutings(text, "outings.csv", m_places);
        QVERIFY(!read.has_value());
        said = read.error().text();
    } else {
        const auto read = readFitted(text, "fitted.csv", m_catalogue, m_places);
        QVERIFY(!read.has_value());
        said = read.error().text();
    }
    QVERIFY2(said.find(words.toStdString()) != std::string::npos, said.c_str());
    QVERIFY2(said.find(isOuting ? "outings.csv," : "fitted.csv,") != std::string::npos,
             said.c_str());
}

QTEST_APPLESS_MAIN(CarsBeginWithWhatIsInThem)
#include "tst_cars_begin_with_what_is_in_them.moc"
