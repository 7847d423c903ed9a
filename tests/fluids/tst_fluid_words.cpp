// SPDX-License-Identifier: MIT
//
// Every fluid has one word, which reads back, and stands in the right group.

#include "model/fluids/fluid.h"

#include <QTest>

#include <set>
#include <string>

using namespace flarestock;

class FluidTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyWordReadsBack();
    void caseBlanksAndHyphensAreForgiven();
    void unknownFluidNamesTheKnown();
    void brakeFluidsAndFuelsAreApart();
};

void FluidTest::everyWordReadsBack()
{
    QCOMPARE(allFluids().size(), FluidCount);
    std::set<std::string> words;
    for (const Fluid fluid : allFluids()) {
        words.insert(std::string(text(fluid)));
        const auto read = parseFluid(text(fluid));
        QVERIFY2(read && *read == fluid, std::string(text(fluid)).c_str());
    }
    QCOMPARE(words.size(), FluidCount);
}

void FluidTest::caseBlanksAndHyphensAreForgiven()
{
    QVERIFY(parseFluid(" e 85 ") == Fluid::E85);
    QVERIFY(parseFluid("DOT5.1") == Fluid::Dot51);
    QVERIFY(parseFluid("Water Glycol") == Fluid::WaterGlycol);
    QVERIFY(parseFluid("dot 5") == Fluid::Dot5);
}

void FluidTest::unknownFluidNamesTheKnown()
{
    const auto read = parseFluid("milk");
    QVERIFY(!read.has_value());
    for (const Fluid fluid : allFluids())
        QVERIFY(read.error().remedy.find(text(fluid)) != std::string::npos);
    QVERIFY(!parseFluid("").has_value());
}

void FluidTest::brakeFluidsAndFuelsAreApart()
{
    int brake = 0;
    int fuel = 0;
    for (const Fluid fluid : allFluids()) {
        QVERIFY(!(isBrakeFluid(fluid) && isFuel(fluid)));
        brake += isBrakeFluid(fluid);
        fuel += isFuel(fluid);
    }
    QCOMPARE(brake, 5);
    QCOMPARE(fuel, 4);
}

QTEST_APPLESS_MAIN(FluidTest)
#include "tst_fluid_words.moc"
