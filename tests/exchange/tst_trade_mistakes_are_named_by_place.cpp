// SPDX-License-Identifier: MIT
//
// Every wrong cell of what suppliers ask, of rates and of needs is named with its file, line and
// column. In the rows a $ stands where the problem has to point; it is no part of them.

#include "model/exchange/catalogue_csv.h"
#include "model/exchange/needs_csv.h"
#include "model/exchange/rates_csv.h"

#include <QTest>

using namespace flarestock;

class TradeMistakes : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void areNamedByPlace_data();
    void areNamedByPlace();
    void whatIsGoodReads();
};

namespace {

enum class Table : std::uint8_t { Suppliers, Offers, Rates, Needs };

struct Row {
    const char *name;
    Table table;
    const char *text; ///< One row, with its $.
    const char *words;
};

constexpr Row Rows[] = {
    {"no id", Table::Suppliers, "$,Quick,2,,,,,,,,", "supplier"},
    {"no name", Table::Suppliers, "R,$,2,,,,,,,,", "name"},
    {"a lead in words", Table::Suppliers, "R,Rapid,$soon,,,,,,,,", "is no number"},
    {"a lead of years", Table::Suppliers, "R,Rapid,$99999,,,,,,,,", ""},
    {"a currency that is none", Table::Suppliers, "R,Rapid,2,$EURO,,,,,,,", ""},
    {"freight without its goods", Table::Suppliers, "R,Rapid,2,,$12.00,,,,,,", "cannot be read"},
    {"freight that begins late", Table::Suppliers, "R,Rapid,2,,$10: 12.00,,,,,,", "begin at 0"},
    {"freight that falls back", Table::Suppliers, "R,Rapid,2,,0: 12.00; $0: 9,,,,,,",
     "do not rise"},
    {"freight below zero", Table::Suppliers, "R,Rapid,2,,0: 12.00; $50: -1,,,,,,",
     "cannot be read"},
    {"a minimum in words", Table::Suppliers, "R,Rapid,2,,,$much,,,,,", ""},
    {"a minimum below zero", Table::Suppliers, "R,Rapid,2,,,$-1,,,,,", "below zero"},
    {"a tax of more than all", Table::Suppliers, "R,Rapid,2,,,,$101,,,,",
     "a tax of 101 % cannot be"},
    {"a tax in words", Table::Suppliers, "R,Rapid,2,,,,$full,,,,", ""},
    {"a tax by nothing known", Table::Suppliers, "R,Rapid,2,,,,8,$line,,,", "line"},
    {"a rounding that is none", Table::Suppliers, "R,Rapid,2,,,,8,item,$up,,", "up"},
    {"recovered perhaps", Table::Suppliers, "R,Rapid,2,,,,8,item,half up,$perhaps,", "perhaps"},
    {"twice the same", Table::Suppliers, "$q,Quick too,2,,,,,,,,", "stands twice"},
    {"an offer of no part", Table::Offers, "$B,Q,Q-1,USD,1,1,1,1: 2,3", "no part"},
    {"an offer of nobody", Table::Offers, "A,$R,Q-1,USD,1,1,1,1: 2,3", "not known"},
    {"money that is none", Table::Offers, "A,Q,Q-1,$dollars,1,1,1,1: 2,3", ""},
    {"a pack of nothing", Table::Offers, "A,Q,Q-1,USD,$0,1,1,1: 2,3", "not more than 0"},
    {"a minimum of less", Table::Offers, "A,Q,Q-1,USD,1,$-1,1,1: 2,3", "not more than 0"},
    {"multiples of nothing", Table::Offers, "A,Q,Q-1,USD,1,1,$0,1: 2,3", ""},
    {"no price", Table::Offers, "A,Q,Q-1,USD,1,1,1,$,3", ""},
    {"a price in words", Table::Offers, "A,Q,Q-1,USD,1,1,1,1: 2; $ten: 1,3", "cannot be read"},
    {"prices in any order", Table::Offers, "A,Q,Q-1,USD,1,1,1,10: 2; $1: 3,3", "do not rise"},
    {"a price that begins late", Table::Offers, "A,Q,Q-1,USD,1,1,1,$5: 2,3", "no price for 1"},
    {"a lead of half a day", Table::Offers, "A,Q,Q-1,USD,1,1,1,1: 2,$0.5", "whole"},
    {"a rate of no currency", Table::Rates, "$,1.08,2026-11-02", "currency"},
    {"a rate of what is none", Table::Rates, "$EURO,1.08,2026-11-02", ""},
    {"a rate of the shop's own", Table::Rates, "$USD,1,2026-11-02", "the shop's own"},
    {"no rate", Table::Rates, "EUR,$,2026-11-02", "rate"},
    {"a rate of nothing", Table::Rates, "EUR,$0,2026-11-02", ""},
    {"a rate in words", Table::Rates, "EUR,$par,2026-11-02", ""},
    {"no day", Table::Rates, "EUR,1.08,$", "day"},
    {"a day that is none", Table::Rates, "EUR,1.08,$2026-02-30", "no day"},
    {"a rate twice", Table::Rates, "GBP,1.31,$2026-11-02", "twice"},
    {"a need of no part", Table::Needs, "$B,2,2026-12-01,coupe", "no part"},
    {"a need of nothing", Table::Needs, "A,$0,2026-12-01,coupe", ""},
    {"a need by no day", Table::Needs, "A,2,$soon,coupe", "no day"},
};

constexpr const char *SuppliersHead =
    "supplier,name,lead days,currency,freight,minimum order,tax percent,tax by,tax rounding,tax "
    "recovered,address\nQ,Quick,2,,,,,,,,\n";
constexpr const char *OffersHead =
    "part,supplier,supplier part,currency,pack,minimum,multiple,prices,lead days\n";
constexpr const char *RatesHead = "currency,rate,day\nGBP,1.30,2026-11-02\n";
constexpr const char *NeedsHead = "part,quantity,day,for\n";
constexpr const char *Parts = "part,kind,description\nA,tool,x\n";

Result<void> read(Table table, const std::string &row)
{
    const auto named = [](const auto &result) {
        return result ? Result<void>() : tl::unexpected(result.error());
    };
    TextFiles files = {{"parts/a.csv", Parts}, {"suppliers.csv", SuppliersHead}};
    switch (table) {
    case Table::Suppliers:
        files["suppliers.csv"] += row;
        return named(readCatalogue(files));
    case Table::Offers:
        files["offers.csv"] = OffersHead + row;
        return named(readCatalogue(files));
    case Table::Rates:
        return named(readRates(RatesHead + row, "rates.csv", *Currency::parse("USD")));
    case Table::Needs:
        break;
    }
    const auto catalogue = readCatalogue(files);
    return named(readNeeds(NeedsHead + row, "needs.csv", catalogue.value()));
}

} // namespace

