// SPDX-License-Identifier: MIT
//
// Pumps: read on their curves and never beyond; the operating point against the root of a quadratic
// equation; two side by side; power and current; the surge tank's balance.

#include "model/fluids/pump/operating_point.h"
#include "model/fluids/pump/pump_power.h"
#include "model/fluids/pump/surge_tank.h"
#include "tests/fluids/table_file.h"

#include <QTest>

#include <limits>

using namespace flarestock;

namespace {

constexpr double LitreHour = 1e-3 / 3600;

/// 280 L/h at 2 bar, 20 L/h less for each bar, up to 6 bar; a fifth less at 12 V.
PumpCurve pump()
{
    std::vector<PumpCurve::Point> points;
    for (const double bar : {2.0, 3.0, 4.0, 6.0}) {
        const double flow = (320 - 20 * bar) * LitreHour;
        points.push_back({bar * 1e5, 13.5, flow});
        points.push_back({bar * 1e5, 12, 0.8 * flow});
    }
    return PumpCurve::of(points).value();
}

/// Of the problem's system, so that it meets the pump in a quadratic equation: 3 bar, and 1 bar
/// more at 400 L/h, by the square.
Result<double> squareSystem(double flowM3S)
{
    const double part = flowM3S / (400 * LitreHour);
    return 3e5 + 1e5 * part * part;
}

/// The flow in L/h where 320 - 20 (3 + (q/400)²) n-fold is q: of n such pumps.
double flowByHand(double pumps)
{
    // 20 n / 160000 q² + q - 260 n = 0
    const double square = 20 * pumps / 160000;
    return (-1 + std::sqrt(1 + 4 * square * 260 * pumps)) / (2 * square);
}

} // namespace

class PumpsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readBetweenThePoints();
    void neverReadBeyondThem();
    void curvesThatCannotBe();
    void meetsTheSystem();
    void twoSideBySide();
    void meetsALineWhereTheFlowTurns();
    void outsideTheCurveItSaysWhichWay();
    void pictureHasBothCurves();
    void crossingFindsAKnownNumber();
    void powerAndCurrent();
    void surgeTank();
};

void PumpsTest::readBetweenThePoints()
{
    // By hand: 255 L/h at 3 bar and 235 at 4: 241.0 at 3.7.
    const auto small = PumpCurve::of({{4e5, 13.5, 235 * LitreHour}, {3e5, 13.5, 255 * LitreHour}});
    NEAR_PERCENT(small.value().flowM3S(3.7e5, 13.5).value() / LitreHour, 241.0, 1e-9);
    NEAR_PERCENT(pump().flowM3S(5e5, 13.5).value() / LitreHour, 220, 1e-9);
    NEAR_PERCENT(pump().flowM3S(2e5, 12).value() / LitreHour, 224, 1e-9);
    NEAR_PERCENT(pump().flowM3S(3e5, 12.75).value() / LitreHour, 0.9 * 260, 1e-9);
}

void PumpsTest::neverReadBeyondThem()
{
    const PumpCurve curve = pump();
    for (const double bar : {2.0, 6.0})
        QVERIFY(curve.flowM3S(bar * 1e5, 13.5).has_value());
    for (const double bar : {1.999, 6.001, std::numeric_limits<double>::quiet_NaN()})
        QVERIFY(!curve.flowM3S(bar * 1e5, 13.5).has_value());
    for (const double volts : {11.9, 13.6})
        QVERIFY(!curve.flowM3S(3e5, volts).has_value());
    // Measured to 4 bar at one voltage only: known between the voltages to 4 bar only.
    const auto uneven = PumpCurve::of({{2e5, 12, 200 * LitreHour},
                                       {4e5, 12, 150 * LitreHour},
                                       {3e5, 14, 250 * LitreHour},
                                       {6e5, 14, 200 * LitreHour}})
                            .value();
    QCOMPARE(uneven.pressureRange(13).value().lowPa, 3e5);
    QCOMPARE(uneven.pressureRange(13).value().highPa, 4e5);
    QVERIFY(!uneven.flowM3S(4.5e5, 13) && uneven.flowM3S(4.5e5, 14));
}

