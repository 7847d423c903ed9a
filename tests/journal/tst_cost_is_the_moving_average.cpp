// SPDX-License-Identifier: MIT
//
// What an issue costs is the moving average, by worked examples with an outside source.
//
// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, chapter 10.3
// (perpetual method): figures only. The book rounds the unit cost of its moving average to cents
// and says that this makes a dollar of difference; exact figures are its data computed without
// that rounding (fractions). The further examples have the data of the same chapter's exercises and
// problems and computed answers.

#include "tests/journal/few_places.h"

#include <QTest>

#include <cmath>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr std::int64_t Dollar = 1'000'000;

/// One receipt at a price each (whole dollars), or one issue.
struct Step {
    std::int64_t quantity;
    std::int64_t priceEach; ///< 0: an issue.
};

struct Costs {
    std::vector<std::int64_t> issues; ///< 10^-6 dollar each.
    Balance left;
    [[nodiscard]] std::int64_t issued() const
    {
        std::int64_t sum = 0;
        for (const std::int64_t issue : issues)
            sum += issue;
        return sum;
    }
};

Costs costsOf(const std::vector<Step> &steps)
{
    Ledger ledger(fewPlaces());
    Costs costs;
    std::uint32_t number = 0;
    for (const Step &step : steps) {
        const bool issue = step.priceEach == 0;
        Movement movement = issue ? moved(++number, step.quantity, "A1", "car-1")
                                  : moved(++number, step.quantity, "supplier", "A1",
                                          step.quantity * step.priceEach * Dollar);
        if (carriedOut(ledger, movement))
            return {};
        if (issue)
            costs.issues.push_back(movement.value);
    }
    costs.left = ledger.balance(adaptersAt("A1"));
    return costs;
}

/// To the whole dollar or cent, as books print it.
std::int64_t roundedTo(std::int64_t unit, std::int64_t micros)
{
    return (micros + unit / 2) / unit;
}

} // namespace

class CostIsTheMovingAverage : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ofThePublishedExample();
    void ofFurtherExercises_data();
    void ofFurtherExercises();
    void movesWithEachReceipt();
    void keepsWhatARoundedUnitCostWouldLose();
};

void CostIsTheMovingAverage::ofThePublishedExample()
{
    // Opening 150 at 21; sell 120; receive 225 at 27; sell 180; receive 210 at 33.
    const Costs costs = costsOf({{150, 21}, {120, 0}, {225, 27}, {180, 0}, {210, 33}});
    QCOMPARE(costs.issues.size(), std::size_t{2});
    QCOMPARE(costs.issues[0], 2520 * Dollar);
    QCOMPARE(costs.issues[1], 4'732'941'176); // 6,705 / 255 × 180 = 80,460 / 17
    // Exact: 123,300 / 17 = 7,252.94…; the book, with a unit cost of 26.29: 7,253 and 8,902.
    QCOMPARE(roundedTo(Dollar / 100, costs.issued()), 725'294);
    QCOMPARE(roundedTo(Dollar, costs.issued()), 7'253);
    QCOMPARE(roundedTo(Dollar / 100, costs.left.value), 890'206);
    QCOMPARE(roundedTo(Dollar, costs.left.value), 8'902);
    QCOMPARE(costs.left.quantity, 285);
    QCOMPARE(costs.issued() + costs.left.value, 16'155 * Dollar); // Goods available for sale.
}

void CostIsTheMovingAverage::ofFurtherExercises_data()
{
    QTest::addColumn<std::vector<Step>>("steps");
    QTest::addColumn<std::int64_t>("issuedCents");
    QTest::addColumn<std::int64_t>("leftCents");
    const auto row = [](const char *name, const std::vector<Step> &steps, std::int64_t issued,
                        std::int64_t left) { QTest::newRow(name) << steps << issued << left; };
    // (800 × 50 + 600 × 52) / 1,400 each
    row("both issues behind the receipt", {{800, 50}, {600, 52}, {400, 0}, {350, 0}}, 3'814'286,
        3'305'714);
    row("an average that is whole", {{100, 66}, {80, 75}, {50, 0}, {25, 0}}, 525'000, 735'000);
    // 7,020 / 270 = 26 each
    row("issues between receipts", {{165, 21}, {120, 0}, {225, 27}, {180, 0}, {210, 33}}, 720'000,
        927'000);
    row("one issue", {{110, 87}, {140, 89}, {95, 0}}, 837'140, 1'365'860);
}

void CostIsTheMovingAverage::ofFurtherExercises()
{
    QFETCH(std::vector<Step>, steps);
    QFETCH(std::int64_t, issuedCents);
    QFETCH(std::int64_t, leftCents);
    const Costs costs = costsOf(steps);
    QCOMPARE(roundedTo(Dollar / 100, costs.issued()), issuedCents);
    QCOMPARE(roundedTo(Dollar / 100, costs.left.value), leftCents);
}

void CostIsTheMovingAverage::movesWithEachReceipt()
{
    // The same goods in another order cost something else: first in, the issue knows only the
    // first.
    const Costs before = costsOf({{10, 10}, {5, 0}, {10, 20}});
    const Costs behind = costsOf({{10, 10}, {10, 20}, {5, 0}});
    QCOMPARE(before.issued(), 50 * Dollar);
    QCOMPARE(behind.issued(), 75 * Dollar);
    QCOMPARE(before.issued() + before.left.value, behind.issued() + behind.left.value);
}

void CostIsTheMovingAverage::keepsWhatARoundedUnitCostWouldLose()
{
    // The book's stock behind the second receipt, issued to the last: with 26.29 each, 6,703.95 of
    // 6,705.00 would be issued and 1.05 lie there without pieces.
    const Costs costs = costsOf({{150, 21}, {120, 0}, {225, 27}, {180, 0}, {75, 0}});
    QCOMPARE(costs.issues[1] + costs.issues[2], 6'705 * Dollar);
    QVERIFY(costs.left.isNothing());
}

QTEST_APPLESS_MAIN(CostIsTheMovingAverage)
#include "tst_cost_is_the_moving_average.moc"
