// SPDX-License-Identifier: MIT
//
// The inlet of a pump against an example worked out apart and the standard atmosphere as
// python-fluids has it; the return of a bypass regulator against python-fluids.

#include "model/fluids/line/line_budget.h"
#include "model/fluids/liquids/vapour_pressure.h"
#include "model/fluids/pump/atmosphere.h"
#include "model/fluids/pump/bypass.h"
#include "model/fluids/pump/inlet.h"
#include "tests/fluids/python_fluids.h"
#include "tests/fluids/table_file.h"

#include <QTest>

#include <limits>

using namespace flarestock;

namespace {

constexpr double Psi = 6894.757293168361;
constexpr double LitreHour = 1e-3 / 3600;

WholeLine returnLine(double boreM)
{
    WholeLine line;
    line.flowM3S = 255 * LitreHour;
    line.densityKgM3 = 745;
    line.viscosityPaS = 0.41e-3;
    line.pieces = {{StraightLine{boreM, 3, 1.5e-6}}, {Adapter{boreM, 4}}};
    return line;
}

} // namespace

class InletAndReturnTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void atmosphereByHeight();
    void warmGasolineBehindItsFilters();
    void heightTakesMargin();
    void narrowReturnLiftsThePressure();
    void whatCannotBeIsRefused();
};

void InletAndReturnTest::atmosphereByHeight()
{
    // ISO 2533 by geopotential height (from memory): 1000 m 89874.6 Pa, 2000 m 79495.2 Pa.
    NEAR_PERCENT(atmospherePa(0).value(), 101325, 1e-9);
    NEAR_PERCENT(atmospherePa(1000).value(), 89874.6, 1e-3);
    NEAR_PERCENT(atmospherePa(2000).value(), 79495.2, 1e-3);
    // The library takes heights by tape: 0.05 % apart in height, less in pressure.
    const double heights[] = {500, 1500, 3000, 4300};
    QStringList asked;
    for (const double height : heights)
        asked << QStringLiteral("f.ATMOSPHERE_1976(Z=%1).P").arg(height);
    const auto answers = pythonFluids(asked);
    for (std::size_t at = 0; at < answers.size(); ++at)
        NEAR_PERCENT(atmospherePa(heights[at]).value(), answers[at], 0.05);
}

void InletAndReturnTest::warmGasolineBehindItsFilters()
{
    // Worked out apart: gasoline of 9 psi Reid at 40 °C (70.6 kPa by AP-42), 350 L/h, 0.8 m of
    // 12.7 mm, K 0.8, level 0.20 m, filter 2 kPa: friction 348 Pa, ends 172 Pa, inlet 100.2 kPa,
    // margin 29.6 kPa, 4.14 m. With a filter of 25 kPa 6.6 kPa and 0.92 m.
    WholeLine line;
    line.flowM3S = 350 * LitreHour;
    line.densityKgM3 = 728;
    line.viscosityPaS = 0.335e-3;
    line.pieces = {{StraightLine{0.0127, 0.8, 1.5e-6}}, {Adapter{0.0127, 0.8}}};
    const WholeLineLoss loss = wholeLineLoss(line).value();
    NEAR_PERCENT(loss.frictionPa, 348, 1.0);
    NEAR_PERCENT(loss.minorPa, 172, 0.5);
    PumpInlet inlet;
    inlet.vapourPa = vapourPressure(Fluid::Gasoline, 40, 9 * Psi).value().pascal;
    inlet.densityKgM3 = 728;
    inlet.headM = 0.20;
    inlet.lossPa = loss.dropPa + 2e3;
    InletMargin margin = inletMargin(inlet).value();
    NEAR_PERCENT(margin.inletPa, 100.2e3, 0.1);
    NEAR_PERCENT(margin.marginPa, 29.6e3, 0.5);
    NEAR_PERCENT(margin.npshM, 4.14, 0.5);
    // Quiet, though an aircraft's pump would be held to more.
    QVERIFY(margin.marginPa > inletBounds().cautionPa &&
            margin.marginPa < inletBounds().aircraftPa);
    inlet.lossPa = loss.dropPa + 25e3;
    margin = inletMargin(inlet).value();
    NEAR_PERCENT(margin.marginPa, 6.6e3, 1.0);
    NEAR_PERCENT(margin.npshM, 0.92, 1.0);
    QVERIFY(margin.marginPa < inletBounds().stopPa);
    // At 60 °C it boils in the open.
    inlet.vapourPa = vapourPressure(Fluid::Gasoline, 60, 9 * Psi).value().pascal;
    inlet.lossPa = 0;
    QVERIFY(inletMargin(inlet).value().marginPa < 0);
}