void PumpsTest::curvesThatCannotBe()
{
    QVERIFY(!PumpCurve::of({}).has_value());
    QVERIFY(!PumpCurve::of({{3e5, 13.5, 1e-4}}).has_value());
    QVERIFY(!PumpCurve::of({{3e5, 13.5, 1e-4}, {4e5, 12, 1e-4}}).has_value());
    QVERIFY(!PumpCurve::of({{3e5, 13.5, 1e-4}, {3e5, 13.5, 2e-4}}).has_value());
    QVERIFY(!PumpCurve::of({{3e5, 13.5, 1e-4}, {4e5, 13.5, 1.1e-4}}).has_value());
    QVERIFY(!PumpCurve::of({{-1, 13.5, 1e-4}, {4e5, 13.5, 0.9e-4}}).has_value());
    QVERIFY(
        PumpCurve::of({{3e5, 0, 1e-4}, {4e5, 0, 1e-4}}).has_value()); // A gear pump hardly falls.
}

void PumpsTest::meetsTheSystem()
{
    const auto point = operatingPoint({{pump()}, 13.5}, squareSystem).value();
    NEAR_PERCENT(point.flowM3S / LitreHour, flowByHand(1), 1e-8);
    NEAR_PERCENT(point.pressurePa, squareSystem(point.flowM3S).value(), 1e-8);
}

void PumpsTest::twoSideBySide()
{
    const PumpSet two{{pump(), pump()}, 13.5};
    NEAR_PERCENT(flowTogether(two, 5e5).value(), 2 * pump().flowM3S(5e5, 13.5).value(), 1e-9);
    const auto point = operatingPoint(two, squareSystem).value();
    NEAR_PERCENT(point.flowM3S / LitreHour, flowByHand(2), 1e-8);
    // More than one, less than twice: the line takes its share.
    QVERIFY(flowByHand(2) > flowByHand(1) && flowByHand(2) < 2 * flowByHand(1));
    // The curve of a smaller one ends first.
    const auto small = PumpCurve::of({{1e5, 13.5, 2e-5}, {4e5, 13.5, 1e-5}}).value();
    QCOMPARE(commonRange({{pump(), small}, 13.5}).value().lowPa, 2e5);
    QCOMPARE(commonRange({{pump(), small}, 13.5}).value().highPa, 4e5);
    QVERIFY(!flowTogether({{pump(), small}, 13.5}, 5e5).has_value());
}

void PumpsTest::meetsALineWhereTheFlowTurns()
{
    // Thin line of thick oil: at Re 2040 friction jumps up, and there the two curves meet.
    WholeLine line;
    line.densityKgM3 = 850;
    line.viscosityPaS = 0.01;
    line.pieces = {{StraightLine{0.01, 20, 0}}};
    const double turning = 2040 * 0.01 / 850 / 0.01 * std::acos(-1.0) / 4 * 0.01 * 0.01;
    const SystemCurve system = systemOf(line, 0);
    const double below = system(turning * 0.9999).value();
    const double above = system(turning * 1.0001).value();
    QVERIFY(above > 1.5 * below);
    const double middle = (below + above) / 2;
    const auto flat = PumpCurve::of(
        {{0, 0, turning * 1.01}, {middle, 0, turning}, {2 * middle, 0, turning * 0.5}});
    const auto point = operatingPoint({{flat.value()}, 0}, system).value();
    NEAR_PERCENT(point.flowM3S, turning, 0.01);
    QVERIFY(point.pressurePa > below && point.pressurePa < above);
}

void PumpsTest::outsideTheCurveItSaysWhichWay()
{
    const PumpSet one{{pump()}, 13.5};
    const auto high = operatingPoint(one, [](double) -> Result<double> { return 7e5; });
    QVERIFY(high.error().wrong.find("more pressure") != std::string::npos);
    const auto low = operatingPoint(one, [](double) -> Result<double> { return 1e5; });
    QVERIFY(low.error().wrong.find("less pressure") != std::string::npos);
    const auto none =
        operatingPoint(one, [](double) -> Result<double> { return problem("line", "x"); });
    QCOMPARE(none.error().thing, std::string("line"));
    QVERIFY(!operatingPoint({{}, 13.5}, squareSystem).has_value());
    QVERIFY(!operatingPoint({{pump()}, 15}, squareSystem).has_value());
    const Curve noNumber = [](double) -> Result<double> { return std::nan(""); };
    QVERIFY(!operatingPoint(one, noNumber).has_value());
}

