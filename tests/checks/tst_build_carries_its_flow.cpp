// SPDX-License-Identifier: MIT
//
// What flows in the lines of a build and what it takes, against figures that were worked out apart:
// python-fluids for the return of a regulator (tests/fluids asks it for the same three), US EPA
// AP-42 and Darcy-Weisbach for the inlet, a maker's two points for the pump between them,
// conservation of mass for the surge tank.

#include "flow_by_hand.h"

#include <QTest>

#include <cmath>
#include <numbers>

using namespace flarestock;
using namespace flarestock::tests;

#define NEAR_PERCENT(got, wanted, percent)                                                         \
    QVERIFY2(std::abs((got) - (wanted)) <= std::abs(wanted) * (percent) / 100,                     \
             qPrintable(QStringLiteral("%1, not %2").arg(got).arg(wanted)))

class BuildFlowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theReturnCarriesThePumpsFlow_data();
    void theReturnCarriesThePumpsFlow();
    void anOpenRegulatorKeepsUpItsOwn();
    void theLevelPushesWhatTheLineLetsThrough();
    void coldOilRunsLaminar();
    void warmGasolineBehindItsPreFilter();
    void aPumpIsReadBetweenItsPoints();
    void aPumpIsReadBetweenItsVoltages();
    void twoPumpsGiveTwice();
    void theEngineBurnsByItsPower();
    void eachSectionCarriesItsOwn();
    void levelAndAccelerationCount();
    void flowDividesAndJoins();
    void aSurgeTankRunsEmpty();
    void thePicturesMeetTheFigures();
    void nothingIsMadeUpWhereNothingIsAsked();
};

void BuildFlowTest::theReturnCarriesThePumpsFlow_data()
{
    // 255 L/h of 745 kg/m³ and 0.41 mPa·s through 3 m with K = 4 by python-fluids.
    QTest::addColumn<double>("boreMm");
    QTest::addColumn<QString>("dash");
    QTest::addColumn<double>("kilopascal");
    QTest::newRow("3/16 in") << 4.7625 << "-4" << 111.0;
    QTest::newRow("5/16 in") << 7.9375 << "-6" << 10.6;
}

void BuildFlowTest::theReturnCarriesThePumpsFlow()
{
    QFETCH(double, boreMm);
    QFETCH(QString, dash);
    QFETCH(double, kilopascal);
    auto build = carburettorWithReturn();
    build.expansion.answers["fuel-temperature"] = "20 C"; // The table's 745 and 0.41.
    build.hose("regulator-tank", {boreMm, 3000});
    // Two elbows of 1.3, one of 0.4, and the way into the tank: 4.
    const auto size = dash.toStdString();
    build.passes("regulator-tank",
                 {&build.elbow(90, size), &build.elbow(90, size), &build.elbow(45, size)});
    const auto flow = build.flow();
    const auto &delivery = flow.deliveries.front();
    NEAR_PERCENT(flow.run("regulator-tank")->flowM3S, 255 * LitreHour, 1e-6);
    NEAR_PERCENT(delivery.bypass->floorPa, kilopascal * 1e3, 2.0);
    QCOMPARE(delivery.bypass->holds(45e3), kilopascal < 45);
    // What it cannot hold down the pump has to push against.
    QVERIFY(delivery.working->pressurePa > std::max(45e3, delivery.bypass->floorPa));
}

void BuildFlowTest::anOpenRegulatorKeepsUpItsOwn()
{
    // An orifice (textbook): half its flow makes a quarter of its loss. 80 kPa at 510 L/h are 20
    // at 255, more than which it cannot let down, and against which the pump has to push.
    auto build = carburettorWithReturn();
    const auto before = build.flow();
    QCOMPARE(*before.deliveries.front().bypass->ownPa, 0.0);
    build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, 510.0, 80.0};
    const auto with = build.flow();
    NEAR_PERCENT(*with.deliveries.front().bypass->ownPa, 20e3, 1e-6);
    NEAR_PERCENT(with.deliveries.front().bypass->floorPa,
                 before.deliveries.front().bypass->floorPa + 20e3, 1e-6);
    build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, 255.0, 80.0};
    NEAR_PERCENT(build.flow().deliveries.front().working->pressurePa -
                     before.deliveries.front().working->pressurePa,
                 before.deliveries.front().bypass->floorPa + 80e3 - 45e3, 1e-3);
    build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, {}, {}};
    QVERIFY(!build.flow().deliveries.front().bypass->ownPa);
}

