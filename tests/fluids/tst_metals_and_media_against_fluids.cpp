// SPDX-License-Identifier: MIT
//
// What abstracts, regulation and practice say of metals and filter media in fluids. Aluminium in
// highly concentrated alcohol fuels: SAE 2005-01-3708; aluminium and plain steel in methanol
// blends: SAE 930447 (both by their abstracts). Paper needs a glue of its own to stand methanol:
// SAE 930990. What is from memory or common practice is called so in its row.

#include "model/fluids/attack/medium.h"
#include "model/fluids/attack/metal.h"
#include "model/fluids/attack/seal_heat.h"
#include "model/fluids/demand/usual_duty.h"
#include "model/fluids/filter/clean_loss.h"

#include <QTest>

using namespace flarestock;

class MetalsAndMediaTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void metals_data();
    void metals();
    void media_data();
    void media();
    void careFollowsTheMedium();
    void usualDutiesHaveTheirSource();
    void budgetsAreSmallerBeforeThePump();
    void sealsHaveTheirRange();
};

void MetalsAndMediaTest::metals_data()
{
    QTest::addColumn<std::string>("metal");
    QTest::addColumn<std::string>("fluid");
    QTest::addColumn<int>("wears");
    const auto row = [](const char *metal, const char *fluid, Wears wears) {
        QTest::addRow("%s in %s", metal, fluid)
            << std::string(metal) << std::string(fluid) << int(wears);
    };
    row("aluminium", "methanol", Wears::Badly);
    row("Aluminium", "E85", Wears::Slowly);
    row("steel", "methanol", Wears::Badly);
    row("brass", "E85", Wears::Badly); // From memory.
    row("stainless", "methanol", Wears::Unsaid);
    row("aluminium", "gasoline", Wears::Unsaid);
    row("copper-nickel", "DOT 4", Wears::Unsaid);
    row("", "methanol", Wears::Unsaid);
}

void MetalsAndMediaTest::metals()
{
    QFETCH(std::string, metal);
    QFETCH(std::string, fluid);
    QFETCH(int, wears);
    const auto wear = metalIn(parseFluid(fluid).value(), metal);
    QCOMPARE(int(wear.wears), wears);
    QCOMPARE(wear.source.empty(), wear.wears == Wears::Unsaid);
    QCOMPARE(wear.why.empty(), wear.wears == Wears::Unsaid);
}

void MetalsAndMediaTest::media_data()
{
    QTest::addColumn<std::string>("medium");
    QTest::addColumn<std::string>("fluid");
    QTest::addColumn<int>("bears");
    const auto row = [](const char *medium, const char *fluid, Bears bears) {
        QTest::addRow("%s in %s", medium, fluid)
            << std::string(medium) << std::string(fluid) << int(bears);
    };
    row("paper", "methanol", Bears::Never);
    row("paper", "E85", Bears::Never); // Common practice, no source.
    row("paper", "gasoline", Bears::Good);
    row("Stainless mesh", "methanol", Bears::Good);
    row("microglass", "E85", Bears::Fair);
    row("bronze", "methanol", Bears::Fair); // From memory.
    row("paper", "water-glycol", Bears::Unknown);
    row("felt", "gasoline", Bears::Unknown);
}

void MetalsAndMediaTest::media()
{
    QFETCH(std::string, medium);
    QFETCH(std::string, fluid);
    QFETCH(int, bears);
    const auto stands = mediumIn(parseFluid(fluid).value(), medium);
    QCOMPARE(int(stands.bears), bears);
    QCOMPARE(stands.source.empty(), stands.bears == Bears::Unknown);
}

void MetalsAndMediaTest::careFollowsTheMedium()
{
    QVERIFY(careOf("stainless mesh").washed); // Common practice, no source.
    for (const char *medium : {"paper", "microglass", "bronze", "sock"}) {
        QVERIFY(!careOf(medium).washed);
        QVERIFY(!careOf(medium).said.empty() && !careOf(medium).source.empty());
    }
    QVERIFY(careOf("felt").said.empty());
}

void MetalsAndMediaTest::usualDutiesHaveTheirSource()
{
    // From memory: a hard stop makes 7 to 10 MPa.
    QVERIFY(usualDuty("brakes")->pressureKpa == 10000.0);
    for (const char *system : {"oil", "gearbox", "coolant", "brakes"}) {
        const auto duty = usualDuty(system);
        QVERIFY(duty && !duty->source.empty() && !duty->status.empty());
        QVERIFY(duty->pressureKpa.value_or(1) > 0 && duty->temperatureC.value_or(1) > 0);
    }
    QVERIFY(!usualDuty("fuel"));
    QVERIFY(!usualDuty(""));
}

void MetalsAndMediaTest::budgetsAreSmallerBeforeThePump()
{
    const auto &suction = cleanLossBudget(FilterPlace::Suction);
    const auto &pressure = cleanLossBudget(FilterPlace::Pressure);
    QVERIFY(suction.pascal > 0 && suction.pascal < pressure.pascal);
    QVERIFY(!suction.source.empty() && !pressure.source.empty());
}

void MetalsAndMediaTest::sealsHaveTheirRange()
{
    // A hydraulics table file that names its standards: NBR -30 to 100 °C, FKM -20 to 200 °C.
    QVERIFY(sealHeat("NBR")->lowC == -30 && sealHeat("NBR")->highC == 100);
    QVERIFY(sealHeat("FKM type A")->lowC == -20 && sealHeat("FKM type A")->highC == 200);
    QVERIFY(!sealHeat("CR") && !sealHeat(""));
}

QTEST_APPLESS_MAIN(MetalsAndMediaTest)
#include "tst_metals_and_media_against_fluids.moc"
