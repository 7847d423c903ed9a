// SPDX-License-Identifier: MIT
//
// What an issue costs where the shop has chosen first in, first out.
//
// Source of the first example: OpenStax, Principles of Accounting, Volume 1: Financial Accounting,
// chapter 10.3 (perpetual method): figures only. The others have the data of the same chapter's
// exercises and problems and computed answers.

#include "tests/journal/few_places.h"

#include <QTest>

#include <deque>
#include <random>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr std::int64_t Dollar = 1'000'000;

/// One receipt at a price each (whole dollars), or one issue.
struct Step {
    std::int64_t quantity;
    std::int64_t priceEach; ///< 0: an issue.
};
using Steps = std::vector<Step>;

Movement movementOf(const Step &step, std::uint32_t number)
{
    return step.priceEach == 0 ? moved(number, step.quantity, "A1", "car-1")
                               : moved(number, step.quantity, "supplier", "A1",
                                       step.quantity * step.priceEach * Dollar);
}

Ledger firstInFirstOut()
{
    return Ledger(fewPlaces(), Costing::FirstInFirstOut);
}

} // namespace

Q_DECLARE_METATYPE(Steps)

class CostIsFirstInFirstOut : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void inWorkedExamples_data();
    void inWorkedExamples();
    void alongEveryPlaceOfTheShop();
    void andWhatIsTakenBackComesBackAsItWas();
    void andAMovementThatSaysAnotherValueIsRefused();
    void asAQueueWouldHaveIt();
};

void CostIsFirstInFirstOut::inWorkedExamples_data()
{
    QTest::addColumn<Steps>("steps");
    QTest::addColumn<qint64>("issued");
    QTest::addColumn<qint64>("left");
    // Issues 2,520 and 30 @ 21 + 150 @ 27 = 4,680; left 75 @ 27 + 210 @ 33.
    QTest::newRow("published") << Steps{{150, 21}, {120, 0}, {225, 27}, {180, 0}, {210, 33}}
                               << 7'200LL << 8'955LL;
    QTest::newRow("exercise A") << Steps{{800, 50}, {600, 52}, {400, 0}, {350, 0}} << 37'500LL
                                << 33'700LL;
    QTest::newRow("exercise B") << Steps{{100, 66}, {80, 75}, {50, 0}, {25, 0}} << 4'950LL
                                << 7'650LL;
    QTest::newRow("problem") << Steps{{165, 21}, {120, 0}, {225, 27}, {180, 0}, {210, 33}}
                             << 7'110LL << 9'360LL;
    QTest::newRow("two receipts") << Steps{{110, 87}, {140, 89}, {95, 0}} << 8'265LL << 13'765LL;
}

void CostIsFirstInFirstOut::inWorkedExamples()
{
    QFETCH(Steps, steps);
    QFETCH(qint64, issued);
    QFETCH(qint64, left);
    Ledger ledger = firstInFirstOut();
    std::uint32_t number = 0;
    std::int64_t cost = 0;
    for (const Step &step : steps) {
        Movement movement = movementOf(step, ++number);
        QVERIFY(!carriedOut(ledger, movement));
        cost += step.priceEach == 0 ? movement.value : 0;
    }
    QCOMPARE(cost, issued * Dollar);
    QCOMPARE(ledger.balance(adaptersAt("A1")).value, left * Dollar);
}

void CostIsFirstInFirstOut::alongEveryPlaceOfTheShop()
{
    // What came first stays what came first, whatever bin or drawer it went through.
    Ledger ledger = firstInFirstOut();
    std::uint32_t number = 0;
    for (Movement movement :
         {moved(1, 2, "supplier", "A1", 20 * Dollar),
          moved(2, 2, "supplier", "trailer-2", 60 * Dollar), moved(3, 2, "A1", "trailer-2")}) {
        number = 3;
        QVERIFY(!carriedOut(ledger, movement));
    }
    Movement issue = moved(++number, 3, "trailer-2", "car-1");
    QVERIFY(!carriedOut(ledger, issue));
    QCOMPARE(issue.value, 50 * Dollar); // 2 @ 10, then 1 @ 30
    QCOMPARE(ledger.balance(adaptersAt("trailer-2")).value, 30 * Dollar);
}

void CostIsFirstInFirstOut::andWhatIsTakenBackComesBackAsItWas()
{
    Ledger ledger = firstInFirstOut();
    Movement first = moved(1, 3, "supplier", "A1", 30 * Dollar);
    Movement second = moved(2, 3, "supplier", "A1", 60 * Dollar);
    Movement issue = moved(3, 4, "A1", "car-1");
    for (Movement *one : {&first, &second, &issue})
        QVERIFY(!carriedOut(ledger, *one));
    QCOMPARE(issue.value, 50 * Dollar);
    Movement back = takenBack(issue, 4);
    QVERIFY(!carriedOut(ledger, back));
    QCOMPARE(back.value, 50 * Dollar);
    Movement again = moved(5, 3, "A1", "car-1");
    QVERIFY(!carriedOut(ledger, again));
    QCOMPARE(again.value, 30 * Dollar); // The three of the first receipt, as before.
    // The second receipt taken back takes its own value, though the first's would go first.
    Movement receiptBack = takenBack(second, 6);
    QVERIFY(!carriedOut(ledger, receiptBack));
    QCOMPARE(receiptBack.value, 60 * Dollar);
    QVERIFY(ledger.balance(adaptersAt("A1")).isNothing());
}

void CostIsFirstInFirstOut::andAMovementThatSaysAnotherValueIsRefused()
{
    Ledger ledger = firstInFirstOut();
    Movement first = moved(1, 3, "supplier", "A1", 30 * Dollar);
    QVERIFY(!carriedOut(ledger, first));
    Movement issue = moved(2, 1, "A1", "car-1", 11 * Dollar);
    QVERIFY(ledger.apply(issue) == Refusal::WrongValue);
}

void CostIsFirstInFirstOut::asAQueueWouldHaveIt()
{
    // Whole dollars a piece, so that a queue of single pieces is the reference: no rounding at all.
    const auto seed = qEnvironmentVariableIntValue("FLARESTOCK_SEED") + 7;
    std::mt19937 random(static_cast<unsigned>(seed));
    qInfo("FLARESTOCK_SEED=%d", seed - 7);
    Ledger ledger = firstInFirstOut();
    std::deque<std::int64_t> queue;
    for (std::uint32_t number = 1; number <= 5'000; ++number) {
        const auto quantity = static_cast<std::int64_t>(random() % 5 + 1);
        const bool issue = random() % 2 == 0;
        const auto price = static_cast<std::int64_t>(random() % 9 + 1);
        Movement movement = movementOf({quantity, issue ? 0 : price}, number);
        const auto refused = carriedOut(ledger, movement);
        QCOMPARE(refused.has_value(), issue && quantity > std::ssize(queue));
        if (refused)
            continue;
        std::int64_t cost = 0;
        for (std::int64_t i = 0; i < quantity; ++i) {
            if (!issue) {
                queue.push_back(price);
                continue;
            }
            cost += queue.front() * Dollar;
            queue.pop_front();
        }
        if (issue)
            QCOMPARE(movement.value, cost);
        QCOMPARE(ledger.balance(adaptersAt("A1")).quantity, std::ssize(queue));
    }
}

QTEST_APPLESS_MAIN(CostIsFirstInFirstOut)
#include "tst_cost_is_first_in_first_out.moc"
