// SPDX-License-Identifier: MIT
//
// Tees, inlets, engines, filters, wires and fuel against the worked examples of textbooks, of an
// advisory circular and of an emission handbook (component_examples.csv).

#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/filter/beta.h"
#include "model/fluids/line/tee.h"
#include "model/fluids/liquids/vapour_pressure.h"
#include "model/fluids/pump/inlet.h"
#include "model/fluids/wiring/fuse.h"
#include "model/fluids/wiring/wire.h"
#include "tests/fluids/textbook_examples.h"

#include <numbers>

using namespace flarestock;

namespace {

constexpr double Foot = 0.3048;
constexpr double Psi = 6894.757293168361;
constexpr double HourS = 3600;
constexpr double WaterKgM3 = 1000; ///< As the books take it for a specific gravity of 1.

double tee(TeeLeg leg)
{
    return teeCoefficient({TeeWay::Converging, leg, 100.0 / 400, 90}).value();
}

double suctionHeadFt()
{
    PumpInlet inlet;
    inlet.tankPa = 5 * Psi;
    inlet.vapourPa = 0.256 * Psi;
    inlet.densityKgM3 = 62.364 * 0.45359237 / (Foot * Foot * Foot);
    inlet.headM = -25 * Foot;
    inlet.lossPa = 6 * Foot * inlet.densityKgM3 * 9.80665;
    return inletMargin(inlet).value().npshM / Foot;
}

/// kg/kWh of fuel that was measured.
double consumption(double massKgS, double powerKw)
{
    return consumptionIn(consumptionMeasured(massKgS, powerKw * 1e3).value(),
                         ConsumptionUnit::GramPerKilowattHour) /
           1e3;
}

double drop(int gauge, double feet)
{
    return measuredDropV({wireLimit(gauge).value().ohmPerM.value(), feet * Foot, 20}).value();
}

double trueVapourPsi(double reidPsi, double fahrenheit)
{
    return vapourPressure(Fluid::Gasoline, (fahrenheit - 32) / 1.8, reidPsi * Psi).value().pascal /
           Psi;
}

const Examples All{
    {"P35", [] { return tee(TeeLeg::Branch); }},
    {"P36", [] { return tee(TeeLeg::Run); }},
    {"P45", suctionHeadFt},
    {"P46", [] { return consumption(6.6e-3 * 0.78 * WaterKgM3 / HourS, 17.593); }},
    {"P47", [] { return consumption(0.0475 / 60, 7.333); }},
    {"P48", [] { return consumption(100e-6 * 0.70 * WaterKgM3 / 9.5, 101.7); }},
    {"P49",
     [] {
         return consumptionIn(consumptionOfEfficiency(0.28, 44e6).value(),
                              ConsumptionUnit::GramPerKilowattHour) /
                1e3;
     }},
    {"P50", [] { return consumption(0.56 / 20 / 60, 6); }},
    {"P51",
     [] {
         const double brakeKw = (400 - 50) * std::numbers::pi * 0.80 * 1000 / 60 / 1e3;
         return consumption(4.2 / HourS, brakeKw);
     }},
    {"P52", [] { return betaOf(36815, 6347).value(); }},
    {"P53", [] { return 100 * efficiencyOfBeta(betaOf(36815, 6347).value()).value(); }},
    {"P54", [] { return drop(6, 107); }},
    {"P55", [] { return drop(4, 90); }},
    {"P56", [] { return drop(10, 39); }},
    {"P57", [] { return drop(10, 156); }},
    {"P58", [] { return drop(10, 273); }},
    {"P59", [] { return drop(10, 19.5); }},
    {"P60", [] { return reidConstants(13 * Psi).a; }},
    {"P61", [] { return reidConstants(13 * Psi).bRankine; }},
    {"P62", [] { return trueVapourPsi(13, 60); }},
    {"P63", [] { return reidConstants(10 * Psi).a; }},
    {"P64", [] { return reidConstants(10 * Psi).bRankine; }},
    {"P65", [] { return trueVapourPsi(10, 60); }},
    {"P66", [] { return reidConstants(7 * Psi).a; }},
    {"P67", [] { return reidConstants(7 * Psi).bRankine; }},
    {"P68", [] { return trueVapourPsi(7, 60); }},
    {"P69", [] { return trueVapourPsi(13, 100); }},
};

} // namespace

class ComponentExamplesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyRowIsWorkedOut() { QVERIFY(areTheSame(TableFile("component_examples.csv"), All)); }
    void comesOutAsPrinted_data() { addExampleRows(TableFile("component_examples.csv")); }
    void comesOutAsPrinted() { COMES_OUT_AS_PRINTED(All); }
};

QTEST_APPLESS_MAIN(ComponentExamplesTest)
#include "tst_component_examples_of_textbooks.moc"