void PumpsTest::pictureHasBothCurves()
{
    const PumpSet one{{pump()}, 13.5};
    const PumpPicture picture = pumpPicture(one, squareSystem, 21).value();
    QCOMPARE(picture.pumps.size(), std::size_t(21));
    QCOMPARE(picture.system.size(), std::size_t(21));
    for (std::size_t at = 1; at < 21; ++at) {
        QVERIFY(picture.pumps[at].pressurePa > picture.pumps[at - 1].pressurePa);
        QVERIFY(picture.pumps[at].flowM3S < picture.pumps[at - 1].flowM3S);
        QVERIFY(picture.system[at].flowM3S > picture.system[at - 1].flowM3S);
        QVERIFY(picture.system[at].pressurePa > picture.system[at - 1].pressurePa);
    }
    QCOMPARE(picture.system.front().flowM3S, 0.0);
    QCOMPARE(picture.system.back().flowM3S, picture.pumps.front().flowM3S);
    NEAR_PERCENT(picture.meeting.flowM3S / LitreHour, flowByHand(1), 1e-8);
}

void PumpsTest::crossingFindsAKnownNumber()
{
    // cos x = x at 0.739085133215160641… (OEIS A003957).
    const Curve curve = [](double x) -> Result<double> { return std::cos(x) - x; };
    NEAR_PERCENT(crossing(curve, {0, 1}).value().at.value(), 0.739085133215160641, 1e-10);
    QVERIFY(!crossing(curve, {0, 0.5}).value().at.has_value());
    QCOMPARE(crossing([](double x) -> Result<double> { return x - 2; }, {2, 3}).value().at, 2.0);
    QCOMPARE(crossing([](double x) -> Result<double> { return x - 3; }, {2, 3}).value().at, 3.0);
}

void PumpsTest::powerAndCurrent()
{
    // By hand: 4 bar × 255 L/h = 28.33 W; at 30 % and 13.5 V 7.0 A.
    const PumpDuty duty{4e5, 255 * LitreHour};
    NEAR_PERCENT(hydraulicPowerW(duty).value(), 28.33, 0.02);
    NEAR_PERCENT(pumpCurrentA(duty, 0.30, 13.5).value(), 7.0, 0.1);
    QVERIFY(!drivingPowerW(duty, 0) && !drivingPowerW(duty, 1.1) && !pumpCurrentA(duty, 0.3, 0));
    QVERIFY(!hydraulicPowerW({-1, 1}).has_value());
}

void PumpsTest::surgeTank()
{
    // By hand: 20 L/h too little out of 1.5 L lasts 270 s; without lift 1.5 L at 120 L/h 45 s.
    SurgeTank tank{100 * LitreHour, 255 * LitreHour, 120 * LitreHour, 1.5e-3, true};
    const auto short20 = surgeTankBalance(tank).value();
    NEAR_PERCENT(short20.surplusM3S, -20 * LitreHour, 1e-9);
    NEAR_PERCENT(short20.emptyAfterS.value(), 270, 1e-9);
    NEAR_PERCENT(short20.lastsWithoutLiftS.value(), 45, 1e-9);
    tank.liftM3S = 150 * LitreHour;
    NEAR_PERCENT(surgeTankBalance(tank).value().surplusM3S, 30 * LitreHour, 1e-9);
    QVERIFY(!surgeTankBalance(tank).value().emptyAfterS.has_value());
    // Returned to the main tank, all that the pressure pump takes has to be lifted.
    tank.returnsHere = false;
    NEAR_PERCENT(surgeTankBalance(tank).value().leastLiftM3S, 255 * LitreHour, 1e-9);
    NEAR_PERCENT(surgeTankBalance(tank).value().lastsWithoutLiftS.value(), 1.5 / 255 * 3600, 1e-9);
    tank.takenM3S = 119 * LitreHour;
    QVERIFY(!surgeTankBalance(tank).has_value());
    tank = {0, 0, 0, 0, true};
    QVERIFY(!surgeTankBalance(tank).has_value());
}

QTEST_APPLESS_MAIN(PumpsTest)
#include "tst_pumps.moc"
