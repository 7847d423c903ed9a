// SPDX-License-Identifier: MIT
//
// Every mistake in a catalogue is named with its file, line and column. The expected places are
// counted by hand in the texts below.

#include "model/exchange/catalogue_csv.h"

#include <QTest>

using namespace flarestock;

class BrokenCatalogueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void isNamedWithItsPlace_data();
    void isNamedWithItsPlace();
    void listsAllProblemsButNoMoreThanAHundred();
    void doesNotBlameRowsThatNameABrokenOne();
    void readsWhatIsGood();
};

struct Sheets {
    const char *parts;
    const char *offers = "";
    const char *suppliers = "supplier,name,lead days\nQ,Quick,2\n";
};
struct Expected {
    const char *file;
    unsigned line;
    unsigned column;
    const char *words;
};
Q_DECLARE_METATYPE(Sheets)
Q_DECLARE_METATYPE(Expected)

static TextFiles filesOf(const Sheets &sheets)
{
    TextFiles files = {{"parts/a.csv", sheets.parts}, {"suppliers.csv", sheets.suppliers}};
    if (*sheets.offers)
        files["offers.csv"] = sheets.offers;
    return files;
}

void BrokenCatalogueTest::isNamedWithItsPlace_data()
{
    QTest::addColumn<Sheets>("sheets");
    QTest::addColumn<Expected>("expected");
    const auto row = [](const char *name, const Sheets &sheets, const Expected &expected) {
        QTest::newRow(name) << sheets << expected;
    };
    const char *const a = "parts/a.csv";
    row("a port without gender",
        {"part,kind,description,ports\nA,adapter,x,a: AN -6 male; b: ORB -6\n"},
        {a, 2, 31, "gender"});
    row("a port without a name", {"part,kind,description,ports\nA,adapter,x,AN -6 male\n"},
        {a, 2, 13, "has no name"});
    row("a port name twice",
        {"part,kind,description,ports\nA,adapter,x,a: AN -6 male; A: ORB -6 male\n"},
        {a, 2, 28, "stands twice"});
    row("a role that is none", {"part,kind,description,ports\nA,adapter,x,a: AN -6 male [inn]\n"},
        {a, 2, 28, "no role of a port"});
    row("a role without its end", {"part,kind,description,ports\nA,adapter,x,a: AN -6 male [in\n"},
        {a, 2, 27, "does not end with ]"});
    row("an unknown column", {"part,kind,description,micorn\nA,filter,x,10\n"},
        {a, 1, 23, "there is no column \"micorn\" here. Perhaps \"micron\" is meant."});
    row("a column without heading", {"part,kind,description,\nA,filter,x,\n"},
        {a, 1, 23, "column 4 has no heading"});
    row("a missing column", {"part,description\nA,x\n"}, {a, 1, 1, "\"kind\" is missing"});
    row("a kind that is none", {"part,kind,description\nA,fitler,x\n"},
        {a, 2, 3, "\"fitler\" is no kind of part. Perhaps \"filter\" is meant."});
    row("no part number", {"part,kind,description\n,filter,x\n"}, {a, 2, 1, "\"part\" is empty"});
    row("no description", {"part,kind,description\nA,tool,\n"},
        {a, 2, 8, "\"description\" is empty"});
    row("a part twice", {"part,kind,description\nA,tool,x\na,tool,y\n"},
        {a, 3, 1, "stands already in parts/a.csv, line 2"});
    row("a number with a semicolon", {"part,kind,description\nA;B,tool,x\n"},
        {a, 2, 2, "semicolon"});
    row("a unit that is none", {"part,kind,description,unit\nA,tool,x,yard\n"},
        {a, 2, 10, "\"yard\""});
    row("a hose by the piece",
        {"part,kind,description,construction,dash,ports\nA,hose,x,PT,-6,cut: HOSE PT -6\n"},
        {a, 2, 1, "counted in a length"});
    row("a hose whose port is another",
        {"part,kind,description,unit,construction,dash,ports\nA,hose,x,in,PT,-6,cut: HOSE PT -8\n"},
        {a, 2, 19, "Write cut: HOSE PT -6."});
    row("a dash that is none",
        {"part,kind,description,unit,construction,dash\nA,hose,x,in,PT,3/8\n"},
        {a, 2, 16, "no dash size"});
    row("a foreign cell", {"part,kind,description,micron\nA,pump,x,10\n"},
        {a, 2, 10, "the kind pump has no \"micron\""});
    row("a rating in words", {"part,kind,description,micron\nA,filter,x,fine\n"},
        {a, 2, 12, "\"fine\" is no number"});
    row("a rating of nothing", {"part,kind,description,micron\nA,filter,x,0\n"},
        {a, 2, 12, "not more than 0"});
    row("a beta of a nominal rating",
        {"part,kind,description,micron,basis,beta\nA,filter,x,10,nominal,75\n"},
        {a, 2, 23, "a beta belongs to an absolute rating"});
    row("a basis that is none", {"part,kind,description,micron,basis\nA,filter,x,10,absolut\n"},
        {a, 2, 15, "Perhaps \"absolute\" is meant."});
    row("an element without rating", {"part,kind,description,micron\nA,element,x,\n"},
        {a, 2, 13, "\"micron\" is empty"});
    row("a bare pressure", {"part,kind,description,rated\nA,tool,x,500\n"}, {a, 2, 10, "rated"});
    row("a pressure in litres", {"part,kind,description,rated\nA,tool,x,500 L\n"}, {a, 2, 10, ""});
    row("temperatures exchanged", {"part,kind,description,lowest,highest\nA,tool,x,150 C,-40 C\n"},
        {a, 2, 10, "not below the highest"});
    row("a fluid that is none", {"part,kind,description,suits\nA,tool,x,gasoline; gsoline\n"},
        {a, 2, 20, ""});
    row("a seal that is none", {"part,kind,description,seal\nA,tee,x,FMK\n"},
        {a, 2, 9, "Perhaps \"FKM\" is meant."});
    row("an angle that hose ends do not have",
        {"part,kind,description,fits,dash,angle\nA,hose end,x,PT,-6,91\n"}, {a, 2, 20, "no angle"});
    row("a gauge that no wire has", {"part,kind,description,unit,gauge\nA,wire,x,in,thick\n"},
        {a, 2, 13, "\"thick\" is no gauge of a wire"});
    row("a curve without voltage", {"part,kind,description,curve\nA,pump,x,3 bar = 255 L/h\n"},
        {a, 2, 10, "Write for example 3 bar @ 13.5 V = 255 L/h."});
    row("a curve in pounds",
        {"part,kind,description,curve\nA,pump,x,3 bar @ 12 V = 2 L/h; 4 bar @ 12 V = 9 lb\n"},
        {a, 2, 47, "\"lb\""});
    row("yes or no in other words", {"part,kind,description,serviceable\nA,pump,x,maybe\n"},
        {a, 2, 10, "\"maybe\""});
    row("a range upside down", {"part,kind,description,low,high\nA,regulator,x,5 bar,3 bar\n"},
        {a, 2, 15, "above the high one"});
    row("a loss wide open at no flow",
        {"part,kind,description,bypass,wide open\nA,regulator,x,yes,8 kPa\n"},
        {a, 2, 19, "Give its flow and yes under bypass"});
    row("a loss wide open of a dead-head regulator",
        {"part,kind,description,bypass,flow,wide open\nA,regulator,x,no,9 L/h,8 kPa\n"},
        {a, 2, 24, "that of a bypass regulator"});
    row("a box with a stranger",
        {"part,kind,description,box\nA,pump,x,1 x A2; 2 x BR-1\nA2,tool,y,\n"},
        {a, 2, 22, "\"BR-1\" is no part"});
    row("a box with itself", {"part,kind,description,box\nA,pump,x,2 x a\n"},
        {a, 2, 14, "names itself"});
    row("a list with a hole", {"part,kind,description,box\nA,pump,x,;B\nB,tool,y,\n"},
        {a, 2, 10, "nothing stands before this semicolon"});
    row("an element that is a tool", {"part,kind,description,element\nA,filter,x,B\nB,tool,y,\n"},
        {a, 2, 12, "\"B\" is a tool, not an element"});
    row("a cell of two lines before",
        {"part,kind,description,rated\nA,tool,\"x\ny\",1 bar\nB,tool,z,1\n"}, {a, 4, 10, "rated"});
    row("a CSV that is none", {"part,kind,description\nA,tool\n"}, {a, 2, 1, "2 fields"});
    const char *const tool = "part,kind,description\nA,tool,x\n";
    const char *const o = "offers.csv";
    row("an offer of a stranger", {tool, "part,supplier,currency,prices\nB,Q,USD,1: 2\n"},
        {o, 2, 1, "\"B\" is no part"});
    row("an offer by a stranger", {tool, "part,supplier,currency,prices\nA,R,USD,1: 2\n"},
        {o, 2, 3, "the supplier \"R\" is not known"});
    row("a currency that is none", {tool, "part,supplier,currency,prices\nA,Q,US,1: 2\n"},
        {o, 2, 5, ""});
    row("prices that do not rise", {tool, "part,supplier,currency,prices\nA,Q,USD,1: 2; 1: 1\n"},
        {o, 2, 15, "do not rise"});
    row("a price in words", {tool, "part,supplier,currency,prices\nA,Q,USD,1: 2; ten: 1\n"},
        {o, 2, 15, "cannot be read"});
    row("a price that begins too late", {tool, "part,supplier,currency,prices\nA,Q,USD,5: 2\n"},
        {o, 2, 9, "there is no price for 1"});
    row("a pack of none", {tool, "part,supplier,currency,prices,pack\nA,Q,USD,1: 2,0\n"},
        {o, 2, 14, "not more than 0"});
    row("an offer twice", {tool, "part,supplier,currency,prices\nA,Q,USD,1: 2\na,q,USD,1: 3\n"},
        {o, 3, 1, "stands twice"});
    row("a supplier twice", {tool, "", "supplier,name\nQ,x\nq,y\n"},
        {"suppliers.csv", 3, 1, "stands twice"});
    row("a lead of half a day", {tool, "", "supplier,name,lead days\nQ,x,0.5\n"},
        {"suppliers.csv", 2, 5, "not a whole number"});
}

