// SPDX-License-Identifier: MIT
//
// What lies in the shop on the first day: read as it stands, and each mistake named by its place.

#include "model/exchange/catalogue_csv.h"
#include "model/exchange/shop_toml.h"

#include <QTest>

using namespace flarestock;

class OpeningStockTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsRows();
    void namesWhatIsWrong_data();
    void namesWhatIsWrong();
};

static Catalogue smallCatalogue()
{
    auto read = readCatalogue(
        {{"parts/a.csv",
          "part,kind,description,unit,ports,construction,dash,box\n"
          "H,hose,h,in,cut: HOSE PT -6,PT,-6,\nP,pump,p,,,,,2 x T\nT,tool,t,,,,,\n"}});
    return std::move(read.value());
}

static const std::vector<Place> Places = {{"C4", "bin C4", PlaceKind::Bin}};

void OpeningStockTest::readsRows()
{
    const std::string text = "part,place,quantity,value,lot,condition,missing\n"
                             "p,c4,2,25.50,,used and good,t\nH,C4,37.5,10.140625,H-1,,\n";
    const Catalogue catalogue = smallCatalogue();
    const auto stock = readOpeningStock(text, "stock.csv", catalogue, Places);
    QVERIFY2(stock.has_value(), stock ? "" : stock.error().text().c_str());
    QCOMPARE(stock->size(), std::size_t{2});
    const OpeningStock &pump = stock->front();
    QCOMPARE(pump.part, std::string("P"));
    QCOMPARE(pump.place, std::string("C4"));
    QCOMPARE(pump.condition, PieceCondition::UsedAndGood);
    QCOMPARE(pump.missing, std::vector<std::string>{"T"});
    QCOMPARE(stock->back().quantity, "37.5"_dec);
    QCOMPARE(stock->back().value, "10.140625"_dec);
    QCOMPARE(stock->back().lot, std::string("H-1"));
}

void OpeningStockTest::namesWhatIsWrong_data()
{
    QTest::addColumn<QString>("row");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *text, unsigned column, const char *words) {
        QTest::newRow(text) << QString::fromLatin1(text) << column << QString::fromLatin1(words);
    };
    row("X,C4,1,1,,,", 1, "\"X\" is no part");
    row(",C4,1,1,,,", 1, "\"part\" is empty");
    row("P,C5,1,1,,,", 3, "there is no place \"C5\". Perhaps \"C4\" is meant.");
    row("P,C4,,1,,,", 6, "\"quantity\" is empty");
    row("P,C4,0,1,,,", 6, "not more than 0");
    row("P,C4,-1,1,,,", 6, "not more than 0");
    row("P,C4,1.5,1,,,", 6, "1.5 each");
    row("P,C4,two,1,,,", 6, "\"two\" is no number");
    row("P,C4,99999999999999999999,1,,,", 6, "each");
    row("P,C4,1,-1,,,", 8, "below zero");
    row("P,C4,1,0.0000001,,,", 8, "more than six decimals");
    row("P,C4,1,99999999999999999999,,,", 8, "too large");
    row("P,C4,1,1,,newish,", 11, "newish");
    row("P,C4,1,1,,,H", 12, "\"H\" does not lie in the box of P");
    row("H,C4,12,1,,,", 11, "a piece of hose has no lot");
}

void OpeningStockTest::namesWhatIsWrong()
{
    QFETCH(QString, row);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const std::string text =
        "part,place,quantity,value,lot,condition,missing\n" + row.toStdString() + "\n";
    const Catalogue catalogue = smallCatalogue();
    const auto stock = readOpeningStock(text, "stock.csv", catalogue, Places);
    QVERIFY(!stock.has_value());
    QVERIFY2(stock.error().sentence().find(words.toStdString()) != std::string::npos,
             stock.error().text().c_str());
    QVERIFY2(stock.error().line == 2 && stock.error().column == column,
             stock.error().text().c_str());
}

QTEST_APPLESS_MAIN(OpeningStockTest)
#include "tst_opening_stock_reads_as_it_stands.moc"