void TradeMistakes::areNamedByPlace_data()
{
    QTest::addColumn<int>("row");
    int at = 0;
    for (const Row &row : Rows)
        QTest::newRow(row.name) << at++;
}

void TradeMistakes::areNamedByPlace()
{
    QFETCH(int, row);
    const Row &wrong = Rows[row];
    std::string text = wrong.text;
    const std::size_t spot = text.find('$');
    text.erase(spot, 1);
    const auto done = read(wrong.table, text + "\n");
    QVERIFY2(!done.has_value(), "it reads");
    const Problem &said = done.error();
    const bool isSecond = wrong.table == Table::Suppliers || wrong.table == Table::Rates;
    const char *const files[] = {"suppliers.csv", "offers.csv", "rates.csv", "needs.csv"};
    QCOMPARE(said.thing, std::string(files[static_cast<int>(wrong.table)]));
    QCOMPARE(said.line, isSecond ? 3U : 2U);
    QVERIFY2(said.column == spot + 1, said.text().c_str());
    QVERIFY2(said.sentence().find(wrong.words) != std::string::npos, said.text().c_str());
    QVERIFY(!said.remedy.empty() && !said.excerpt.empty());
}

void TradeMistakes::whatIsGoodReads()
{
    QVERIFY(
        read(Table::Suppliers, "R,Rapid,2,EUR,0: 12.00; 50: 0,10,8,item,half even,no,Street\n"));
    QVERIFY(read(Table::Offers, "A,Q,Q-1,USD,5,10,2,10: 2; 20: 1.5,3\n"));
    QVERIFY(read(Table::Rates, "EUR,1.08,2026-11-02\n"));
    QVERIFY(read(Table::Needs, "a,2,2026-12-01,coupe\n"));
}

QTEST_APPLESS_MAIN(TradeMistakes)
#include "tst_trade_mistakes_are_named_by_place.moc"
