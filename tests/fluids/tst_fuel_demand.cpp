// SPDX-License-Identifier: MIT
//
// Fuel demand against a table computed apart from the definitions of the units, against GNU units
// for the factors between them, and against US DOE for what alcohol needs more.

#include "model/fluids/demand/fuel_demand.h"
#include "model/fluids/demand/fuel_pressure.h"
#include "model/fluids/demand/specific_consumption.h"
#include "tests/fluids/gnu_units.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr double HourS = 3600;
constexpr double LitreM3 = 1e-3;
constexpr double GallonM3 = 3.785411784e-3;
constexpr double PoundKg = 0.45359237;

} // namespace

class FuelDemandTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void tableOfEngines();
    void horsepowerAreNotTheSame();
    void alcoholNeedsMoreByItsHeatingValue();
    void everyFuelHasItsBand();
    void marginsAreTheRegulations();
    void regulatorFollowsTheManifold();
    void usualPressures();
    void whatCannotBeIsRefused();
};

void FuelDemandTest::tableOfEngines()
{
    const TableFile table("fuel_demand.csv");
    QCOMPARE(table.size(), std::size_t(11));
    for (std::size_t row = 0; row < table.size(); ++row) {
        FuelAsked asked;
        asked.powerW = wattsOf(table.number(row, "power_hp"), PowerUnit::MechanicalHorsepower);
        asked.consumptionKgJ = kilogramPerJoule(table.number(row, "bsfc_lb_hp_h"),
                                                ConsumptionUnit::PoundPerMechanicalHorsepowerHour);
        asked.densityKgM3 = table.number(row, "rho_kg_m3");
        asked.margin = table.number(row, "pump_margin");
        const FuelDemand demand = fuelDemand(asked).value();
        // The table has seven figures or more.
        NEAR_PERCENT(asked.powerW / 1000, table.number(row, "power_kW"), 1e-5);
        NEAR_PERCENT(consumptionIn(asked.consumptionKgJ, ConsumptionUnit::GramPerKilowattHour),
                     table.number(row, "bsfc_g_kWh"), 1e-4);
        NEAR_PERCENT(demand.massKgS * HourS, table.number(row, "mass_kg_h"), 1e-5);
        NEAR_PERCENT(demand.massKgS * HourS / PoundKg, table.number(row, "mass_lb_h"), 1e-5);
        NEAR_PERCENT(demand.volumeM3S * HourS / LitreM3, table.number(row, "volume_L_h"), 1e-5);
        NEAR_PERCENT(demand.volumeM3S * HourS / GallonM3, table.number(row, "volume_US_gph"), 1e-5);
        NEAR_PERCENT(demand.withMarginM3S * HourS / LitreM3, table.number(row, "pump_flow_L_h"),
                     1e-5);
    }
}

void FuelDemandTest::horsepowerAreNotTheSame()
{
    const auto grams = [](ConsumptionUnit unit) {
        return consumptionIn(kilogramPerJoule(1, unit), ConsumptionUnit::GramPerKilowattHour);
    };
    NEAR_PERCENT(grams(ConsumptionUnit::PoundPerMechanicalHorsepowerHour),
                 gnuUnits(QStringLiteral("lb/hp/hour"), QStringLiteral("g/kW/hour")), 1e-10);
    NEAR_PERCENT(grams(ConsumptionUnit::PoundPerMetricHorsepowerHour),
                 gnuUnits(QStringLiteral("lb/metrichorsepower/hour"), QStringLiteral("g/kW/hour")),
                 1e-10);
    NEAR_PERCENT(wattsOf(1, PowerUnit::MechanicalHorsepower),
                 gnuUnits(QStringLiteral("hp"), QStringLiteral("W")), 1e-10);
    NEAR_PERCENT(wattsOf(1, PowerUnit::MetricHorsepower),
                 gnuUnits(QStringLiteral("metrichorsepower"), QStringLiteral("W")), 1e-10);
    // The electric horsepower of 746 W is none of them.
    QVERIFY(!isWithinPercent(wattsOf(1, PowerUnit::MechanicalHorsepower), 746, 0.01));
}