void InletAndReturnTest::heightTakesMargin()
{
    PumpInlet inlet;
    inlet.vapourPa = 50e3;
    inlet.densityKgM3 = 740;
    const double sea = inletMargin(inlet).value().marginPa;
    inlet.altitudeM = 2000;
    // ISO 2533 (from memory): 101.325 less 79.495 kPa.
    NEAR_PERCENT(sea - inletMargin(inlet).value().marginPa, 101325 - 79495.2, 0.01);
}

void InletAndReturnTest::narrowReturnLiftsThePressure()
{
    // python-fluids: friction in drawn tube and four velocity heads; about 111 kPa in 4.76 mm,
    // 10.6 in 7.94 and 4.6 in 9.53 mm.
    const double bores[] = {0.0047625, 0.0079375, 0.009525};
    const double about[] = {111e3, 10.6e3, 4.6e3};
    QStringList asked;
    for (const double bore : bores)
        asked << QStringLiteral("f.one_phase_dP(m=745*255e-3/3600,rho=745,mu=0.41e-3,D=%1,"
                                "roughness=1.5e-6,L=3)+f.dP_from_K(K=4,rho=745,"
                                "V=255e-3/3600/(3.141592653589793/4*%1**2))")
                     .arg(QString::number(bore, 'g', 17));
    const auto answers = pythonFluids(asked);
    for (std::size_t at = 0; at < answers.size(); ++at) {
        const auto range = bypassRange({20e3, 80e3}, returnLine(bores[at])).value();
        NEAR_PERCENT(range.floorPa, answers[at], 1e-6);
        NEAR_PERCENT(range.floorPa, about[at], 2.0);
        QVERIFY(!range.overItsFlow);         // Its maker says nothing.
        QCOMPARE(range.holds(45e3), at > 0); // Carburettor: about 6.5 psi.
    }
    BypassRegulator regulator{20e3, 80e3, 15e3, 250 * LitreHour};
    const auto real = bypassRange(regulator, returnLine(0.0079375)).value();
    NEAR_PERCENT(real.fromPa, answers[1] + 15e3, 1e-6);
    QVERIFY(!real.holds(25e3) && !real.holds(81e3) && real.holds(80e3));
    QVERIFY(real.overItsFlow && !real.boreAssumed);
    regulator.mostM3S = 260 * LitreHour;
    WholeLine assumed = returnLine(0.0079375);
    std::get<StraightLine>(assumed.pieces.front().piece).boreAssumed = true;
    QVERIFY(!bypassRange(regulator, assumed).value().overItsFlow);
    QVERIFY(bypassRange(regulator, assumed).value().boreAssumed);
    // Nothing of it is left to set.
    QVERIFY(!bypassRange({20e3, 80e3}, returnLine(0.0047625)).value().holds(111e3));
}

void InletAndReturnTest::whatCannotBeIsRefused()
{
    QVERIFY(!atmospherePa(-501) && !atmospherePa(11001));
    QVERIFY(!atmospherePa(std::numeric_limits<double>::quiet_NaN()).has_value());
    PumpInlet inlet;
    QVERIFY(!inletMargin(inlet).has_value()); // No density.
    inlet.densityKgM3 = 740;
    QVERIFY(inletMargin(inlet).has_value());
    inlet.tankPa = -102e3;
    QVERIFY(!inletMargin(inlet).has_value());
    QVERIFY(!bypassRange({80e3, 20e3}, returnLine(0.008)).has_value());
    QVERIFY(!bypassRange({20e3, 80e3, -1}, returnLine(0.008)).has_value());
    QVERIFY(!bypassRange({20e3, 80e3, 0, 0}, returnLine(0.008)).has_value());
    QVERIFY(!bypassRange({20e3, 80e3}, returnLine(0)).has_value());
}

QTEST_APPLESS_MAIN(InletAndReturnTest)
#include "tst_pump_inlet_and_return.moc"
