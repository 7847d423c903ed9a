// SPDX-License-Identifier: MIT
//
// Promise: what a line may take is what the trade's rules come to, by level and system, and says
// where it is from.

#include "model/fluids/line/line_budget.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

class LineBudgetsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    static void budgets_data();
    static void budgets();
    static void inletBoundsLieAsTheirSourcesSay();
};

void LineBudgetsTest::budgets_data()
{
    QTest::addColumn<FuelSystem>("system");
    QTest::addColumn<BudgetedLine>("line");
    QTest::addColumn<double>("setKpa");
    QTest::addColumn<double>("cautionKpa");
    QTest::addColumn<double>("stopKpa");
    using enum FuelSystem;
    using enum BudgetedLine;
    // 1 psi is 6.894757 kPa (GNU units). The bounds are judgement: 1 psi is where largest power by
    // dash meets the rules of thumb (power_by_dash.csv); 5 to 10 % of a rail's pressure.
    QTest::newRow("three psi before a carburettor's regulator, whatever is set")
        << Carburettor << BeforeRegulator << 45.0 << 20.684272 << 20.684272;
    QTest::newRow("one psi behind it")
        << Carburettor << BehindRegulator << 45.0 << 6.894757 << 6.894757;
    QTest::newRow("return of 45 kPa") << Carburettor << Return << 45.0 << 2.25 << 45.0;
    QTest::newRow("rail of 3 bar") << Injection << BeforeRegulator << 300.0 << 30.0 << 60.0;
    QTest::newRow("on to the rail") << Injection << BehindRegulator << 300.0 << 30.0 << 60.0;
    QTest::newRow("return of 3 bar") << Injection << Return << 300.0 << 15.0 << 300.0;
}

void LineBudgetsTest::budgets()
{
    QFETCH(FuelSystem, system);
    QFETCH(BudgetedLine, line);
    QFETCH(double, setKpa);
    QFETCH(double, cautionKpa);
    QFETCH(double, stopKpa);
    const LineBudget budget = lineBudget(system, line, setKpa * 1e3);
    NEAR_PERCENT(budget.cautionPa, cautionKpa * 1e3, 1e-5);
    NEAR_PERCENT(budget.stopPa, stopKpa * 1e3, 1e-5);
    QVERIFY(!budget.source.empty());
    QCOMPARE(budget.status, std::string_view("judgement"));
}

void LineBudgetsTest::inletBoundsLieAsTheirSourcesSay()
{
    const InletBounds &bounds = inletBounds();
    NEAR_PERCENT(bounds.aircraftPa, 34473.786, 1e-5); // 5 psi, pump handbook; GNU units.
    QCOMPARE(bounds.cautionPa, 20e3);
    QCOMPARE(bounds.stopPa, 10e3);
    QVERIFY(bounds.stopPa < bounds.cautionPa && bounds.cautionPa < bounds.aircraftPa);
    QVERIFY(!bounds.source.empty() && !bounds.aircraftSource.empty());
}

QTEST_APPLESS_MAIN(LineBudgetsTest)
#include "tst_line_budgets.moc"