void BuildFlowTest::theLevelPushesWhatTheLineLetsThrough()
{
    // 100 hp × 0.50 lb/h, half as much again (14 CFR 23.955): 45.66 L/h of 745 kg/m³ and
    // 0.41 mPa·s; half a metre is 3.653 kPa. 3 m of 4 mm and an entrance of 0.5 take 9.887 kPa of
    // it by python-fluids 1.0.22, and 3.653 at 25.67 L/h.
    auto build = gravityFeed();
    build.hose("tank-carburettor", {4, 3000});
    build.placed("tank-carburettor").riseM = -0.5;
    const auto flow = build.flow();
    QVERIFY(flow.deliveries.empty());
    const auto &feed = flow.gravityFeeds.front();
    NEAR_PERCENT(feed.wantedM3S, 45.6637 * LitreHour, 0.01);
    NEAR_PERCENT(feed.headPa, 3652.98, 0.01);
    NEAR_PERCENT(feed.line.dropPa, 9887.4 - 3652.98, 0.1);
    NEAR_PERCENT(feed.reachesM3S, 25.674 * LitreHour, 0.1);
    // Two of them share what the engine burns; one that a pump feeds too is none.
    build.add("other", Kind::Carburettor, FuelUserFacts{});
    build.run("tank", "other", Level::Suction);
    build.hose("tank-other", {8, 500});
    NEAR_PERCENT(build.flow().gravityFeeds.front().wantedM3S, 45.6637 / 2 * LitreHour, 0.01);
    QVERIFY(carburettorWithReturn().flow().gravityFeeds.empty());
}

void BuildFlowTest::coldOilRunsLaminar()
{
    // Hagen and Poiseuille (textbook): 128 µ L Q / π d⁴, for the 280 mPa·s of the table at 20 °C.
    const auto flow = gearboxCooler().flow();
    QCOMPARE(flow.runs.size(), std::size_t{4});
    const double flowM3S = 400 * LitreHour;
    for (const auto &run : flow.runs) {
        NEAR_PERCENT(run.flowM3S, flowM3S, 1e-9);
        QVERIFY(run.regime == Regime::Laminar);
        NEAR_PERCENT(run.loss.frictionPa,
                     128 * 0.280 * 1 * flowM3S / (std::numbers::pi * std::pow(0.015, 4)), 0.01);
    }
    QVERIFY(flow.run("filter-pump")->role == LineRole::Suction);
    QVERIFY(flow.run("pump-cooler")->role == LineRole::Pressure);
    QVERIFY(flow.run("cooler-gearbox")->role == LineRole::Return);
}

void BuildFlowTest::warmGasolineBehindItsPreFilter()
{
    // Worked out apart: gasoline of 9 psi Reid at 40 °C boils under 70.6 kPa (AP-42); 350 L/h,
    // 0.8 m of 12.7 mm, K 0.8 (an entrance and a swept end of 90°), level 0.20 m, filter 2 kPa:
    // friction 348 Pa, ends 172 Pa, margin 29.6 kPa, 4.14 m.
    auto build = injectionWithReturn();
    auto facts = *build.partAt("pump").as<PumpFacts>();
    facts.curve = {{200, 13.5, 350}, {500, 13.5, 350}};
    build.partAt("pump").facts = facts;
    auto filter = *build.partAt("prefilter").as<FilterFacts>();
    filter.flowLh = 350;
    filter.cleanLossKpa = 2;
    build.partAt("prefilter").facts = filter;
    build.partAt("tank").ports.clear(); // The opening is as wide as the hose.
    build.hose("tank-prefilter", {12.7, 800, 10});
    build.placed("tank-prefilter").riseM = -0.20;
    build.passes("tank-prefilter", {&build.hoseEnd(90, 12.7)});
    build.placed("prefilter-pump").line = nullptr; // The pump is screwed to the filter.
    const auto flow = build.flow();
    const auto &supply = *flow.run("tank-prefilter");
    NEAR_PERCENT(supply.loss.frictionPa, 348, 1.0);
    NEAR_PERCENT(supply.loss.minorPa, 172, 1.0);
    NEAR_PERCENT(flow.run("prefilter-pump")->loss.filterPa, 2000, 0.1);
    const auto &inlet = *flow.deliveries.front().pumps.front().inlet;
    NEAR_PERCENT(inlet.marginPa, 29.6e3, 0.5);
    NEAR_PERCENT(inlet.npshM, 4.14, 0.5);
}

