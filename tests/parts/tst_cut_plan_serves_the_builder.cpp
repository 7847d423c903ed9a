// SPDX-License-Identifier: MIT
//
// Cut plans as a builder asks for them, and those of published examples:
// - V. Chvátal, "Linear Programming" (1983), chapter 13: rolls of 100 in for 97 of 45 in, 610 of
// 36,
//   395 of 31, 211 of 14. There are 37 patterns (NEOS Guide, "The cutting stock problem"); 453
//   rolls (from memory).
// - "Cutting stock problem" of Wikipedia, the paper machine: 73 rolls of 5600 mm, 0.401 % of waste.

#include "model/parts/cutting_plan/cut_length.h"
#include "model/parts/cutting_plan/cut_plan.h"

#include <QTest>

using namespace flarestock;

namespace {

std::int64_t inches(const char *length)
{
    return Quantity{Decimal::parse(length).value(), Unit::Inch}.smallest().value();
}

Part straightEnd(const char *number, std::optional<Decimal> allowanceMm)
{
    Part end;
    end.number = number;
    end.kind = Kind::HoseEnd;
    end.facts = HoseEndFacts{{"PT"}, 6, 0, {}, std::move(allowanceMm)};
    return end;
}

struct Order {
    std::int64_t length;
    std::size_t count;
};

CutTask ordered(std::int64_t roll, const std::vector<Order> &orders)
{
    CutTask task;
    task.kerf = 0;
    task.coil = roll;
    for (const Order &order : orders)
        task.lengths.insert(task.lengths.end(), order.count, order.length);
    return task;
}

} // namespace

class CutPlanServesTheBuilder : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void lengthBetweenSeats();
    void threeHosesFromARemnantAndACoil();
    void whatLacksIsSaidWithWhatToBuy();
    void coilsAreBoughtWhereTheyAreNeeded();
    void nothingToCut();
    void rollsOfOneHundredInches();
    void paperMachine();
    void tooManyPatternsAreCutAllTheSame();
    void aimsHaveWords();
};

void CutPlanServesTheBuilder::lengthBetweenSeats()
{
    // 40 in less 3/4 in (19.05 mm) at each end.
    const Part end = straightEnd("HE", Decimal::parse("19.05").value());
    QCOMPARE(cutLength(inches("40"), end, end).value(), inches("38.5"));
    QCOMPARE(takenUp(end, straightEnd("BENT", Decimal::parse("35.56").value())).value(),
             inches("2.15"));
    const auto nothingLeft = cutLength(inches("1.5"), end, end);
    QVERIFY(!nothingLeft);
    QCOMPARE(nothingLeft.error().thing, std::string("the length between seats"));
    QCOMPARE(cutLength(inches("40"), end, straightEnd("MUTE", {})).error().thing,
             std::string("MUTE"));
}

void CutPlanServesTheBuilder::threeHosesFromARemnantAndACoil()
{
    CutTask task;
    task.pieces = {inches("144"), inches("40")};
    task.lengths.assign(3, inches("38.5"));
    task.kerf = inches("0.125");
    task.leastUseful = inches("4");

    const CutPlan remnants = planCuts(task, CutAim::RemnantsFirst);
    QVERIFY(!remnants.bound);
    QCOMPARE(remnants.from.size(), std::size_t{2});
    QCOMPARE(remnants.from[0].lengths.size(), std::size_t{2});
    QCOMPARE(remnants.from[0].rest, inches("66.75")); // 144 - 2 × (38 1/2 + 1/8)
    QCOMPARE(remnants.from[1].lengths.size(), std::size_t{1});
    QCOMPARE(remnants.from[1].rest, std::int64_t{0});
    QCOMPARE(remnants.waste(), inches("1.75")); // 2 kerfs, and 1 1/2 in of the remnant

    const CutPlan waste = planCuts(task, CutAim::LeastWaste);
    QVERIFY(!waste.bound);
    QCOMPARE(waste.from.size(), std::size_t{1});
    QCOMPARE(waste.from[0].piece, std::optional<std::size_t>(0));
    QCOMPARE(waste.from[0].lengths, (std::vector<std::size_t>{0, 1, 2}));
    QCOMPARE(waste.from[0].rest, inches("28.125")); // 144 - 3 × (38 1/2 + 1/8)
    QCOMPARE(waste.waste(), inches("0.375"));
}