void BrokenCatalogueTest::isNamedWithItsPlace()
{
    QFETCH(Sheets, sheets);
    QFETCH(Expected, expected);
    const TextFiles files = filesOf(sheets);
    const auto read = readCatalogue(files);
    QVERIFY(!read.has_value());
    const Problem &said = read.error();
    QVERIFY2(said.sentence().find(expected.words) != std::string::npos, said.text().c_str());
    QVERIFY2(said.line == expected.line && said.column == expected.column, said.text().c_str());
    QCOMPARE(said.thing, std::string(expected.file));
    QVERIFY(!said.excerpt.empty());
    QVERIFY(!said.remedy.empty());
    QCOMPARE(catalogueProblems(files).front().sentence(), said.sentence());
}

void BrokenCatalogueTest::listsAllProblemsButNoMoreThanAHundred()
{
    std::string text = "part,kind,description,rated\n";
    for (int i = 0; i < 40; ++i)
        text += "A" + std::to_string(i) + ",tool,x,much\n";
    QCOMPARE(catalogueProblems({{"parts/a.csv", text}}).size(), std::size_t{40});
    for (int i = 40; i < 400; ++i)
        text += "A" + std::to_string(i) + ",tool,x,much\n";
    QCOMPARE(catalogueProblems({{"parts/a.csv", text}}).size(), std::size_t{100});
}

