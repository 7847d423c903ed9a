// SPDX-License-Identifier: MIT
//
// The arithmetic of filtration: sieves against python-fluids' table of ASTM E11, scale numbers
// against ISO 4406, beta against worked examples.

#include "model/fluids/filter/beta.h"
#include "model/fluids/filter/cleanliness.h"
#include "model/fluids/filter/sieve.h"
#include "tests/fluids/python_fluids.h"
#include "tests/fluids/table_file.h"

#include <QTest>

#include <limits>

using namespace flarestock;

class FiltrationTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sievesAreThoseOfAstmE11();
    void sieveThatHolds();
    void scaleNumbers_data();
    void scaleNumbers();
    void scaleDoublesFromNumberToNumber();
    void codesOfCounts();
    void codesAreRead();
    void betaAndEfficiency_data();
    void betaAndEfficiency();
    void whatCannotBeIsRefused();
};

void FiltrationTest::sievesAreThoseOfAstmE11()
{
    QCOMPARE(sieves().size(), std::size_t(18));
    QStringList asked;
    for (const Sieve &each : sieves())
        asked << QStringLiteral("[s.opening for s in f.ASTM_E11_sieves.values() "
                                "if s.old_designation == 'No. %1'][0] * 1e6")
                     .arg(each.mesh);
    const auto answers = pythonFluids(asked);
    for (std::size_t at = 0; at < answers.size(); ++at)
        NEAR_PERCENT(sieves()[at].openingUm, answers[at], 1e-6);
    // ASTM E11: No. 100 150 µm, No. 200 75 µm, No. 325 45 µm.
    QCOMPARE(sieveOpeningUm(100).value(), 150.0);
    QCOMPARE(sieveOpeningUm(200).value(), 75.0);
    QCOMPARE(sieveOpeningUm(325).value(), 45.0);
    QVERIFY(!sieveOpeningUm(110).has_value());
}

void FiltrationTest::sieveThatHolds()
{
    QCOMPARE(sieveHolding(100).value().mesh, 170); // 90 µm; No. 140 has 106.
    QCOMPARE(sieveHolding(150).value().mesh, 100);
    QCOMPARE(sieveHolding(20).value().mesh, 635);
    QVERIFY(!sieveHolding(19).has_value());
}

void FiltrationTest::scaleNumbers_data()
{
    QTest::addColumn<double>("perMl");
    QTest::addColumn<int>("scale");
    // ISO 4406, table of scale numbers, as quoted in public: more than … up to and including ….
    QTest::newRow("nothing") << 0.0 << 0;
    QTest::newRow("end of 0") << 0.01 << 0;
    QTest::newRow("end of 6") << 0.64 << 6;
    QTest::newRow("end of 7") << 1.3 << 7;
    QTest::newRow("end of 8") << 2.5 << 8;
    QTest::newRow("end of 9") << 5.0 << 9;
    QTest::newRow("just above 5") << 5.01 << 10;
    QTest::newRow("end of 11") << 20.0 << 11;
    QTest::newRow("end of 16") << 640.0 << 16;
    QTest::newRow("end of 17") << 1300.0 << 17;
    QTest::newRow("just above 1300") << 1300.1 << 18;
    QTest::newRow("end of 18") << 2500.0 << 18;
    QTest::newRow("end of 21") << 20000.0 << 21;
    QTest::newRow("end of 27") << 1.3e6 << 27;
    QTest::newRow("end of 28") << 2.5e6 << 28;
}

void FiltrationTest::scaleNumbers()
{
    QFETCH(const double, perMl);
    QFETCH(const int, scale);
    QCOMPARE(scaleNumber(perMl).value(), scale);
}

void FiltrationTest::scaleDoublesFromNumberToNumber()
{
    // From any count to twice of it is a step of one; at the rounded ends 0.64 to 1.3 none or two.
    int swept = 0;
    for (double perMl = 0.011; perMl < 1.2e6; perMl *= 1.07, ++swept) {
        const int step = scaleNumber(2 * perMl).value() - scaleNumber(perMl).value();
        QVERIFY(step >= 0 && step <= 2);
    }
    QVERIFY(swept > 250);
}

void FiltrationTest::codesOfCounts()
{
    // By the table: 850, 120 and 9 in a millilitre are 17/14/10.
    const auto code = cleanlinessCode({850, 120, 9}).value();
    QCOMPARE(code.text(), std::string("17/14/10"));
    // ISO 4406: below 20 counted particles the number is a least one: 14/12/≥7.
    const auto few = cleanlinessCode({120, 25, 0.9, 20}).value();
    QCOMPARE(few.text(), std::string("14/12/≥7"));
    QVERIFY(few.isAsCleanAs(code) && !code.isAsCleanAs(few));
    QVERIFY(code.isAsCleanAs(code));
}

void FiltrationTest::codesAreRead()
{
    QCOMPARE(CleanlinessCode::parse("18/16/13").value().text(), std::string("18/16/13"));
    QCOMPARE(CleanlinessCode::parse("14/12/>=7").value().text(), std::string("14/12/≥7"));
    for (const char *wrong : {"", "18/16", "18/16/13/10", "18/16/13/", "16/18/13", "18/16/x",
                              "29/16/13", "18/16/-1", "18 / 16 / 13"})
        QVERIFY2(!CleanlinessCode::parse(wrong).has_value(), wrong);
}

void FiltrationTest::betaAndEfficiency_data()
{
    QTest::addColumn<double>("beta");
    QTest::addColumn<double>("percent");
    // ISO 16889: 1 - 1/beta. 5.8 is from Fluid Power: Theory and Applications, examples 6.3, 6.4.
    QTest::newRow("nothing held") << 1.0 << 0.0;
    QTest::newRow("1.5") << 1.5 << 33.33333;
    QTest::newRow("half held") << 2.0 << 50.0;
    QTest::newRow("4") << 4.0 << 75.0;
    QTest::newRow("5.8") << 5.8 << 82.75862;
    QTest::newRow("20") << 20.0 << 95.0;
    QTest::newRow("75") << 75.0 << 98.66667;
    QTest::newRow("200") << 200.0 << 99.5;
    QTest::newRow("1000") << 1000.0 << 99.9;
    QTest::newRow("5000") << 5000.0 << 99.98;
}

void FiltrationTest::betaAndEfficiency()
{
    QFETCH(const double, beta);
    QFETCH(const double, percent);
    const double efficiency = efficiencyOfBeta(beta).value();
    QVERIFY(std::abs(efficiency * 100 - percent) < 1e-5);
    NEAR_PERCENT(betaOfEfficiency(efficiency).value(), beta, 1e-9);
    NEAR_PERCENT(betaOf(1000 * beta, 1000).value(), beta, 1e-9);
}

void FiltrationTest::whatCannotBeIsRefused()
{
    QVERIFY(!scaleNumber(-0.1) && !scaleNumber(2.5001e6));
    QVERIFY(!scaleNumber(std::numeric_limits<double>::quiet_NaN()).has_value());
    QVERIFY(!cleanlinessCode({100, 120, 9}) && !cleanlinessCode({850, 120, 121}));
    QVERIFY(!cleanlinessCode({850, 120, 9, 0}).has_value());
    QVERIFY(!betaOf(10, 0) && !betaOf(10, 11) && !betaOf(0, 0));
    QVERIFY(!efficiencyOfBeta(0.99) && !betaOfEfficiency(1) && !betaOfEfficiency(-0.01));
}

QTEST_APPLESS_MAIN(FiltrationTest)
#include "tst_filtration.moc"
