// SPDX-License-Identifier: MIT
//
// Line flow against the worked examples of textbooks, each named with its place and compared within
// the rounding of the printed answer. The examples were read in public re-typed copies, which give
// inputs and answers; the printed books were not seen.

#include "model/fluids/line_flow.h"
#include "model/fluids/measure.h"

#include <QTest>

#include <cmath>
#include <numbers>

using namespace flarestock;

namespace {

constexpr double Foot = 0.3048;
constexpr double Inch = 0.0254;
constexpr double Psi = 6894.757293168361;
constexpr double PoundForceSecondPerFoot2 = 47.88025898033584; // 1 lbf·s/ft² in Pa·s
constexpr double SlugPerFoot3 = 515.3788183931961;             // in kg/m³

double flowOf(double velocity, double bore)
{
    return velocity * std::numbers::pi / 4 * bore * bore;
}

bool isWithin(double computed, double published, double percent)
{
    return std::abs(computed - published) <= std::abs(published) * percent / 100;
}

LineFlow line(double density, double viscosity, double bore)
{
    LineFlow result;
    result.densityKgM3 = density;
    result.viscosityPaS = viscosity;
    result.boreM = bore;
    return result;
}

} // namespace

#define NEAR(computed, published, percent)                                                         \
    QVERIFY2(isWithin(computed, published, percent), qPrintable(QString::number(computed, 'g', 12)))

class TextbookLineTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void reynoldsNumber();
    void laminarPipes();
    void turbulentPipes();
    void reservoirWithFrictionEndsAndLevel();
    void houseWaterWithEverything();
    void frictionOfSmoothPlasticPipe();
    void oilLineWithGlobeValve();
};

void TextbookLineTest::reynoldsNumber()
{
    // Fluid Power with Applications, examples 4-1 and 4-2, p. 132: 774 and 250.
    LineFlow oil = line(900, 100e-6 * 900, Inch);
    oil.flowM3S = flowOf(10 * Foot, Inch);
    NEAR(lineLoss(oil).value().reynolds, 774, 0.1);
    LineFlow thick = line(897, 0.001 * 897, 0.05);
    thick.flowM3S = flowOf(5, 0.05);
    NEAR(lineLoss(thick).value().reynolds, 250, 0.01);
    // Fluid Power: Theory and Applications, 4th ed., example 3.4, p. 46: 40 gpm, 3.14 in²: 4.08
    // ft/s.
    LineFlow wide = line(870, 0.03, std::sqrt(4 * 3.14 / std::numbers::pi) * Inch);
    wide.flowM3S = Measure::parse("40 gpm").value().si;
    NEAR(lineLoss(wide).value().velocityMS / Foot, 4.08, 0.3);
}

void TextbookLineTest::laminarPipes()
{
    // Fluid Mechanics: Fundamentals and Applications, example 8-1, p. 349: glycerin, 1291 kPa.
    LineFlow glycerin = line(1252, 0.3073, 0.04);
    glycerin.lengthM = 70;
    glycerin.flowM3S = flowOf(3, 0.04);
    NEAR(lineLoss(glycerin).value().frictionPa, 1291e3, 0.2);
    QCOMPARE(lineLoss(glycerin).value().regime, Regime::Laminar);
    // The same, example 8-2, p. 350: water in a 3 mm pipe, 43.7 kPa.
    LineFlow water = line(1000, 1.519e-3, 0.003);
    water.lengthM = 9;
    water.flowM3S = flowOf(0.9, 0.003);
    NEAR(lineLoss(water).value().frictionPa, 43.7e3, 0.2);
    // Fundamentals of Fluid Mechanics, example 8.2, p. 412: oil, Re 2.87, 20.4 kPa.
    LineFlow oil = line(900, 0.40, 0.02);
    oil.lengthM = 10;
    oil.flowM3S = 2.0e-5;
    NEAR(lineLoss(oil).value().reynolds, 2.87, 0.5);
    NEAR(lineLoss(oil).value().frictionPa, 20.4e3, 0.3);
    // Fluid Mechanics for Chemical Engineers, example 6.1, p. 180: 0.77 psi per 100 ft.
    LineFlow crude = line(62.3 * 0.45359237 / std::pow(Foot, 3), 0.05, 3.068 * Inch);
    crude.lengthM = 100 * Foot;
    crude.flowM3S = Measure::parse("50 gpm").value().si;
    NEAR(lineLoss(crude).value().frictionPa / Psi, 0.77, 0.5);
    // Transport Processes and Unit Operations, example 2.10-1, p. 85: 0.0655 m of water through a
    // capillary at 0.275 m/s.
    LineFlow capillary = line(996, 1.13e-3, 2.22e-3);
    capillary.lengthM = 0.317;
    capillary.flowM3S = flowOf(0.275, 2.22e-3);
    NEAR(lineLoss(capillary).value().frictionPa / (996 * 9.80665), 0.0655, 0.5);
}