void BuildFlowTest::aPumpIsReadBetweenItsPoints()
{
    // 255 L/h at 3 bar and 235 at 4 are 241 at 3.7 bar; the lines are so wide that they take
    // nothing.
    auto build = injectionWithReturn();
    build.stationAt("regulator").demand.pressure = FlowByHand::said("3.7 bar");
    for (auto &run : build.expansion.runs)
        build.hose(run.id, {200, 10});
    for (auto &part : build.parts)
        if (part.kind == Kind::Filter)
            part.facts = FilterFacts{{}, {}, {}, true, 1000.0, 1e-3, {}};
    for (auto &part : build.parts)
        part.ports.clear();
    const auto flow = build.flow();
    QVERIFY(flow.deliveries.front().reach == CurveReach::Within);
    NEAR_PERCENT(flow.deliveries.front().working->flowM3S, 241 * LitreHour, 0.01);
    NEAR_PERCENT(flow.deliveries.front().working->pressurePa, 3.7e5, 0.01);
}

void BuildFlowTest::aPumpIsReadBetweenItsVoltages()
{
    auto build = injectionWithReturn();
    auto facts = *build.partAt("pump").as<PumpFacts>();
    for (const auto &point : std::vector(facts.curve))
        facts.curve.push_back({point.pressureKpa, 12.0, point.flowLh - 40});
    build.partAt("pump").facts = facts;
    const double full = build.flow().deliveries.front().working->flowM3S;
    build.expansion.answers["voltage"] = "12.75 V";
    const double half = build.flow().deliveries.front().working->flowM3S;
    NEAR_PERCENT(full - half, 20 * LitreHour, 5.0); // A little less, for the lines take less.
    build.expansion.answers["voltage"] = "11 V";    // Never beyond what was measured.
    QVERIFY(build.flow().deliveries.front().reach == CurveReach::NotKnown);
}

void BuildFlowTest::twoPumpsGiveTwice()
{
    FlowByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    for (const char *id : {"one", "two"})
        build.pumpOf(id, {{200, 13.5, 255}, {500, 13.5, 255}});
    build.add("block", Kind::Manifold);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.regulatorOf("regulator", "3 bar", true);
    build.run("tank", "one", Level::Suction);
    build.run("tank", "two", Level::Suction);
    build.inLine({"one", "block", "rail", "regulator"});
    build.run("two", "block");
    build.returnRun("regulator", "tank");
    for (const auto &run : build.expansion.runs)
        build.hose(run.id, {10.3, 1000, 8});
    const auto flow = build.flow();
    QCOMPARE(flow.deliveries.size(), std::size_t{1});
    QCOMPARE(flow.deliveries.front().pumps.size(), std::size_t{2});
    for (const char *id : {"tank-one", "two-block"})
        NEAR_PERCENT(flow.run(id)->flowM3S, 255 * LitreHour, 1e-6);
    for (const char *id : {"block-rail", "regulator-tank"})
        NEAR_PERCENT(flow.run(id)->flowM3S, 510 * LitreHour, 1e-6);
    QVERIFY(flow.deliveries.front().picture);
}

void BuildFlowTest::theEngineBurnsByItsPower()
{
    // 500 hp × 0.50 lb an hour = 250 lb/h = 113.398 kg/h; of 745 kg/m³ 152.2 L/h (a fifth less than
    // the 182.655 L/h that 0.60 give).
    auto build = injectionWithReturn();
    build.expansion.answers = {{"power", "500 hp"}, {"fuel-temperature", "20 C"}};
    const auto flow = build.flow();
    NEAR_PERCENT(*flow.engineM3S, 182.655 * 0.50 / 0.60 * LitreHour, 0.01);
    NEAR_PERCENT(flow.deliveries.front().wantedM3S, 1.25 * *flow.engineM3S, 1e-9);
}

