// SPDX-License-Identifier: MIT
//
// Lines against the worked examples of textbooks (line_examples.csv): bores, velocities, Reynolds
// numbers, friction in all regimes, fittings, levels, gravity flow.

#include "model/fluids/line/sizing.h"
#include "model/fluids/line/whole_line.h"
#include "model/fluids/pump/operating_point.h"
#include "model/fluids/pump/pump_power.h"
#include "tests/fluids/textbook_examples.h"

#include <numbers>

using namespace flarestock;

namespace {

constexpr double Foot = 0.3048;
constexpr double Inch = 0.0254;
constexpr double Gravity = 9.80665;
constexpr double Psi = 6894.757293168361;
constexpr double GallonMinute = 3.785411784e-3 / 60;
constexpr double BarrelHour = 42 * 3.785411784e-3 / 3600;
constexpr double Horsepower = 745.69987158227022;
constexpr double PoundPerFoot3 = 0.45359237 / (Foot * Foot * Foot);
constexpr double PoundForcePerFoot2 = 47.88025898033584; // 1 lbf/ft² in Pa
constexpr double SlugPerFoot3 = 515.3788183931961;
constexpr double Round = std::numbers::pi / 4;

LineFlow line(double density, double viscosity, double bore)
{
    LineFlow result;
    result.densityKgM3 = density;
    result.viscosityPaS = viscosity;
    result.boreM = bore;
    return result;
}

LineFlow atVelocity(LineFlow line, double velocity)
{
    line.flowM3S = velocity * Round * line.boreM * line.boreM;
    return line;
}

LineLoss lossOf(const LineFlow &line)
{
    return lineLoss(line).value();
}

/// The same with a friction factor that the book read off its chart.
LineLoss lossWithFactor(LineFlow line, double factor)
{
    line.minorK += factor * line.lengthM / line.boreM;
    line.lengthM = 0;
    return lossOf(line);
}

/// Fluid Mechanics: Fundamentals and Applications.
LineFlow glycerin()
{
    LineFlow pipe = atVelocity(line(1252, 0.3073, 0.04), 3);
    pipe.lengthM = 70;
    return pipe;
}

LineFlow capillaryWater()
{
    LineFlow pipe = atVelocity(line(1000, 1.519e-3, 0.003), 0.9);
    pipe.lengthM = 9;
    return pipe;
}

LineFlow stainlessPipe()
{
    LineFlow pipe = line(999, 1.138e-3, 0.05);
    pipe.roughnessM = 2e-6;
    pipe.flowM3S = 0.006;
    pipe.lengthM = 60;
    return pipe;
}

LineFlow reservoirPipe()
{
    LineFlow pipe = line(999.7, 1.307e-3, 0.05);
    pipe.roughnessM = 0.26e-3;
    pipe.flowM3S = 0.006;
    pipe.lengthM = 89;
    pipe.minorK = 0.5 + 2 * 0.3 + 0.2 + 1.06;
    pipe.riseM = 4;
    return pipe;
}

/// Fundamentals of Fluid Mechanics.
LineFlow thickOil()
{
    LineFlow pipe = line(900, 0.40, 0.02);
    pipe.lengthM = 10;
    pipe.flowM3S = 2.0e-5;
    return pipe;
}

LineFlow houseWater()
{
    LineFlow house = line(1.94 * SlugPerFoot3, 2.34e-5 * PoundForcePerFoot2, 0.0625 * Foot);
    house.flowM3S = 0.0267 * Foot * Foot * Foot;
    house.roughnessM = 0.000005 * Foot;
    house.riseM = 20 * Foot;
    return house;
}

/// The pressure at the start; the jet of the 0.50 in faucet leaves faster than the line flows, and
/// that part the book adds.
double housePsi(const LineLoss &loss)
{
    const double faucet = std::pow(0.0625 * 12 / 0.50, 4);
    return (loss.dropPa +
            1.94 * SlugPerFoot3 / 2 * loss.velocityMS * loss.velocityMS * (faucet - 1)) /
           Psi;
}

LineFlow houseWithFriction()
{
    LineFlow house = houseWater();
    house.lengthM = 60 * Foot;
    return house;
}

LineFlow houseWithAll()
{
    LineFlow house = houseWithFriction();
    house.minorK = 10 + 4 * 1.5 + 2;
    return house;
}

/// Fluid Mechanics for Chemical Engineers.
LineFlow crudeOil(double gallonsAMinute, double feet)
{
    LineFlow crude = line(62.3 * PoundPerFoot3, 0.05, 3.068 * Inch);
    crude.flowM3S = gallonsAMinute * GallonMinute;
    crude.lengthM = feet * Foot;
    return crude;
}

LineFlow roughCrudeOil()
{
    LineFlow crude = crudeOil(300, 3000);
    crude.roughnessM = 0.0018 * Inch;
    return crude;
}

double psiAtThirteenFeet(double k)
{
    LineFlow pipe = atVelocity(line(62.3 * PoundPerFoot3, 1e-3, 3.068 * Inch), 13 * Foot);
    pipe.minorK = k;
    return lossOf(pipe).minorPa / Psi;
}

/// Velocity at which friction takes what a fall of 10 m gives.
double gravityVelocity()
{
    const Curve excess = [](double velocity) {
        LineFlow pipe = atVelocity(line(720, 0.4e-3, 0.1), velocity);
        pipe.lengthM = 100;
        pipe.riseM = -10;
        return Result<double>(lossWithFactor(pipe, 4 * 0.005).dropPa);
    };
    return crossing(excess, {0.1, 10}).value().at.value();
}

/// Velocity at which the capillary loses 0.0655 m of water.
double capillaryVelocity()
{
    const Curve excess = [](double velocity) {
        LineFlow pipe = atVelocity(line(996, 1.13e-3, 2.22e-3), velocity);
        pipe.lengthM = 0.317;
        return Result<double>(lossOf(pipe).frictionPa - 996 * Gravity * 0.0655);
    };
    return crossing(excess, {0.01, 1}).value().at.value();
}

/// Technical Paper 410.
LineFlow globeValveLine()
{
    LineFlow oil = line(869.2, 0.130, 0.2027);
    oil.flowM3S = 600 * BarrelHour;
    oil.lengthM = 60;
    oil.minorK = 340 * 0.014;
    return oil;
}

LineFlow plasticPipe()
{
    LineFlow pipe = line(995.7, 8.0e-4, 0.0525);
    pipe.flowM3S = 0.2 / 60;
    return pipe;
}

LineFlow oilPipeline()
{
    LineFlow pipe = line(54.64 * PoundPerFoot3, 12.5e-3, 12.09 * Inch);
    pipe.flowM3S = 1900 * BarrelHour;
    pipe.roughnessM = 0.0022 * Inch;
    pipe.lengthM = 50 * 5280 * Foot;
    pipe.riseM = 2000 * Foot;
    return pipe;
}

double teeRunHeadFt()
{
    WholeLine water;
    water.densityKgM3 = 998;
    water.viscosityPaS = 1e-3;
    water.flowM3S = 300 * GallonMinute;
    water.pieces = {{Tee{4.026 * Inch, TeeWay::Converging, TeeLeg::Run, 100 * GallonMinute}}};
    return wholeLineLoss(water).value().dropPa / (998 * Gravity) / Foot;
}

/// Flow at which 11.5 ft of water are used up by two bores after each other; their narrowing and
/// the exit are the whole line's own.
double gravityGallonsAMinute()
{
    const double wide = 3.068 * Inch;
    const double narrow = 2.067 * Inch;
    const double rough = 0.0018 * Inch;
    WholeLine water;
    water.densityKgM3 = 62.364 * PoundPerFoot3;
    water.viscosityPaS = 1.1e-3;
    water.pieces = {{EntryOrExit{wide, Opening::SharpEntrance}, -11.5 * Foot},
                    {Adapter{wide, 60 * 0.018}},
                    {Adapter{wide, 8 * 0.018}},
                    {StraightLine{wide, 10 * Foot, rough}},
                    {StraightLine{narrow, 20 * Foot, rough}},
                    {EntryOrExit{narrow, Opening::Exit}}};
    const auto found = crossing(systemOf(water, 0), {10 * GallonMinute, 500 * GallonMinute});
    return found.value().at.value() / GallonMinute;
}

double bore(double gallonsAMinute, double feetASecond)
{
    return boreForVelocityM(gallonsAMinute * GallonMinute, feetASecond * Foot).value() / Inch;
}

Examples sizesAndLaminar()
{
    return {
        {"P01", [] { return bore(30, 20); }},
        {"P02", [] { return bore(18, 10); }},
        {"P03",
         [] {
             LineFlow pipe = line(870, 0.03, std::sqrt(3.14 / Round) * Inch);
             pipe.flowM3S = 40 * GallonMinute;
             return lossOf(pipe).velocityMS / Foot;
         }},
        {"P04",
         [] { return lossOf(atVelocity(line(900, 100e-6 * 900, Inch), 10 * Foot)).reynolds; }},
        {"P05", [] { return lossOf(atVelocity(line(897, 1e-3 * 897, 0.05), 5)).reynolds; }},
        {"P06", [] { return lossOf(glycerin()).frictionPa / 1e3; }},
        {"P07", [] { return lossOf(capillaryWater()).frictionPa / 1e3; }},
        {"P08", [] { return lossOf(capillaryWater()).frictionPa / (1000 * 9.81); }},
        {"P09", [] { return lossOf(thickOil()).frictionPa / 1e3; }},
        {"P10", [] { return lossOf(thickOil()).reynolds; }},
        {"P11",
         [] { // The density does not matter while it is laminar.
             LineFlow pipe = line(900, 3.8e-3 * PoundForcePerFoot2, 3 * Inch);
             pipe.flowM3S = 0.5 * Foot * Foot * Foot;
             pipe.lengthM = 6 * Foot;
             return lossOf(pipe).frictionPa / PoundForcePerFoot2;
         }},
        {"P12", [] { return lossOf(crudeOil(50, 100)).frictionPa / Psi; }},
        {"P13",
         [] {
             const double density = 0.85 * 62.4 * PoundPerFoot3;
             LineFlow pipe =
                 line(density, 0.08 * Inch * Inch * density, std::sqrt(0.785 / Round) * Inch);
             pipe.flowM3S = 15 * GallonMinute;
             pipe.lengthM = 400 * Foot;
             return lossOf(pipe).frictionPa / Psi;
         }},
        {"P14", capillaryVelocity},
        {"P15",
         [] {
             LineFlow pipe = atVelocity(line(897, 1e-3 * 897, 0.05), 5);
             pipe.lengthM = 50;
             return lossOf(pipe).frictionPa / (897 * Gravity);
         }},
    };
}

Examples turbulent()
{
    return {
        {"P16", [] { return lossOf(stainlessPipe()).frictionFactor; }},
        {"P17", [] { return lossOf(stainlessPipe()).frictionPa / 1e3; }},
        {"P18",
         [] {
             return hydraulicPowerW({lossOf(stainlessPipe()).frictionPa, 0.006}).value();
         }},
        {"P19", [] { return lossOf(reservoirPipe()).frictionFactor; }},
        {"P20", [] { return lossOf(reservoirPipe()).dropPa / (999.7 * Gravity); }},
        {"P21", [] { return lossOf(roughCrudeOil()).frictionFactor / 4; }},
        {"P22",
         [] {
             const LineFlow crude = atVelocity(roughCrudeOil(), 13 * Foot);
             return lossWithFactor(crude, 4 * 0.0091).dropPa / Psi;
         }},
        {"P22c", [] { return lossOf(roughCrudeOil()).dropPa / Psi; }},
        {"P23", [] { return frictionFactor(1e5, 2e-4) / 4; }},
        {"P24", gravityVelocity},
        {"P25", [] { return gravityVelocity() * Round * 0.1 * 0.1; }},
        {"P26", [] { return lossOf(houseWater()).reynolds; }},
        {"P27", [] { return housePsi(lossOf(houseWater())); }},
        {"P28", [] { return housePsi(lossWithFactor(houseWithFriction(), 0.0215)); }},
        {"P28c", [] { return housePsi(lossOf(houseWithFriction())); }},
        {"P29", [] { return housePsi(lossWithFactor(houseWithAll(), 0.0215)); }},
        {"P29c", [] { return housePsi(lossOf(houseWithAll())); }},
        {"P38", [] { return lossOf(plasticPipe()).reynolds; }},
        {"P39", [] { return lossOf(plasticPipe()).frictionFactor; }},
        {"P40", [] { return lossOf(globeValveLine()).dropPa; }},
        {"P40t", [] { return lossOf(globeValveLine()).dropPa; }},
        {"P41",
         [] { return lossOf(oilPipeline()).dropPa / (54.64 * PoundPerFoot3 * Gravity) / Foot; }},
        {"P42",
         [] {
             const LineFlow pipe = oilPipeline();
             return drivingPowerW({lossOf(pipe).dropPa, pipe.flowM3S}, 0.67).value() / Horsepower;
         }},
    };
}

Examples fittings()
{
    return {
        {"P30",
         [] {
             LineFlow pipe = line(900, 0.03, Inch);
             pipe.flowM3S = 30 * GallonMinute;
             pipe.minorK = 10;
             return lossOf(pipe).minorPa / (900 * Gravity) / Foot;
         }},
        {"P31",
         [] {
             LineFlow pipe = line(900, 100e-6 * 900, Inch);
             pipe.flowM3S = 30 * GallonMinute;
             return equivalentLengthM(10, Inch, lossOf(pipe).frictionFactor).value() / Foot;
         }},
        {"P32", [] { return equivalentLengthM(2.5, Inch, 0.045).value() / Foot; }},
        {"P33", [] { return psiAtThirteenFeet(1.5); }},
        {"P34", [] { return psiAtThirteenFeet(27.56); }},
        {"P37", teeRunHeadFt},
        {"P43",
         [] {
             const double pascal = 421 * Foot * 62.298 * PoundPerFoot3 * Gravity;
             return drivingPowerW({pascal, 100 * GallonMinute}, 0.70).value() / Horsepower;
         }},
        {"P44", gravityGallonsAMinute},
    };
}

const Examples &all()
{
    static const Examples All = [] {
        Examples examples = sizesAndLaminar();
        examples.merge(turbulent());
        examples.merge(fittings());
        return examples;
    }();
    return All;
}

} // namespace

class LineExamplesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyRowIsWorkedOut() { QVERIFY(areTheSame(TableFile("line_examples.csv"), all())); }
    void comesOutAsPrinted_data() { addExampleRows(TableFile("line_examples.csv")); }
    void comesOutAsPrinted() { COMES_OUT_AS_PRINTED(all()); }
};

QTEST_APPLESS_MAIN(LineExamplesTest)
#include "tst_line_examples_of_textbooks.moc"
