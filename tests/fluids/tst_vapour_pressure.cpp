// SPDX-License-Identifier: MIT
//
// Vapour pressure against US EPA AP-42, chapter 7.1 (gasoline), against published Reid vapour
// pressures (methanol), and never beyond what the formulas are good for.

#include "model/fluids/liquids/vapour_pressure.h"
#include "model/fluids/liquids/volatility_class.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr double Psi = 6894.757293168361;

double celsius(double fahrenheit)
{
    return (fahrenheit - 32) / 1.8;
}

double pascal(Fluid fuel, double temperatureC, std::optional<double> reidPa = std::nullopt)
{
    return vapourPressure(fuel, temperatureC, reidPa).value().pascal;
}

} // namespace

class VapourPressureTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void gasolineAgreesWithTheFormula();
    void methanolHasItsReidVapourPressure();
    void e85IsNeverJudgedBelowItsParts();
    void dieselHardlyBoils();
    void boilsWhereItsPressureIs();
    void classesSayTheirPressure();
    void whatCannotBeSaidIsRefused();
};

void VapourPressureTest::gasolineAgreesWithTheFormula()
{
    const TableFile table("gasoline_vapour_pressure.csv");
    QCOMPARE(table.size(), std::size_t(30));
    for (std::size_t row = 0; row < table.size(); ++row) {
        const double reidPa = table.number(row, "RVP_psi") * Psi;
        // The table has five to seven figures.
        NEAR_PERCENT(reidConstants(reidPa).a, table.number(row, "A"), 1e-4);
        NEAR_PERCENT(reidConstants(reidPa).bRankine, table.number(row, "B_degR"), 1e-4);
        NEAR_PERCENT(pascal(Fluid::Gasoline, celsius(table.number(row, "T_F")), reidPa) / Psi,
                     table.number(row, "TVP_psia"), 1e-3);
    }
}

void VapourPressureTest::methanolHasItsReidVapourPressure()
{
    // US DOE Alternative Fuels Data Center: 4.6 psi at 100 °F; the pressure of a pure liquid there.
    NEAR_PERCENT(pascal(Fluid::Methanol, celsius(100)) / Psi, 4.6, 1.0);
    // Handbook correlation: 1.87 psi at 20 °C. It boils at 64.7 °C under one atmosphere.
    NEAR_PERCENT(pascal(Fluid::Methanol, 20) / Psi, 1.87, 1e-6);
    NEAR_PERCENT(pascal(Fluid::Methanol, 64.7), 101325, 1e-6);
    double before = 0;
    for (double atC = 20; atC <= 64.7; atC += 0.1) {
        QVERIFY(pascal(Fluid::Methanol, atC) > before);
        before = pascal(Fluid::Methanol, atC);
    }
}

void VapourPressureTest::e85IsNeverJudgedBelowItsParts()
{
    for (const double reidPsi : {5.5, 9.0, 15.0}) {
        for (double atC = 0; atC <= 60; atC += 1) {
            const auto blend = vapourPressure(Fluid::E85, atC, reidPsi * Psi).value();
            QVERIFY(blend.atMost && blend.status == "estimate");
            QVERIFY(blend.pascal >= pascal(Fluid::Gasoline, atC, reidPsi * Psi) * 0.999999);
        }
    }
    // From 100 °F to 60 °C it rises as ethanol does: 2.3 psi (US DOE) to 6.82 psi (handbook).
    NEAR_PERCENT(pascal(Fluid::E85, 60, 9 * Psi) / pascal(Fluid::E85, celsius(100), 9 * Psi),
                 6.82 / 2.3, 3.0);
}

void VapourPressureTest::dieselHardlyBoils()
{
    // US DOE: Reid vapour pressure below 0.2 psi.
    const auto diesel = vapourPressure(Fluid::Diesel, 30).value();
    QVERIFY(diesel.atMost);
    NEAR_PERCENT(diesel.pascal / Psi, 0.2, 1e-6);
}

