// SPDX-License-Identifier: MIT
//
// Totals of an order. Where the figures are from stands beside each; the laws hold over random
// orders (RapidCheck prints its seed; another is given by RC_PARAMS="seed=…").

#include "model/buying/totals.h"
#include "tests/buying/order_for_tests.h"

#include <rapidcheck.h>

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

using Texts = std::vector<std::string>;

Texts each(const OrderTotals &totals, Decimal Amounts::*amount)
{
    Texts texts;
    for (const Amounts &line : totals.lines)
        texts.push_back((line.*amount).text());
    return texts;
}

QString said(const Decimal &amount)
{
    return QString::fromStdString(amount.text());
}

rc::Gen<Decimal> anyCents(std::int64_t most)
{
    return rc::gen::map(rc::gen::inRange<std::int64_t>(0, most),
                        [](std::int64_t cents) { return Decimal::scaled(cents, 2); });
}

Order anyOrder()
{
    Order order = orderOf({});
    const auto count = *rc::gen::inRange(1, 9);
    for (int at = 0; at < count; ++at) {
        OrderLine line = lineOf("P-" + std::to_string(at), "0");
        line.quantity = Decimal::scaled(*rc::gen::inRange<std::int64_t>(1, 9'000), 1);
        line.priceEach = Decimal::scaled(*rc::gen::inRange<std::int64_t>(0, 900'000), 4);
        order.lines.push_back(line);
    }
    order.freight = *anyCents(20'000);
    order.discount = *anyCents(10'000);
    if (order.discount > order.goods())
        order.discount = order.goods();
    order.tax.percent = Decimal::scaled(*rc::gen::inRange<std::int64_t>(0, 30'000), 3);
    order.tax.by = *rc::gen::element(TaxRule::By::Item, TaxRule::By::Document);
    order.tax.rounding = *rc::gen::element(Rounding::HalfUp, Rounding::HalfEven);
    return order;
}

} // namespace

class OrderAddsUp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void taxIsPerItemOrPerDocument();
    void aHalfCentGoesAsTheLawSays();
    void aDiscountIsSharedAsAPublishedRefund();
    void freightIsSharedByLargestRemainder();
    void aLineIsRoundedOnceHalfEven();
    void theCurrencySaysItsDigits();
    void nothingWorthIsSharedEqually();
    void taxThatComesBackCostsNothing();
    void everySumIsASumOfWhatIsPrinted();
};

void OrderAddsUp::taxIsPerItemOrPerDocument()
{
    // Streamlined Sales and Use Tax Agreement, section 324: the seller may choose per item or per
    // invoice, and rounds to the cent by the third decimal. Four lines of 1.07 at 5 %: 0.0535 each
    // is 0.05, so 0.20; 4.28 x 0.05 = 0.214 is 0.21.
    Order order = orderOf({"1.07", "1.07", "1.07", "1.07"});
    order.tax.percent = 5;
    order.tax.by = TaxRule::By::Item;
    QCOMPARE(said(totalsOf(order).all.tax), QStringLiteral("0.20"));
    QCOMPARE(said(totalsOf(order).all.total()), QStringLiteral("4.48"));
    order.tax.by = TaxRule::By::Document;
    QCOMPARE(said(totalsOf(order).all.tax), QStringLiteral("0.21"));
    QCOMPARE(each(totalsOf(order), &Amounts::tax), Texts({"0.06", "0.05", "0.05", "0.05"}));
}

void OrderAddsUp::aHalfCentGoesAsTheLawSays()
{
    // The same agreement: up where the third decimal is greater than four. 4.10 at 5 % = 0.205.
    Order order = orderOf({"4.10"});
    order.tax.percent = 5;
    for (const auto by : {TaxRule::By::Item, TaxRule::By::Document}) {
        order.tax.by = by;
        order.tax.rounding = Rounding::HalfUp;
        QCOMPARE(said(totalsOf(order).all.tax), QStringLiteral("0.21"));
        order.tax.rounding = Rounding::HalfEven;
        QCOMPARE(said(totalsOf(order).all.tax), QStringLiteral("0.20"));
    }
}

void OrderAddsUp::aDiscountIsSharedAsAPublishedRefund()
{
    // A published problem: 2.10 off an invoice of 1.99, 2.17 and 0.82; rounding each gives 2.11.
    Order order = orderOf({"1.99", "2.17", "0.82"});
    order.discount = dec("2.10");
    QCOMPARE(each(totalsOf(order), &Amounts::discount), Texts({"0.84", "0.91", "0.35"}));
    QCOMPARE(said(totalsOf(order).all.total()), QStringLiteral("2.88"));
}

void OrderAddsUp::freightIsSharedByLargestRemainder()
{
    // Worked by hand: floors 547, 317, 393, 1094, 145 of 2500; four cents left for the remainders
    // .900 .899 .884 .669. Rounding each half even would give 25.01.
    Order order = orderOf({"12.50", "7.25", "8.99", "24.99", "3.33"});
    order.freight = dec("25.00");
    QCOMPARE(each(totalsOf(order), &Amounts::freight),
             Texts({"5.48", "3.17", "3.94", "10.95", "1.46"}));
    QCOMPARE(said(totalsOf(order).all.total()), QStringLiteral("82.06"));
}

void OrderAddsUp::aLineIsRoundedOnceHalfEven()
{
    // O-rings, 10 for 4.75: 7 x 0.475 = 3.325 and 9 x 0.475 = 4.275, to the even cent (IEEE 754's
    // default; common practice for goods).
    Order order = orderOf({});
    order.lines = {lineOf("R-7", "0.475", "7"), lineOf("R-9", "0.475", "9")};
    QCOMPARE(each(totalsOf(order), &Amounts::goods), Texts({"3.32", "4.28"}));
    QCOMPARE(said(order.goods()), QStringLiteral("7.60"));
}

void OrderAddsUp::theCurrencySaysItsDigits()
{
    // ISO 4217: the yen has none, the Bahraini dinar three.
    Order yen = orderOf({"1234.5"}, "JPY");
    yen.tax.percent = 10;
    QCOMPARE(said(totalsOf(yen).all.goods), QStringLiteral("1234"));
    QCOMPARE(said(totalsOf(yen).all.tax), QStringLiteral("123"));
    QCOMPARE(said(totalsOf(orderOf({"1.2345"}, "BHD")).all.goods), QStringLiteral("1.234"));
}

void OrderAddsUp::nothingWorthIsSharedEqually()
{
    // A published question: 33.34 in four equal shares.
    Order order = orderOf({"0", "0", "0", "0"});
    order.freight = dec("33.34");
    QCOMPARE(each(totalsOf(order), &Amounts::freight), Texts({"8.34", "8.34", "8.33", "8.33"}));
}

void OrderAddsUp::taxThatComesBackCostsNothing()
{
    // IAS 2: taxes that the buyer gets back are no cost of purchase.
    Order order = orderOf({"100.00"});
    order.freight = 10;
    order.tax.percent = 20;
    order.tax.recovered = true;
    QCOMPARE(said(totalsOf(order).all.landed(order.tax)), QStringLiteral("110.00"));
    order.tax.recovered = false;
    QCOMPARE(said(totalsOf(order).all.landed(order.tax)), QStringLiteral("132.00"));
}

void OrderAddsUp::everySumIsASumOfWhatIsPrinted()
{
    QVERIFY(rc::check("an order adds up", [] {
        const Order order = anyOrder();
        const OrderTotals totals = totalsOf(order);
        Decimal sum;
        for (const Amounts &line : totals.lines) {
            sum += line.total();
            for (const Decimal *amount : {&line.goods, &line.discount, &line.freight, &line.tax}) {
                RC_ASSERT(amount->sign() >= 0);
                RC_ASSERT(amount->scale() == 2);
            }
            RC_ASSERT(line.discount <= line.goods);
        }
        RC_ASSERT(sum == totals.all.total());
        RC_ASSERT(totals.all.discount == order.discount);
        RC_ASSERT(totals.all.freight == order.freight);
        RC_ASSERT(totals.all.goods == order.goods());
        const Decimal exact = (totals.all.goods - order.discount + order.freight) *
                              order.tax.percent * Decimal::scaled(1, 2);
        const Decimal off = (totals.all.tax - exact).abs();
        const auto roundings = order.tax.by == TaxRule::By::Item ? order.lines.size() : 1;
        RC_ASSERT(off <= Decimal::scaled(5, 3) * Decimal(roundings));
    }));
}

QTEST_GUILESS_MAIN(OrderAddsUp)
#include "tst_order_adds_up_on_paper.moc"
