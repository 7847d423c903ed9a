// SPDX-License-Identifier: MIT
//
// What the regulation and the published tables say of seals and fluids.

#include "model/fluids/compatibility.h"

#include <QTest>

using namespace flarestock;

class SealsAgainstFluidsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bears_data();
    void bears();
    void everyFluidHasARowWithItsSource();
    void unknownMaterialIsUnknown();
};

void SealsAgainstFluidsTest::bears_data()
{
    QTest::addColumn<QString>("fluid");
    QTest::addColumn<QString>("material");
    QTest::addColumn<int>("expected");
    const auto row = [](const char *fluid, const char *material, Bears expected) {
        QTest::addRow("%s in %s", material, fluid)
            << QString::fromLatin1(fluid) << QString::fromLatin1(material) << int(expected);
    };
    // 49 CFR 571.116 S4: brake fluid is for SBR, EPR, CR and NR; mineral oil must not touch EPR.
    row("DOT 4", "EPDM", Bears::Good);
    row("DOT 4", "CR", Bears::Good);
    row("mineral brake fluid", "EPDM", Bears::Never);
    // O-ring maker's design guide (2007): EPDM never in petroleum; NBR and FKM avoid glycol brake
    // fluid; VMQ not for fuels.
    row("gasoline", "EPDM", Bears::Never);
    row("engine oil", "EPDM", Bears::Never);
    row("DOT 3", "NBR", Bears::Never);
    row("DOT 5.1", "FKM", Bears::Never);
    row("gasoline", "VMQ", Bears::Never);
    // ORNL/TM-2012/88: fluorocarbon swells least of the elastomers in ethanol blends.
    row("E85", "FKM", Bears::Good);
    row("E85", "NBR", Bears::Fair);
    // EPDM maker's table: glycol and water, excellent.
    row("water-glycol", "epdm", Bears::Good);
}

void SealsAgainstFluidsTest::bears()
{
    QFETCH(QString, fluid);
    QFETCH(QString, material);
    QFETCH(int, expected);
    const auto stands =
        compatibility(parseFluid(fluid.toStdString()).value(), material.toStdString());
    QCOMPARE(int(stands.bears), expected);
}

void SealsAgainstFluidsTest::everyFluidHasARowWithItsSource()
{
    int swept = 0;
    for (const auto fluid : allFluids()) {
        for (const auto material : sealMaterials()) {
            const auto stands = compatibility(fluid, material);
            QVERIFY(stands.bears != Bears::Unknown);
            QVERIFY(!stands.source.empty());
            ++swept;
        }
    }
    QCOMPARE(swept, 12 * 8);
}

void SealsAgainstFluidsTest::unknownMaterialIsUnknown()
{
    QVERIFY(compatibility(Fluid::Gasoline, "cork").bears == Bears::Unknown);
    QVERIFY(compatibility(Fluid::Gasoline, "").bears == Bears::Unknown);
}

QTEST_APPLESS_MAIN(SealsAgainstFluidsTest)
#include "tst_seals_against_fluids.moc"
