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
    void agreesWithATextbookInItsUnits();
    void velocityInsteadOfFlow();
    void heatThinsTheFluid();
    void boreOfADashIsAssumed();
    void carPushesTheFluidBack();
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

void LineCommandTest::agreesWithATextbookInItsUnits()
{
    // Fundamentals of Fluid Mechanics, example 8.8: 60 ft of 0.0625 ft drawn tube with 0.0267 ft³/s
    // of water, bends 4 × 1.5, a valve 10 and the faucet 2, 20 ft up. Re 45,000; 30.5 psi at its
    // beginning, of which the jet keeps what it has more than the pipe (a faucet of 0.50 in).
    const Ran ran =
        runFlarestock({"line", "--flow", "0.0267 ft3/s", "--bore", "0.0625 ft", "--length", "60 ft",
                       "--density", "1.94 slug/ft3", "--viscosity", "2.34e-5 lbf.s/ft2",
                       "--roughness", "5e-6 ft", "--k", "18", "--rise", "20 ft", "--json"});
    QCOMPARE(ran.status, 0);
    const auto isNear = [](double number, double published, double percent) {
        return std::abs(number / published - 1) * 100 < percent;
    };
    QVERIFY2(isNear(numberAt(ran, "reynolds"), 45000, 0.5), ran.out.c_str());
    const double velocity = numberAt(ran, "velocityMS");
    const double jet = velocity * 0.0625 * 0.0625 / (0.5 / 12 * 0.5 / 12);
    const double density = 1.94 * 515.378818393;
    const double begins =
        numberAt(ran, "pressureDropPa") + density / 2 * (jet * jet - velocity * velocity);
    QVERIFY2(isNear(begins / 6894.757293168, 30.5, 0.6), ran.out.c_str());
}

void LineCommandTest::velocityInsteadOfFlow()
{
    // Fluid Mechanics: Fundamentals and Applications, example 8-3: 0.006 m³/s through 50 mm is
    // 3.06 m/s; f 0.0172, 96.5 kPa over 60 m.
    const Ran ran = runFlarestock({"line", "--velocity", "3.0557749 m/s", "--bore", "5 cm",
                                   "--length", "60 m", "--density", "999 kg/m3", "--viscosity",
                                   "1.138e-3 kg/m.s", "--roughness", "0.002 mm", "--json"});
    QCOMPARE(ran.status, 0);
    QVERIFY2(std::abs(numberAt(ran, "frictionFactor") / 0.0172 - 1) < 0.005, ran.out.c_str());
    QVERIFY2(std::abs(numberAt(ran, "pressureDropPa") / 96500 - 1) < 0.006, ran.out.c_str());
}

void LineCommandTest::heatThinsTheFluid()
{
    const Words oil{"line",   "--fluid", "engine oil", "--flow", "300 L/h",
                    "--bore", "10 mm",   "--length",   "2 m",    "--json"};
    const Ran cold = runFlarestock(oil);
    const Ran hot = runFlarestock(with(oil, {"--temperature", "90 C"}));
    QCOMPARE(hot.status, 0);
    QVERIFY(numberAt(hot, "pressureDropPa") < numberAt(cold, "pressureDropPa") / 3);
    const Ran boiled = runFlarestock(with(oil, {"--temperature", "900 C"}));
    QVERIFY2(boiled.refusesInOneLine() && boiled.err.find("--temperature") != std::string::npos,
             boiled.err.c_str());
}

void LineCommandTest::boreOfADashIsAssumed()
{
    // A -6 of the tube's numbering is 5/16 in wide (SAE J517's 100R14, as hose pages quote it).
    const Words words{"line", "--flow", "255 L/h", "--dash", "6", "--length", "3 m", "--k", "4"};
    const Ran ran = runFlarestock(with(words, {"--json"}));
    QCOMPARE(ran.status, 0);
    QVERIFY(std::abs(numberAt(ran, "assumedBoreM") - 0.0079375) < 1e-6);
    QVERIFY(std::abs(numberAt(ran, "pressureDropPa") / 10600 - 1) < 0.05);
    const Ran said = runFlarestock(words);
    QVERIFY2(said.out.find("is assumed for -6") != std::string::npos, said.out.c_str());
}

void LineCommandTest::carPushesTheFluidBack()
{
    // 3 m at 1.5 g of 745 kg/m³: 745 × 1.5 × 9.80665 × 3 = 32.9 kPa.
    const Ran still = runFlarestock(with(Plain, {"--json"}));
    const Ran ran =
        runFlarestock(with(Plain, {"--forward", "3 m", "--acceleration", "1.5 g", "--json"}));
    QCOMPARE(ran.status, 0);
    QVERIFY(std::abs(numberAt(ran, "accelerationPa") - 745 * 1.5 * 9.80665 * 3) < 1e-6);
    QVERIFY(std::abs(numberAt(ran, "pressureDropPa") - numberAt(still, "pressureDropPa") -
                     numberAt(ran, "accelerationPa")) < 1e-6);
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
    row("flow and velocity", with(Plain, {"--velocity", "2 m/s"}), "--velocity");
    row("bore and dash", with(Plain, {"--dash", "6"}), "--dash");
    row("a dash that is none", {"line", "--flow", "255 L/h", "--dash", "7", "--length", "5 m"},
        "--dash");
    row("forward without acceleration", with(Plain, {"--forward", "2 m"}), "--acceleration");
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