void VapourPressureTest::boilsWhereItsPressureIs()
{
    // Methanol boils at 64.7 °C under one atmosphere (handbook); gasoline where AP-42 says so.
    NEAR_PERCENT(boilingTemperatureC(Fluid::Methanol, 101325).value(), 64.7, 1e-6);
    const TableFile table("gasoline_vapour_pressure.csv");
    for (std::size_t row = 0; row < table.size(); ++row) {
        const auto boils = boilingTemperatureC(Fluid::Gasoline, table.number(row, "TVP_psia") * Psi,
                                               table.number(row, "RVP_psi") * Psi);
        if (table.number(row, "T_F") < 140) // The hottest that the formula is good for.
            QVERIFY(std::abs(boils.value() - celsius(table.number(row, "T_F"))) < 1e-3);
    }
    // At 2000 m (79.5 kPa) it boils colder, and the blend no later than its gasoline would.
    const double sea = boilingTemperatureC(Fluid::Gasoline, 101325, 9 * Psi).value();
    const double high = boilingTemperatureC(Fluid::Gasoline, 79495, 9 * Psi).value();
    QVERIFY(high < sea - 5);
    QVERIFY(boilingTemperatureC(Fluid::E85, 79495, 9 * Psi).value() <= high);
    QVERIFY(!boilingTemperatureC(Fluid::Gasoline, 300e3, 9 * Psi).has_value());
    QVERIFY(!boilingTemperatureC(Fluid::Gasoline, 101325).has_value());
    QVERIFY(!boilingTemperatureC(Fluid::Methanol, 5e3).has_value());
    QVERIFY(!boilingTemperatureC(Fluid::Methanol, 0).has_value());
    QVERIFY(!boilingTemperatureC(Fluid::Diesel, 0.2 * Psi).has_value());
    QVERIFY(!boilingTemperatureC(Fluid::Dot4, 101325).has_value());
}

void VapourPressureTest::classesSayTheirPressure()
{
    // ASTM D5798-15, by the US DOE: class 3 of E85 8.5 to 12.0 psi.
    const auto spring = volatilityClass(Fluid::E85, "3").value();
    NEAR_PERCENT(spring.lowPa.value() / Psi, 8.5, 1e-6);
    NEAR_PERCENT(spring.highPa / Psi, 12.0, 1e-6);
    // ASTM D4814 (from memory): gasoline of class D 13.5 psi at most.
    NEAR_PERCENT(volatilityClass(Fluid::Gasoline, "d").value().highPa / Psi, 13.5, 1e-6);
    QVERIFY(!volatilityClass(Fluid::Gasoline, "1") && !volatilityClass(Fluid::Diesel, "A"));
    for (const VolatilityClass &each : volatilityClasses()) {
        QVERIFY(!each.status.empty() && !each.source.empty());
        QVERIFY(vapourPressure(each.fuel, 20, each.highPa).has_value());
    }
    QCOMPARE(volatilityClasses().size(), std::size_t(10));
}

void VapourPressureTest::whatCannotBeSaidIsRefused()
{
    QVERIFY(!vapourPressure(Fluid::Gasoline, 20).has_value());
    QVERIFY(!vapourPressure(Fluid::Gasoline, 61, 9 * Psi).has_value());
    QVERIFY(!vapourPressure(Fluid::Gasoline, -18, 9 * Psi).has_value());
    QVERIFY(!vapourPressure(Fluid::Gasoline, 20, 0.9 * Psi).has_value());
    QVERIFY(!vapourPressure(Fluid::Gasoline, 20, 21 * Psi).has_value());
    QVERIFY(!vapourPressure(Fluid::E85, 20).has_value());
    QVERIFY(!vapourPressure(Fluid::Methanol, 19).has_value());
    QVERIFY(!vapourPressure(Fluid::Methanol, 65).has_value());
    QVERIFY(!vapourPressure(Fluid::Diesel, 60).has_value());
    QVERIFY(!vapourPressure(Fluid::EngineOil, 20).has_value());
}

QTEST_APPLESS_MAIN(VapourPressureTest)
#include "tst_vapour_pressure.moc"
