// SPDX-License-Identifier: MIT
//
// What an order cost lands on its pieces and nowhere else. C9: a published question with its
// answer (20 X at 20 and 20 Y at 5, shipping 40, discount 80; all of it is 2,300 of local money: X
// is 92.00 each, Y 23.00). C10: worked out by hand with the largest remainder. The laws are drawn
// by RapidCheck, which prints its seed.

#include "model/buying/landed_cost.h"
#include "model/buying/totals.h"

#include <rapidcheck.h>

#include <QTest>

#include <numeric>

using namespace flarestock;

namespace {

using Micros = std::vector<std::int64_t>;

OrderLine lineOf(const char *part, const Decimal &quantity, const Decimal &priceEach)
{
    OrderLine line;
    line.part = part;
    line.quantity = quantity;
    line.priceEach = priceEach;
    return line;
}

Order orderOf(std::vector<OrderLine> lines)
{
    return {{},
            "2026-0001",
            "OXS",
            *Currency::parse("USD"),
            OrderState::Placed,
            std::move(lines),
            {},
            {},
            {},
            1,
            "2026-11-02",
            {},
            {},
            {}};
}

Micros landedOf(const Order &order)
{
    std::vector<Decimal> landed;
    for (const Amounts &line : totalsOf(order).lines)
        landed.push_back(line.landed(order.tax));
    return landedValues(landed, order.rate).value();
}

std::int64_t sumOf(const Micros &values)
{
    return std::accumulate(values.begin(), values.end(), std::int64_t{0});
}

} // namespace

class LandedCostAddsUp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void freightAndDiscountLandByValue();
    void freightIsSharedInCents();
    void onlyTaxThatIsNotRecoveredLands();
    void sharesAreThoseOfTheLargestRemainder();
    void whatCompletesALineTakesTheRest();
    void moreThanWasOrderedCarriesNothing();
    void severalReceiptsAddUpToTheOrder();
    void sharesSumToTheirTotal();
};

