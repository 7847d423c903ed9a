// SPDX-License-Identifier: MIT
//
// Wiring against ASTM B258 (a table computed apart, and GNU units), against the tables of FAA
// AC 43.13-1B, and the fuse between pump and wire.

#include "model/fluids/wiring/fuse.h"
#include "model/fluids/wiring/wire.h"
#include "tests/fluids/gnu_units.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

namespace {

} // namespace

class WiringTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void gaugesOfTheTable();
    void gaugesOfGnuUnits();
    void strandedWireIsWorseThanTheFormula();
    void warmCopperResistsMore();
    void bothWaysCount();
    void fuseBetweenPumpAndWire();
    void whatCannotBeIsRefused();
};

void WiringTest::gaugesOfTheTable()
{
    const TableFile table("wire_gauges.csv");
    QCOMPARE(table.size(), std::size_t(14));
    int limits = 0;
    for (std::size_t row = 0; row < table.size(); ++row) {
        const int gauge = static_cast<int>(table.number(row, "awg"));
        // Six figures in the table.
        NEAR_PERCENT(gaugeDiameterM(gauge).value() * 1e3, table.number(row, "diameter_mm"), 1e-3);
        NEAR_PERCENT(gaugeDiameterM(gauge).value() / 0.0254, table.number(row, "diameter_in"),
                     1e-3);
        NEAR_PERCENT(gaugeAreaM2(gauge).value() * 1e6, table.number(row, "area_mm2"), 1e-3);
        PumpWire kilometre;
        kilometre.areaM2 = gaugeAreaM2(gauge).value();
        kilometre.thereM = 1000;
        NEAR_PERCENT(voltageDrop(kilometre).value().ohm, table.number(row, "ohm_per_km_20C"), 1e-3);
        const std::string fuse = table.cell(row, "fuse_A");
        QCOMPARE(wireLimit(gauge).has_value(), !fuse.empty());
        if (fuse.empty())
            continue;
        QCOMPARE(wireLimit(gauge).value().fuseA, table.number(row, "fuse_A"));
        const auto breaker = wireLimit(gauge).value().breakerA;
        QCOMPARE(breaker.has_value(), !table.cell(row, "breaker_A").empty());
        QVERIFY(!breaker || *breaker == table.number(row, "breaker_A"));
        ++limits;
    }
    QCOMPARE(limits, 13);
}

void WiringTest::gaugesOfGnuUnits()
{
    for (const int gauge : {22, 18, 14, 10, 6})
        NEAR_PERCENT(gaugeDiameterM(gauge).value() * 1e3,
                     gnuUnits(QStringLiteral("wiregauge(%1)").arg(gauge), QStringLiteral("mm")),
                     1e-9);
}

void WiringTest::strandedWireIsWorseThanTheFormula()
{
    // AC 43.13-1B: tinned stranded wire 11 to 27 % above solid copper.
    int swept = 0;
    for (const int gauge : {4, 6, 10, 12}) {
        const double solid = copperResistivityOhmM(20).value() / gaugeAreaM2(gauge).value();
        const double worse = wireLimit(gauge).value().ohmPerM.value() / solid;
        QVERIFY(worse > 1.10 && worse < 1.28);
        ++swept;
    }
    QCOMPARE(swept, 4);
}

void WiringTest::warmCopperResistsMore()
{
    // AC 43.13-1B: L2 = 254.5 L1 / (234.5 + T2), the length that loses the same volts.
    for (const double temperatureC : {-20.0, 20.0, 60.0, 105.0})
        NEAR_PERCENT(copperResistivityOhmM(20).value() /
                         copperResistivityOhmM(temperatureC).value(),
                     254.5 / (234.5 + temperatureC), 1e-9);
    // Temperature coefficient of annealed copper 0.00393 a kelvin at 20 °C (IACS).
    NEAR_PERCENT(copperResistivityOhmM(21).value() / copperResistivityOhmM(20).value() - 1, 0.00393,
                 0.1);
}

void WiringTest::bothWaysCount()
{
    // By hand: 1.7241e-8 × 10 / 2.0809e-6 = 0.08285 Ω; at 7 A 0.580 V.
    PumpWire wire;
    wire.areaM2 = gaugeAreaM2(14).value();
    wire.thereM = 5;
    wire.backM = 5;
    wire.amperes = 7;
    NEAR_PERCENT(voltageDrop(wire).value().volts, 0.580, 0.1);
    wire.backM = 0;
    NEAR_PERCENT(voltageDrop(wire).value().volts, 0.290, 0.1);
    wire.contactOhm = 0.02;
    NEAR_PERCENT(voltageDrop(wire).value().volts, 0.430, 0.1);
}

void WiringTest::fuseBetweenPumpAndWire()
{
    // 1.25 × 7 A (common practice) and the circular's 15 A for No. 14.
    const auto window = fuseWindow(14, 7).value();
    NEAR_PERCENT(window.fromA, 8.75, 1e-9);
    QCOMPARE(window.toA, 15.0);
    QCOMPARE(window.fuseA.value(), 10.0);
    QCOMPARE(fuseWindow(14, 12).value().fuseA.value(), 15.0);
    QVERIFY(!fuseWindow(14, 12.1).value().fuseA.has_value()); // Above 15 the wire is too thin.
    QCOMPARE(fuseWindow(12, 12.1).value().fuseA.value(), 20.0);
}

void WiringTest::whatCannotBeIsRefused()
{
    QVERIFY(!gaugeDiameterM(41) && !gaugeDiameterM(-4) && !gaugeAreaM2(99));
    QVERIFY(!wireLimit(24) && !wireLimit(3) && !fuseWindow(24, 1) && !fuseWindow(14, 0));
    QVERIFY(!copperResistivityOhmM(-61) && !copperResistivityOhmM(261));
    PumpWire wire;
    QVERIFY(!voltageDrop(wire).has_value());
    wire.areaM2 = 1e-6;
    QVERIFY(voltageDrop(wire).has_value());
    for (double PumpWire::*field :
         {&PumpWire::thereM, &PumpWire::backM, &PumpWire::amperes, &PumpWire::contactOhm}) {
        PumpWire wrong = wire;
        wrong.*field = -1;
        QVERIFY(!voltageDrop(wrong).has_value());
    }
    QVERIFY(!measuredDropV({-1, 1, 1}) && !measuredDropV({1, -1, 1}) && !measuredDropV({1, 1, -1}));
}

QTEST_APPLESS_MAIN(WiringTest)
#include "tst_wiring.moc"