void CutPlanServesTheBuilder::whatLacksIsSaidWithWhatToBuy()
{
    CutTask task;
    task.pieces = {inches("50")};
    task.lengths = {inches("30"), inches("45"), inches("60")};
    task.kerf = inches("0.125");
    const CutPlan plan = planCuts(task, CutAim::RemnantsFirst);
    QCOMPARE(plan.lacking, (std::vector<std::size_t>{0, 2})); // The longest that it holds is cut.
    QCOMPARE(plan.lengthToBuy(task), inches("90.125"));
    QCOMPARE(plan.coils(), std::int64_t{0});
}

void CutPlanServesTheBuilder::coilsAreBoughtWhereTheyAreNeeded()
{
    CutTask task;
    task.pieces = {inches("50"), inches("30")};
    task.lengths.assign(5, inches("48"));
    task.lengths.push_back(inches("300"));
    task.kerf = inches("0.125");
    task.coil = inches("144"); // Two of 48 in, because of the kerf.
    const CutPlan plan = planCuts(task, CutAim::LeastWaste);
    QVERIFY(!plan.bound);
    QCOMPARE(plan.coils(), std::int64_t{2});
    QCOMPARE(plan.lacking, std::vector<std::size_t>{5});
    QVERIFY(!plan.from.back().piece);
}

void CutPlanServesTheBuilder::nothingToCut()
{
    const CutPlan plan = planCuts({}, CutAim::RemnantsFirst);
    QVERIFY(plan.from.empty() && plan.lacking.empty() && !plan.bound);
    CutTask task;
    task.pieces = {100};
    QVERIFY(planCuts(task, CutAim::LeastWaste).from.empty());
    task = {{}, {100}, 0, 0, {}};
    QCOMPARE(planCuts(task, CutAim::LeastWaste).lacking.size(), std::size_t{1});
}

void CutPlanServesTheBuilder::rollsOfOneHundredInches()
{
    const CutTask task = ordered(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}});
    QCOMPARE(patternsOf(task, 100, wantedLengths(task), 1000).size(), std::size_t{37});
    const CutPlan plan = planCuts(task, CutAim::LeastWaste);
    QCOMPARE(plan.coils(), std::int64_t{453});
    QVERIFY(plan.lacking.empty());
    QVERIFY(!plan.bound);
}

void CutPlanServesTheBuilder::paperMachine()
{
    CutTask task = ordered(5600, {{1380, 22},
                                  {1520, 25},
                                  {1560, 12},
                                  {1710, 14},
                                  {1820, 18},
                                  {1880, 18},
                                  {1930, 20},
                                  {2000, 10},
                                  {2050, 12},
                                  {2100, 14},
                                  {2140, 16},
                                  {2150, 18},
                                  {2200, 20}});
    task.leastUseful = 5600;
    const CutPlan plan = planCuts(task, CutAim::LeastWaste);
    QCOMPARE(plan.coils(), std::int64_t{73});
    QCOMPARE(plan.waste(), std::int64_t{1640}); // 0.401 % of 73 × 5600
    QVERIFY(!plan.bound || plan.bound->of == CutMeasure::Longer);
}

void CutPlanServesTheBuilder::tooManyPatternsAreCutAllTheSame()
{
    // Forty different lengths off coils that hold a dozen of them: more patterns than are tried.
    CutTask task;
    for (std::int64_t i = 0; i < 40; ++i)
        task.lengths.push_back(inches("6") + i * inches("0.25"));
    task.kerf = inches("0.125");
    task.coil = inches("120");
    const CutPlan plan = planCuts(task, CutAim::RemnantsFirst, std::chrono::seconds(1));
    QVERIFY(plan.lacking.empty());
    // 435 in and 40 kerfs are 440 in: four coils do not go below, and what is said is no more.
    QVERIFY(plan.coils() >= 4 && plan.coils() <= 5);
    QVERIFY(plan.bound);
    const auto reached = plan.measured(task, CutAim::RemnantsFirst);
    const auto measures = measuresOf(CutAim::RemnantsFirst);
    const auto of = std::find(measures.begin(), measures.end(), plan.bound->of);
    QVERIFY(plan.bound->atLeast <= reached[static_cast<std::size_t>(of - measures.begin())]);
}

void CutPlanServesTheBuilder::aimsHaveWords()
{
    for (const CutAim aim : {CutAim::RemnantsFirst, CutAim::LeastWaste})
        QCOMPARE(parseCutAim(text(aim)).value(), aim);
    QVERIFY(!parseCutAim("luck"));
}

QTEST_APPLESS_MAIN(CutPlanServesTheBuilder)
#include "tst_cut_plan_serves_the_builder.moc"