void TextbookLineTest::turbulentPipes()
{
    // Fluid Mechanics: Fundamentals and Applications, example 8-3, p. 360: stainless pipe, f 0.0172
    // and 96.5 kPa (the book reads the Moody chart).
    LineFlow steel = line(999, 1.138e-3, 0.05);
    steel.roughnessM = 2e-6;
    steel.flowM3S = 0.006;
    steel.lengthM = 60;
    NEAR(lineLoss(steel).value().frictionFactor, 0.0172, 0.5);
    NEAR(lineLoss(steel).value().frictionPa, 96.5e3, 0.6);
    QCOMPARE(lineLoss(steel).value().regime, Regime::Turbulent);
    // Fluid Mechanics for Chemical Engineers, example 6.4, p. 188: Fanning factor 0.0091 at 300
    // gpm, a quarter of Darcy's, and 484 psi in 3000 ft.
    LineFlow crude = line(62.3 * 0.45359237 / std::pow(Foot, 3), 0.05, 3.068 * Inch);
    crude.roughnessM = 0.0018 * Inch;
    crude.flowM3S = Measure::parse("300 gpm").value().si;
    crude.lengthM = 3000 * Foot;
    NEAR(lineLoss(crude).value().frictionFactor / 4, 0.0091, 1.5);
    NEAR(lineLoss(crude).value().frictionPa / Psi, 484, 1.7);
}

void TextbookLineTest::reservoirWithFrictionEndsAndLevel()
{
    // Fluid Mechanics: Fundamentals and Applications, example 8-8, p. 377: f 0.0315; the upper
    // reservoir stands 31.8 m high, of which 4 m are the lower one.
    LineFlow pipe = line(999.7, 1.307e-3, 0.05);
    pipe.roughnessM = 0.26e-3;
    pipe.flowM3S = 0.006;
    pipe.lengthM = 89;
    pipe.minorK = 0.5 + 2 * 0.3 + 0.2 + 1.06;
    pipe.riseM = 4;
    const LineLoss loss = lineLoss(pipe).value();
    NEAR(loss.frictionFactor, 0.0315, 0.5);
    NEAR(loss.dropPa / (999.7 * 9.80665), 31.8, 0.6);
}

void TextbookLineTest::houseWaterWithEverything()
{
    // Fundamentals of Fluid Mechanics, example 8.8, p. 451: Re 45,000; pressure at the start 10.7
    // psi without losses, 21.3 with friction, 30.5 with friction and fittings. The book reads
    // f = 0.0215 for drawn tubing of 0.000005 ft, and the jet from the 0.50 in faucet leaves at
    // more than the velocity in the line: that part is added here as the book does.
    const double bore = 0.0625 * Foot;
    LineFlow house = line(1.94 * SlugPerFoot3, 2.34e-5 * PoundForceSecondPerFoot2, bore);
    house.flowM3S = 0.0267 * std::pow(Foot, 3);
    house.roughnessM = 0.000005 * Foot;
    house.riseM = 20 * Foot;
    house.lengthM = 60 * Foot;
    house.minorK = 10 + 4 * 1.5 + 2;
    const LineLoss loss = lineLoss(house).value();
    const double faucet = std::pow(0.0625 * 12 / 0.50, 4);
    const double jetPa = house.densityKgM3 / 2 * loss.velocityMS * loss.velocityMS * (faucet - 1);
    NEAR(loss.reynolds, 45000, 0.5);
    NEAR(loss.frictionFactor, 0.0215, 1.0);
    NEAR((loss.levelPa + jetPa) / Psi, 10.7, 0.5);
    NEAR((loss.levelPa + jetPa + loss.frictionPa) / Psi, 21.3, 0.9);
    NEAR((loss.dropPa + jetPa) / Psi, 30.5, 0.7);
}

void TextbookLineTest::frictionOfSmoothPlasticPipe()
{
    // Flow of Fluids Through Valves, Fittings and Pipe (Technical Paper 410), problem 7.1: Re
    // 100,600, f 0.0179. Water at 30 °C: 995.7 kg/m³, 0.80 mPa·s (from memory).
    LineFlow plastic = line(995.7, 8.0e-4, 0.0525);
    plastic.flowM3S = Measure::parse("200 L/min").value().si;
    plastic.lengthM = 1;
    NEAR(lineLoss(plastic).value().reynolds, 100600, 0.6);
    NEAR(lineLoss(plastic).value().frictionFactor, 0.0179, 0.6);
}

void TextbookLineTest::oilLineWithGlobeValve()
{
    // The same paper, problem 7.8: 600 barrels (of 42 US gallons) an hour of oil, 6382 Pa.
    LineFlow oil = line(869.2, 0.130, 0.2027);
    oil.flowM3S = 600 * 42 * Measure::parse("1 gph").value().si;
    oil.lengthM = 60;
    oil.minorK = 340 * 0.014;
    NEAR(lineLoss(oil).value().dropPa, 6382, 0.6);
}

QTEST_APPLESS_MAIN(TextbookLineTest)
#include "tst_line_flow_agrees_with_textbooks.moc"
