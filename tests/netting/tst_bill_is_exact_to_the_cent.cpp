// SPDX-License-Identifier: MIT
//
// A bill priced by hand. Rounding half to even is the default of IEEE 754 (from memory) and of
// Python's decimal module (its documentation: ROUND_HALF_EVEN in the default context).

#include "tests/netting/small_shop.h"

#include <QTest>

using namespace flarestock;

class BillIsExactToTheCent : public QObject {
    Q_OBJECT

private:
    static std::string costOf(const PricedBill &bill, std::size_t line)
    {
        return bill.lines[line].cost ? bill.lines[line].cost->amount.text() : "unpriced";
    }
    static SmallShop shop();

private Q_SLOTS:
    void pricesABillAsDoneByHand();
    void roundsAnExactHalfToTheEvenCent();
    void saysTheUnitCostWithFourDecimalsOrAsManyAsItHas();
    void leavesOtherCurrenciesAndMissingPricesOut();
    void needsNoOfferForAToolThatIsOnHand();
};

SmallShop BillIsExactToTheCent::shop()
{
    SmallShop shop;
    for (const char *number : {"AD-88", "RING", "HE-8", "NOPRICE", "ABROAD"})
        shop.part(number);
    shop.part("HOSE-8", Unit::Inch, Kind::Hose);
    shop.part("TL-1", Unit::Each, Kind::Tool);
    shop.offer("AD-88", "12.50", "11.00");
    shop.offer("RING", "0.475");
    shop.offer("HE-8", "38.40");
    shop.offer("ABROAD", "9.00", "", "EUR");
    return shop;
}

void BillIsExactToTheCent::pricesABillAsDoneByHand()
{
    SmallShop small = shop();
    small.stock("AD-88", "3", "1", "36.00"); // carried at 12.00; two are promised elsewhere
    small.stock("HE-8", "5", "5", "180.05"); // carried at 36.01
    small.stock("HOSE-8", "240", "240", "64.90");
    small.piece("HOSE-8", "240");
    const Catalogue catalogue = small.catalogue();
    Expansion build;
    build.lines = {needOf(catalogue, "AD-88", "12"), needOf(catalogue, "HE-8", "4"),
                   needOf(catalogue, "RING", "7"),
                   needOf(catalogue, "HOSE-8", "37.5", {"22.5", "15"})};
    const PricedBill bill = price(build, catalogue, small.shelf, *Currency::parse("USD"));

    // AD-88: 1 free × 36.00/3 + 11 short × 11.00 (its price from 10) = 12.00 + 121.00
    QCOMPARE(costOf(bill, 0), std::string("133.00"));
    QCOMPARE(bill.lines[0].free.text(), std::string("1"));
    QCOMPARE(bill.lines[0].shortBy.text(), std::string("11"));
    // HE-8: 4 × 180.05/5 = 144.04
    QCOMPARE(costOf(bill, 1), std::string("144.04"));
    // RING: 7 × 0.475 = 3.325, half to even 3.32
    QCOMPARE(costOf(bill, 2), std::string("3.32"));
    // HOSE-8: 37.5 × 64.90/240 = 649/64 = 10.140625
    QCOMPARE(costOf(bill, 3), std::string("10.14"));
    // 133.00 + 144.04 + 3.32 + 10.14
    QCOMPARE(bill.total.text(), std::string("290.50 USD"));
    QVERIFY(!bill.complete);
    QVERIFY(bill.unpriced.empty());
}

void BillIsExactToTheCent::roundsAnExactHalfToTheEvenCent()
{
    SmallShop small;
    small.part("RING");
    // 1 to 4 of them at 0.125: 0.125, 0.250, 0.375, 0.500; Python: Decimal('0.125').quantize(
    // Decimal('0.01')) is 0.12, '0.375' gives 0.38.
    small.offer("RING", "0.125");
    const Catalogue catalogue = small.catalogue();
    const std::vector<std::string> expected = {"0.12", "0.25", "0.38", "0.50"};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        Expansion build;
        build.lines = {needOf(catalogue, "RING", std::to_string(i + 1))};
        QCOMPARE(costOf(price(build, catalogue, {}, *Currency::parse("USD")), 0), expected[i]);
    }
}

void BillIsExactToTheCent::saysTheUnitCostWithFourDecimalsOrAsManyAsItHas()
{
    PricedLine line;
    QCOMPARE(line.unitCostText(), std::string());
    line.unitCost = Rational(Decimal::scaled(1234, 2));
    QCOMPARE(line.unitCostText(), std::string("12.3400"));
    line.unitCost = Rational(Decimal::scaled(57375, 5));
    QCOMPARE(line.unitCostText(), std::string("0.57375"));
    line.unitCost = Rational(Decimal(649), Decimal(2400)); // 0.27041666…, a hose by the inch
    QCOMPARE(line.unitCostText(), std::string("0.2704166667"));
    line.unitCost = Rational(Decimal(5), Decimal(1));
    QCOMPARE(line.unitCostText(), std::string("5.0000"));
}

void BillIsExactToTheCent::leavesOtherCurrenciesAndMissingPricesOut()
{
    const SmallShop small = shop();
    const Catalogue catalogue = small.catalogue();
    Expansion build;
    build.lines = {needOf(catalogue, "NOPRICE", "1"), needOf(catalogue, "ABROAD", "1"),
                   needOf(catalogue, "HE-8", "1")};
    const PricedBill bill = price(build, catalogue, {}, *Currency::parse("USD"));
    QCOMPARE(bill.unpriced, (std::vector<std::string>{"NOPRICE", "ABROAD"}));
    QVERIFY(!bill.lines[0].otherCurrency);
    QVERIFY(bill.lines[1].otherCurrency);
    QVERIFY(!bill.lines[1].cost);
    QCOMPARE(bill.total.text(), std::string("38.40 USD"));
}

void BillIsExactToTheCent::needsNoOfferForAToolThatIsOnHand()
{
    SmallShop small = shop();
    small.stock("TL-1", "1", "0", "55.00"); // on hand, though promised to another build
    const Catalogue catalogue = small.catalogue();
    Expansion build;
    build.lines = {needOf(catalogue, "TL-1", "1")};
    const PricedBill bill = price(build, catalogue, small.shelf, *Currency::parse("USD"));
    QVERIFY(bill.complete);
    QVERIFY(bill.unpriced.empty());
    QCOMPARE(bill.lines[0].free.text(), std::string("1"));
}

QTEST_APPLESS_MAIN(BillIsExactToTheCent)
#include "tst_bill_is_exact_to_the_cent.moc"
