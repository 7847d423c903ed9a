// SPDX-License-Identifier: MIT
//
// Promise: a tank whose level alone does not push half as much again as the engine burns is told
// (14 CFR 23.955), oil that a pump sends round is judged by its velocity, and what states no flow
// is said once and not passed over.

#include "flow_by_hand.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class LevelAndOilTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void gravityPushesHalfAsMuchAgain_data();
    void gravityPushesHalfAsMuchAgain();
    void oilThatAPumpSendsRoundIsJudgedByVelocity();
    void whatStatesNoFlowIsSaidOnce();
};

void LevelAndOilTest::gravityPushesHalfAsMuchAgain_data()
{
    // 100 hp × 0.50 lb/h = 50 lb/h: 30.4 L/h of 745 kg/m³, half as much again 45.7 (14 CFR 23.955).
    // Half a metre of it is worth ρ g h = 3.65 kPa. 3 m and an entrance of 0.5 by python-fluids
    // 1.0.22: 9.89 kPa in 4 mm, so that only 25.7 L/h come through; 1.46 kPa in 6 mm.
    QTest::addColumn<double>("boreMm");
    QTest::addColumn<double>("riseM");
    QTest::addColumn<double>("wantedKpa");
    QTest::addColumn<QString>("severity");
    QTest::addColumn<QString>("words");
    QTest::newRow("wide enough") << 6.0 << -0.5 << 0.0 << ""
                                 << "";
    QTest::newRow("too thin") << 4.0 << -0.5 << 0.0 << "stop"
                              << "pushes 26 L/h where 46 L/h";
    QTest::newRow("not above") << 6.0 << 0.1 << 0.0 << "stop"
                               << "does not stand above";
    QTest::newRow("the carburettor wants more") << 6.0 << -0.5 << 20.0 << "caution"
                                                << "its tank's level leaves 2.2 kPa there";
    QTest::newRow("nobody says how high") << 6.0 << 0.0 << 0.0 << "note"
                                          << "not be judged in full";
}

void LevelAndOilTest::gravityPushesHalfAsMuchAgain()
{
    QFETCH(double, boreMm);
    QFETCH(double, riseM);
    QFETCH(double, wantedKpa);
    QFETCH(QString, severity);
    QFETCH(QString, words);
    auto build = gravityFeed();
    build.hose("tank-carburettor", {boreMm, 3000});
    build.placed("tank-carburettor").riseM = riseM;
    if (wantedKpa > 0)
        build.partAt("carburettor").facts = FuelUserFacts{wantedKpa, 60.0, {}};
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == (severity.isEmpty() ? 0 : 1), listed(found).c_str());
    if (found.empty())
        return;
    QCOMPARE(QString::fromStdString(std::string(text(found.front().severity))), severity);
    QVERIFY2(found.front().about.find(words.toStdString()) != std::string::npos,
             listed(found).c_str());
}

void LevelAndOilTest::oilThatAPumpSendsRoundIsJudgedByVelocity()
{
    // 4 Q / π d²: 400 L/h in 10.3 mm run at 1.33 m/s: more than the 1.2 of an oil suction in
    // hydraulics (4 ft/s), less than the 4.6 and 3 of pressure and return. In 7.2 mm at 2.73 m/s:
    // beyond the 1.5, and not judged.
    for (const double boreMm : {10.3, 7.2}) {
        auto build = gearboxCooler();
        build.hose("filter-pump", {boreMm, 300, 8});
        const auto found = build.flowFindings();
        QVERIFY2(found.size() == 2, listed(found).c_str()); // The filter's loss is not known.
        QVERIFY2(found.front().severity == (boreMm > 8 ? Severity::Caution : Severity::Stop),
                 listed(found).c_str());
        QCOMPARE(found.front().where, std::string("filter-pump"));
        QVERIFY2(found.front().text.find("could not be judged") != std::string::npos,
                 listed(found).c_str());
        QVERIFY(found.back().severity == Severity::Note);
    }
}

void LevelAndOilTest::whatStatesNoFlowIsSaidOnce()
{
    auto build = gearboxCooler();
    build.stationAt("pump").demand.flow = {};
    auto found = build.flowFindings();
    QVERIFY2(found.size() == 1, listed(found).c_str());
    QVERIFY(found.front().severity == Severity::Note);
    QVERIFY2(found.front().text.find("how much gear oil goes round") != std::string::npos,
             listed(found).c_str());
    build.expansion.fluid = Fluid::Dot4; // Nothing flows in brakes.
    QVERIFY(build.flowFindings().empty());
    auto fuel = injectionWithReturn();
    fuel.expansion.answers.clear();
    found = fuel.flowFindings();
    QVERIFY2(found.size() == 1 && found.front().about == "Flow could not be judged",
             listed(found).c_str());
}

QTEST_APPLESS_MAIN(LevelAndOilTest)
#include "tst_level_and_oil_pump_are_judged.moc"