void BrokenCatalogueTest::doesNotBlameRowsThatNameABrokenOne()
{
    const auto problems = catalogueProblems(
        {{"parts/a.csv", "part,kind,description,box,rated\nA,tool,x,B,\nB,tool,y,,much\n"}});
    QCOMPARE(problems.size(), std::size_t{1});
    QCOMPARE(problems[0].line, 3U);
    const auto broken =
        catalogueProblems({{"parts/a.csv", "part,kind,description,box\nA,tool,x,B\n"},
                           {"parts/b.csv", "part\n\"B\n"}});
    QCOMPARE(broken.size(), std::size_t{1});
    QCOMPARE(broken[0].thing, std::string("parts/b.csv"));
}

void BrokenCatalogueTest::readsWhatIsGood()
{
    const auto read = readCatalogue(filesOf(
        {"part,kind,description,unit,ports,construction,dash,bore,box,curve,lowest,fits,allowance\n"
         "H,hose,h,in,cut: HOSE pt -6,pt,-6,8.71 mm,,,-40 C,,\n"
         "E,hose end,e,,hose: HOSE PT -6; end: AN -6 female swivel,,6,,,,,pt; X2,0.75 in\n"
         "P,pump,p,,in: ORB -8 female [in]; out: ORB -6 female [out],,,,2 x T; 3x,"
         "3 bar @ 13.5 V = 255 L/h; 3 bar @ 12 V = 215 L/h,,,\n"
         "T,tool,t,,,,,,,,,,\n3x,tool,t,,,,,,,,,,\n",
         "part,supplier,currency,prices,pack,minimum,lead days\nT,q,USD,1: 2.50; 10: 2,5,,\n"}));
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    const Part &hose = *read->find("H");
    QCOMPARE(hose.as<HoseFacts>()->construction, std::string("PT"));
    QCOMPARE(hose.as<HoseFacts>()->dash, 6);
    QVERIFY(std::abs(*hose.as<HoseFacts>()->boreMm - 8.71) < 1e-9);
    QVERIFY(std::abs(*hose.ratings.lowC + 40) < 1e-9);
    QCOMPARE(read->find("E")->as<HoseEndFacts>()->constructions,
             (std::vector<std::string>{"PT", "X2"}));
    QCOMPARE(*read->find("E")->as<HoseEndFacts>()->allowanceMm, "19.05"_dec); // 0.75 in × 25.4
    const Part &pump = *read->find("P");
    QCOMPARE(pump.ports[1].role, PortRole::Out);
    QCOMPARE(pump.as<PumpFacts>()->curve[0].volts, 12.0);
    QVERIFY(std::abs(pump.as<PumpFacts>()->curve[1].flowLh - 255) < 1e-9);
    QCOMPARE(pump.box[0].count, Decimal(2));
    QCOMPARE(pump.box[1].part, std::string("3x"));
    QVERIFY(!read->find("T")->consumed);
    const Offer &offer = read->offers(*read->find("T"))[0];
    QCOMPARE(offer.leadDays, 2);
    QCOMPARE(offer.pack, Decimal(5));
    QCOMPARE(offer.breaks[1].priceEach, Decimal(2));
}

QTEST_APPLESS_MAIN(BrokenCatalogueTest)
#include "tst_catalogue_mistakes_are_named_by_place.moc"