void FuelDemandTest::alcoholNeedsMoreByItsHeatingValue()
{
    // US DOE: 18,676, 11,585 and 8,637 Btu/lb; E85 with 85.8 % of ethanol by mass 1.483 times.
    NEAR_PERCENT(heatingValue(Fluid::E85).value().massRatio, 1.483, 0.05);
    NEAR_PERCENT(heatingValue(Fluid::E85).value().massRatio,
                 18676 / (0.858 * 11585 + 0.142 * 18676), 0.01);
    NEAR_PERCENT(heatingValue(Fluid::Methanol).value().massRatio, 2.162, 0.05);
    NEAR_PERCENT(heatingValue(Fluid::Gasoline).value().joulePerKg / 1e6, 43.44, 0.01);
    for (const Fluid fuel : {Fluid::E85, Fluid::Methanol}) {
        const auto value = heatingValue(fuel).value();
        QVERIFY(value.plausibleLow < value.massRatio && value.massRatio < value.plausibleHigh);
        for (const Induction induction : {Induction::Natural, Induction::Boosted}) {
            const double ratio = consumptionBand(fuel, induction).value().usualKgJ /
                                 consumptionBand(Fluid::Gasoline, induction).value().usualKgJ;
            QVERIFY(ratio > value.plausibleLow && ratio < value.plausibleHigh);
        }
    }
}

void FuelDemandTest::everyFuelHasItsBand()
{
    int swept = 0;
    for (const Fluid fluid : allFluids()) {
        for (const Induction induction : {Induction::Natural, Induction::Boosted}) {
            const auto band = consumptionBand(fluid, induction);
            QCOMPARE(band.has_value(), isFuel(fluid));
            if (!band)
                continue;
            QVERIFY(band->lowKgJ < band->usualKgJ && band->usualKgJ < band->highKgJ);
            QVERIFY(!band->source.empty() && !band->status.empty());
            ++swept;
        }
    }
    QCOMPARE(swept, 8);
}

void FuelDemandTest::marginsAreTheRegulations()
{
    // 14 CFR 23.955 (2014): 125 % by pump, 150 % by gravity.
    QCOMPARE(marginOf(Feed::Pump).factor, 1.25);
    QCOMPARE(marginOf(Feed::Gravity).factor, 1.5);
}

void FuelDemandTest::regulatorFollowsTheManifold()
{
    // Balance of a diaphragm (textbook): base 300 kPa, boost 150 kPa.
    const auto piped = railPressure({300e3, true}, 150e3).value();
    QCOMPARE(piped.railPa, 450e3);
    QCOMPARE(piped.acrossPa, 300e3);
    const auto open = railPressure({300e3, false}, 150e3).value();
    QCOMPARE(open.railPa, 300e3);
    QCOMPARE(open.acrossPa, 150e3);
    const auto idle = railPressure({300e3, true}, -60e3).value();
    QCOMPARE(idle.railPa, 240e3);
    QCOMPARE(idle.acrossPa, 300e3);
    // An orifice gives by the square root: twice the flow at four times the pressure.
    QCOMPARE(injectorFlowM3S(1e-5, 100e3, 400e3).value(), 2e-5);
}

void FuelDemandTest::usualPressures()
{
    // Common practice, no source: 4 to 7 psi, and 3 bar among those of port injection.
    QVERIFY(usualPressure(FuelUser::Carburettor).highPa < 50e3);
    QVERIFY(usualPressure(FuelUser::PortInjection).lowPa < 300e3);
    QVERIFY(usualPressure(FuelUser::PortInjection).highPa > 300e3);
    QVERIFY(usualPressure(FuelUser::ThrottleBodyInjection).lowPa >
            usualPressure(FuelUser::Carburettor).highPa);
}

void FuelDemandTest::whatCannotBeIsRefused()
{
    FuelAsked asked{370e3, 1e-7, 745, 1.25};
    QVERIFY(fuelDemand(asked).has_value());
    for (double FuelAsked::*field : {&FuelAsked::powerW, &FuelAsked::consumptionKgJ,
                                     &FuelAsked::densityKgM3, &FuelAsked::margin}) {
        FuelAsked wrong = asked;
        wrong.*field = 0;
        QVERIFY(!fuelDemand(wrong).has_value());
    }
    asked.margin = 0.99;
    QVERIFY(!fuelDemand(asked).has_value());
    QVERIFY(!consumptionOfEfficiency(1.01, 44e6) && !consumptionOfEfficiency(0.3, 0));
    QVERIFY(!consumptionMeasured(0, 1) && !consumptionMeasured(1, 0));
    QVERIFY(!heatingValue(Fluid::Dot3).has_value());
    QVERIFY(!railPressure({0, true}, 0) && !railPressure({300e3, true}, -102e3));
    QVERIFY(!railPressure({40e3, true}, -60e3) && !railPressure({100e3, false}, 150e3));
    QVERIFY(!injectorFlowM3S(1e-5, 0, 3e5));
}

QTEST_APPLESS_MAIN(FuelDemandTest)
#include "tst_fuel_demand.moc"