void LandedCostAddsUp::freightAndDiscountLandByValue()
{
    Order order = orderOf({lineOf("X", 20, 20), lineOf("Y", 20, 5)});
    order.freight = 40;
    order.discount = 80;
    order.rate = 5; // 460 of theirs are 2,300 of ours.
    const Micros values = landedOf(order);
    QCOMPARE(values, (Micros{1'840'000'000, 460'000'000}));
    QCOMPARE(valueComing({20, values[0]}, {}, 1), 92'000'000);
    QCOMPARE(valueComing({20, values[1]}, {}, 1), 23'000'000);
}

void LandedCostAddsUp::freightIsSharedInCents()
{
    // 25.00 over 12.50, 7.25, 8.99, 24.99, 3.33: floors 547, 317, 393, 1094, 145 cents, and four
    // cents to the largest remainders: lines 4, 5, 3, 1.
    Order order = orderOf({lineOf("A", 4, "3.125"_dec), lineOf("B", 1, "7.25"_dec),
                           lineOf("C", 2, "4.495"_dec), lineOf("D", 3, "8.33"_dec),
                           lineOf("E", 1, "3.33"_dec)});
    order.freight = 25;
    const Micros values = landedOf(order);
    QCOMPARE(values, (Micros{12'500'000 + 5'480'000, 7'250'000 + 3'170'000, 8'990'000 + 3'940'000,
                             24'990'000 + 10'950'000, 3'330'000 + 1'460'000}));
    QCOMPARE(valueComing({4, values[0]}, {}, 1), 4'495'000); // (12.50 + 5.48) / 4
}

void LandedCostAddsUp::onlyTaxThatIsNotRecoveredLands()
{
    Order order = orderOf({lineOf("A", 2, 50), lineOf("B", 1, 100)});
    order.tax.percent = 5;
    order.tax.recovered = true;
    QCOMPARE(landedOf(order), (Micros{100'000'000, 100'000'000}));
    order.tax.recovered = false;
    QCOMPARE(landedOf(order), (Micros{105'000'000, 105'000'000}));
}

void LandedCostAddsUp::sharesAreThoseOfTheLargestRemainder()
{
    // A published problem: 2.10 back on 1.99, 2.17, 0.82 is 0.84, 0.91, 0.35.
    const std::vector<Decimal> lines{"1.99"_dec, "2.17"_dec, "0.82"_dec};
    QCOMPARE(sharedOut(210, lines), (Micros{84, 91, 35}));
    QCOMPARE(sharedOut(-210, lines), (Micros{-84, -91, -35}));
    // A published question: 33.34 in four equal shares.
    QCOMPARE(sharedOut(3334, {1, 1, 1, 1}), (Micros{834, 834, 833, 833}));
    QCOMPARE(sharedOut(5, {0, 0}), (Micros{3, 2})); // Nothing to go by: alike.
}

void LandedCostAddsUp::whatCompletesALineTakesTheRest()
{
    // 10.00 for three: 3.333333, 3.333334 (of 6.666667 the first has had its share), the rest.
    const CameOfLine ordered{3, 10'000'000};
    QCOMPARE(valueComing(ordered, {}, 1), 3'333'333);
    QCOMPARE(valueComing(ordered, {1, 3'333'333}, 1), 3'333'334);
    QCOMPARE(valueComing(ordered, {2, 6'666'667}, 1), 3'333'333);
    QCOMPARE(valueComing(ordered, {}, 3), 10'000'000);
}

void LandedCostAddsUp::moreThanWasOrderedCarriesNothing()
{
    const CameOfLine ordered{3, 10'000'000};
    QCOMPARE(valueComing(ordered, {}, 5), 10'000'000);
    QCOMPARE(valueComing(ordered, {3, 10'000'000}, 2), 0);
    QVERIFY(!landedValues({Decimal(5), Decimal(-1)}, Decimal(1)));
}

void LandedCostAddsUp::severalReceiptsAddUpToTheOrder()
{
    constexpr const char *Law = "what is booked of an order is what it landed for";
    QVERIFY2(rc::check(
                 Law,
                 [] {
                     const auto count = *rc::gen::inRange(1, 6);
                     std::vector<OrderLine> lines;
                     for (int i = 0; i < count; ++i)
                         lines.push_back(lineOf(std::to_string(i).c_str(), *rc::gen::inRange(1, 40),
                                                Decimal::scaled(*rc::gen::inRange(0, 900'000), 4)));
                     Order order = orderOf(std::move(lines));
                     order.freight = Decimal::scaled(*rc::gen::inRange(0, 5000), 2);
                     order.tax.percent = *rc::gen::element(0, 5, 19);
                     order.tax.recovered = *rc::gen::arbitrary<bool>();
                     order.rate = Decimal::scaled(*rc::gen::inRange(1, 30'000), 4);
                     const Amounts all = totalsOf(order).all;
                     const auto total =
                         (all.landed(order.tax) * order.rate).rescaled(6, Rounding::HalfEven);
                     const Micros values = landedOf(order);
                     RC_ASSERT(Decimal::scaled(sumOf(values), 6) == total);
                     std::int64_t booked = 0;
                     for (std::size_t i = 0; i < values.size(); ++i) {
                         const auto ordered = order.lines[i].quantity.toInt64().value();
                         CameOfLine came;
                         while (came.quantity < ordered) {
                             const auto coming =
                                 *rc::gen::inRange<std::int64_t>(1, ordered - came.quantity + 1);
                             const auto value = valueComing({ordered, values[i]}, came, coming);
                             RC_ASSERT(value >= 0);
                             came.quantity += coming;
                             came.value += value;
                         }
                         RC_ASSERT(came.value == values[i]);
                         booked += came.value;
                     }
                     RC_ASSERT(Decimal::scaled(booked, 6) == total);
                 }),
             Law);
}

void LandedCostAddsUp::sharesSumToTheirTotal()
{
    constexpr const char *Law = "shares sum to their total, each within one of exact";
    QVERIFY2(rc::check(Law,
                       [] {
                           const auto total =
                               *rc::gen::inRange<std::int64_t>(-1'000'000'000, 1'000'000'000);
                           const auto drawn = *rc::gen::nonEmpty(
                               rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 5000)));
                           std::vector<Decimal> weights;
                           Decimal all;
                           for (const int weight : drawn) {
                               weights.emplace_back(weight);
                               all += Decimal(weight);
                           }
                           const Micros shares = sharedOut(total, weights);
                           RC_ASSERT(sumOf(shares) == total);
                           if (all.isZero())
                               return;
                           for (std::size_t i = 0; i < shares.size(); ++i) {
                               const Decimal off =
                                   Decimal(shares[i]) * all - Decimal(total) * weights[i];
                               RC_ASSERT(off.abs() < all);
                           }
                       }),
             Law);
}

QTEST_APPLESS_MAIN(LandedCostAddsUp)
#include "tst_landed_cost_adds_up.moc"