void BuildFlowTest::eachSectionCarriesItsOwn()
{
    const auto build = carburettorWithReturn();
    const auto flow = build.flow();
    NEAR_PERCENT(flow.run("tank-prefilter")->flowM3S, 255 * LitreHour, 1e-6);
    NEAR_PERCENT(flow.run("regulator-tank")->flowM3S, 255 * LitreHour, 1e-6);
    NEAR_PERCENT(flow.run("regulator-carburettor")->flowM3S, *flow.engineM3S, 1e-9);
    QVERIFY(flow.run("tank-prefilter")->role == LineRole::Suction);
    QVERIFY(flow.run("pump-postfilter")->role == LineRole::Pressure);
    QVERIFY(flow.run("regulator-tank")->role == LineRole::Return);
    // 4 Q / π d², by the bore and not by the dash.
    const auto &back = *flow.run("regulator-tank");
    NEAR_PERCENT(back.velocityMS, 4 * 255 * LitreHour / (std::numbers::pi * 14.3e-3 * 14.3e-3),
                 1e-6);
    // Without a return the lines carry what the engine burns.
    auto deadHead = carburettorWithReturn();
    auto facts = *deadHead.partAt("regulator").as<RegulatorFacts>();
    facts.bypass = false;
    deadHead.partAt("regulator").facts = facts;
    deadHead.expansion.runs.pop_back();
    const auto still = deadHead.flow();
    QVERIFY(still.run("regulator-tank") == nullptr);
    for (const char *id : {"tank-prefilter", "postfilter-regulator", "regulator-carburettor"})
        NEAR_PERCENT(still.run(id)->flowM3S, *still.engineM3S, 1e-9);
}

void BuildFlowTest::levelAndAccelerationCount()
{
    // 745 kg/m³: 7.306 kPa for a metre of rise; 3 m under 1.5 g 32.9 kPa (ρ g h, ρ a x).
    auto build = carburettorWithReturn();
    build.expansion.answers["fuel-temperature"] = "20 C";
    build.placed("regulator-carburettor").riseM = 1;
    NEAR_PERCENT(build.flow().run("regulator-carburettor")->loss.levelPa, 7306, 0.01);
    build.expansion.answers["acceleration"] = "1.5 g";
    build.placed("postfilter-regulator").forwardM = 3;
    NEAR_PERCENT(build.flow().run("postfilter-regulator")->loss.accelerationPa, 32.9e3, 0.1);
}

void BuildFlowTest::flowDividesAndJoins()
{
    FlowByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.pumpOf("pump", {{200, 13.5, 255}, {500, 13.5, 255}});
    build.add("fork", Kind::Tee);
    build.add("left", Kind::Rail, FuelUserFacts{});
    build.add("right", Kind::Rail, FuelUserFacts{});
    build.add("join", Kind::Tee);
    build.regulatorOf("regulator", "3 bar", true);
    build.inLine({"tank", "pump", "fork", "left", "join", "regulator"});
    build.run("fork", "right");
    build.run("right", "join");
    build.returnRun("regulator", "tank");
    for (const auto &run : build.expansion.runs)
        build.hose(run.id, {7.9375, 1000});
    const auto flow = build.flow();
    for (const char *id : {"fork-left", "fork-right", "left-join", "right-join"})
        NEAR_PERCENT(flow.run(id)->flowM3S, 127.5 * LitreHour, 1e-6);
    NEAR_PERCENT(flow.run("join-regulator")->flowM3S, 255 * LitreHour, 1e-6);
    // Technical Paper 410, equal bores, half of it through the branch: a square tee divides at
    // (1 + 0.3 q²)², the larger figure of the public copies, and joins at 0.55 (1 + q² - 2 (1 -
    // q)²) = 0.4125.
    const double area = std::numbers::pi / 4 * 7.9375e-3 * 7.9375e-3;
    const double all = flow.liquid->densityKgM3 / 2 * std::pow(255 * LitreHour / area, 2);
    NEAR_PERCENT(flow.run("join-regulator")->loss.minorPa, 0.4125 * all, 0.1);
    NEAR_PERCENT(flow.run("fork-left")->loss.minorPa, std::pow(1 + 0.3 * 0.25, 2) * all, 0.1);
}

