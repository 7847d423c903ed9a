// SPDX-License-Identifier: MIT
//
// `flarestock line`, from the outside.

#include "run_flarestock.h"

#include <QJsonArray>
#include <QTest>

#include <cmath>

using flarestock::tests::Ran;
using flarestock::tests::runFlarestock;
using flarestock::tests::Words;

class LineCommandTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void saysTheLossInJson();
    void agreesWithPythonFluids();
    void addsEndsBendsAndLevel();
    void massFlowAndKinematicViscosityAreTheSameLine();
    void tellsAPersonWhereThePropertiesComeFrom();
    void refusesInOneLine_data();
    void refusesInOneLine();
};

namespace {

const Words Plain{"line", "--flow", "255 L/h", "--bore", "8.71 mm", "--length", "5 m"};

Words with(Words words, const Words &more)
{
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

double numberAt(const Ran &ran, const char *key)
{
    return ran.json().value(QLatin1String(key)).toDouble(std::nan(""));
}

} // namespace

void LineCommandTest::saysTheLossInJson()
{
    const Ran ran = runFlarestock(with(Plain, {"--json"}));
    QCOMPARE(ran.status, 0);
    for (const char *key : {"velocityMS", "reynolds", "frictionFactor", "frictionPa", "minorPa",
                            "levelPa", "pressureDropPa"})
        QVERIFY2(std::isfinite(numberAt(ran, key)), key);
    QCOMPARE(ran.json().size(), 8);
    QCOMPARE(ran.json().value(QLatin1String("regime")).toString(), QStringLiteral("turbulent"));
}

void LineCommandTest::agreesWithPythonFluids()
{
    // python-fluids 1.0.22: one_phase_dP(m=0.1, rho=745, mu=4.1e-4, D=.01, roughness=1.5e-6, L=5)
    // is 12895.2514782657 Pa.
    const Ran ran = runFlarestock({"line", "--flow", "360 kg/h", "--bore", "10 mm", "--length",
                                   "5 m", "--density", "745 kg/m3", "--viscosity", "0.41 mPa.s",
                                   "--roughness", "1.5 um", "--json"});
    QCOMPARE(ran.status, 0);
    QVERIFY2(std::abs(numberAt(ran, "pressureDropPa") - 12895.2514782657) < 1e-5, ran.out.c_str());
}

void LineCommandTest::addsEndsBendsAndLevel()
{
    const Ran plain = runFlarestock(with(Plain, {"--json"}));
    const Ran ran = runFlarestock(with(Plain, {"--k", "2.4", "--rise", "-1 m", "--json"}));
    QCOMPARE(ran.status, 0);
    const double velocity = numberAt(ran, "velocityMS");
    QCOMPARE(numberAt(ran, "minorPa"), 2.4 * 745 * velocity * velocity / 2);
    QCOMPARE(numberAt(ran, "levelPa"), -745 * 9.80665);
    QCOMPARE(numberAt(ran, "frictionPa"), numberAt(plain, "frictionPa"));
    QCOMPARE(numberAt(ran, "pressureDropPa"),
             numberAt(ran, "frictionPa") + numberAt(ran, "minorPa") + numberAt(ran, "levelPa"));
}

void LineCommandTest::massFlowAndKinematicViscosityAreTheSameLine()
{
    // 255 L/h × 0.745 kg/L = 189.975 kg/h; 0.41 mPa·s / 745 kg/m³ = 0.550335570… mm²/s.
    const Ran volume = runFlarestock(with(Plain, {"--json"}));
    const Ran mass =
        runFlarestock({"line", "--flow", "189.975 kg/h", "--bore", "8.71 mm", "--length", "5 m",
                       "--viscosity", "0.55033557 mm2/s", "--json"});
    QVERIFY(std::abs(numberAt(volume, "pressureDropPa") / numberAt(mass, "pressureDropPa") - 1) <
            1e-8);
}

void LineCommandTest::tellsAPersonWhereThePropertiesComeFrom()
{
    const Ran ran = runFlarestock({"line", "--fluid", "gear oil", "--flow", "100 L/h", "--bore",
                                   "1/2 in", "--length", "5 ft 6 in"});
    QCOMPARE(ran.status, 0);
    QVERIFY2(ran.out.find("laminar") != std::string::npos, ran.out.c_str());
    QVERIFY2(ran.out.find("from memory") != std::string::npos, ran.out.c_str());
}

void LineCommandTest::refusesInOneLine_data()
{
    QTest::addColumn<Words>("words");
    QTest::addColumn<std::string>("names");
    const auto row = [](const char *name, const Words &words, const char *names) {
        QTest::newRow(name) << words << std::string(names);
    };
    row("a bare flow", {"line", "--flow", "255", "--bore", "8 mm", "--length", "5 m"}, "no unit");
    row("a pressure for a flow", {"line", "--flow", "3 bar", "--bore", "8 mm", "--length", "5 m"},
        "a flow is wanted");
    row("no bore", {"line", "--flow", "255 L/h", "--length", "5 m"}, "--bore");
    row("a bore of nothing", {"line", "--flow", "255 L/h", "--bore", "0 mm", "--length", "5 m"},
        "bore");
    row("milk", with(Plain, {"--fluid", "milk"}), "milk");
    row("a loss with a unit", with(Plain, {"--k", "2 m"}), "--k");
    row("a viscosity in bar", with(Plain, {"--viscosity", "2 bar"}), "--viscosity");
    row("a density of nothing", with(Plain, {"--density", "0 kg/m3"}), "density");
}

void LineCommandTest::refusesInOneLine()
{
    QFETCH(const Words, words);
    QFETCH(const std::string, names);
    const Ran ran = runFlarestock(words);
    QVERIFY2(ran.refusesInOneLine(), ran.err.c_str());
    QVERIFY2(ran.err.find(names) != std::string::npos, ran.err.c_str());
}

QTEST_APPLESS_MAIN(LineCommandTest)
#include "tst_line_is_reckoned_as_typed.moc"