void BuildFlowTest::aSurgeTankRunsEmpty()
{
    // 100 L/h lifted, 120 burnt, the rest comes back: 20 L/h too little, 1.5 L last 270 s.
    FlowByHand build;
    build.expansion.answers = {{"power", "394.2 hp"}, {"fuel-temperature", "20 C"}}; // 120 L/h
    build.add("tank", Kind::Tank, VesselFacts{});
    build.pumpOf("lift", {{0, 13.5, 100}, {50, 13.5, 100}});
    VesselFacts vessel;
    vessel.litres = 1.5;
    build.add("surge", Kind::Tank, vessel);
    build.pumpOf("pump", {{200, 13.5, 255}, {500, 13.5, 255}});
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.regulatorOf("regulator", "3 bar", true);
    build.run("tank", "lift", Level::Suction);
    build.run("lift", "surge", Level::Suction);
    build.run("surge", "pump", Level::Suction);
    build.inLine({"pump", "rail", "regulator"});
    build.returnRun("regulator", "surge");
    for (const auto &run : build.expansion.runs)
        build.hose(run.id, {10.3, 500, 8});
    const auto flow = build.flow();
    NEAR_PERCENT(*flow.engineM3S, 120 * LitreHour, 0.05);
    QCOMPARE(flow.deliveries.size(), std::size_t{2});
    const auto &balance = *flow.deliveries.front().balance;
    NEAR_PERCENT(balance.surplusM3S, -20 * LitreHour, 0.5);
    NEAR_PERCENT(*balance.emptyAfterS, 270, 0.5);
    const auto found = build.flowFindings();
    QCOMPARE(found.size(), std::size_t{1});
    QCOMPARE(found.front().about, std::string("Surge P-surge: runs empty at full power"));
}

void BuildFlowTest::thePicturesMeetTheFigures()
{
    const auto build = injectionWithReturn();
    const auto flow = build.flow();
    const auto &delivery = flow.deliveries.front();
    const auto &points = delivery.pressures;
    QVERIFY(points.size() > 10);
    QCOMPARE(points.front().totalPa, 0.0); // The tank is open.
    QVERIFY(std::abs(points.back().totalPa) < 1e-6 * 3e5);
    const auto lift = std::find_if(points.begin(), points.end(),
                                   [](const PressurePoint &point) { return point.at == "pump"; });
    QVERIFY(lift != points.begin() && lift != points.end());
    NEAR_PERCENT(lift->totalPa - std::prev(lift)->totalPa, delivery.working->pressurePa, 0.001);
    for (auto point = std::next(points.begin()); point != points.end(); ++point)
        QVERIFY(point->alongM >= std::prev(point)->alongM);
    NEAR_PERCENT(points.back().alongM, 2 * 0.7 + 3 * 1.2 + 3, 1e-6);
    QVERIFY(delivery.picture->meeting.flowM3S == delivery.working->flowM3S);
}

void BuildFlowTest::nothingIsMadeUpWhereNothingIsAsked()
{
    auto build = injectionWithReturn();
    build.expansion.answers.clear(); // No power, and no pump is asked for a flow.
    QVERIFY(build.flow().runs.empty() && !build.flow().notJudged.empty());
    build = gearboxCooler();
    build.stationAt("pump").demand.flow = {};
    QVERIFY(build.flow().runs.empty() && !build.flow().notJudged.empty());
    build = injectionWithReturn();
    build.expansion.fluid = Fluid::Dot4;
    QVERIFY(build.flow().runs.empty() && build.flow().notJudged.empty());
    build = injectionWithReturn();
    build.expansion.answers["fuel-temperature"] = "80 C"; // The tables end at 60.
    QVERIFY(build.flow().runs.empty() && !build.flow().unknown.empty());
}

QTEST_APPLESS_MAIN(BuildFlowTest)
#include "tst_build_carries_its_flow.moc"
