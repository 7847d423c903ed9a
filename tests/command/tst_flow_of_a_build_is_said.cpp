// SPDX-License-Identifier: MIT
//
// `flarestock flow`, from the outside: what it prints of a template of the demo shop is worked out
// again here by textbook arithmetic (continuity, Reynolds, Darcy-Weisbach, NPSH, ISO 2533), and its
// two pictures begin, meet and end where they have to.

#include "demo_copy.h"

#include <QJsonArray>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace flarestock::tests;

#define NEAR_PERCENT(got, wanted, percent)                                                         \
    QVERIFY2(std::abs((got) - (wanted)) <= std::abs(wanted) * (percent) / 100,                     \
             qPrintable(QStringLiteral("%1, not %2").arg(got).arg(wanted)))

namespace {

double figure(const QJsonValue &document, const char *key)
{
    return document.toObject().value(QLatin1String(key)).toDouble(std::nan(""));
}

QJsonArray listIn(const QJsonValue &document, const char *key)
{
    return document.toObject().value(QLatin1String(key)).toArray();
}

} // namespace

class FlowCommandTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachLineIsWorkedOut();
    void sectionsAreTheSumOfTheirLines();
    void pumpAndInletAreWorkedOut();
    void thePicturesBeginMeetAndEnd();
    void conditionsAreAnswers();
    void tellsAPerson();
    void gravityAndOilAreSaid();
    void refusesInOneLine_data();
    void refusesInOneLine();

private:
    [[nodiscard]] QJsonObject flowOf(Words words)
    {
        words.insert(words.begin(), "flow");
        words.insert(words.end(), {"--json", "--shop", m_demo.made()});
        return runFlarestock(words).json();
    }

    DemoCopy m_demo;
};

void FlowCommandTest::eachLineIsWorkedOut()
{
    const auto said = flowOf({"injection-frame-rail", "--set", "fluid=gasoline"});
    const QJsonValue liquid = said.value(QLatin1String("liquid"));
    const double density = figure(liquid, "densityKgM3");
    const double viscosity = figure(liquid, "viscosityPaS");
    QCOMPARE(figure(liquid, "temperatureC"), 40.0);
    // 450 hp × 0.50 lb/h (common practice) of that density.
    NEAR_PERCENT(said.value(QLatin1String("engineM3S")).toDouble(),
                 450 * 0.5 * 0.45359237 / 3600 / density, 1e-4);
    const auto lines = listIn(said, "lines");
    QVERIFY(lines.size() >= 6);
    int hoses = 0;
    for (const auto &line : lines) {
        const double parts = figure(line, "frictionPa") + figure(line, "endsPa") +
                             figure(line, "filterPa") + figure(line, "levelPa") +
                             figure(line, "accelerationPa");
        QVERIFY(std::abs(parts - figure(line, "dropPa")) < 1e-6);
        QVERIFY(figure(line, "dropLeastPa") <= figure(line, "dropPa") + 1e-9);
        const double bore = figure(line, "boreM");
        if (std::isnan(bore))
            continue;
        ++hoses;
        const double velocity = 4 * figure(line, "flowM3S") / (std::numbers::pi * bore * bore);
        NEAR_PERCENT(figure(line, "velocityMS"), velocity, 1e-6);
        NEAR_PERCENT(figure(line, "reynolds"), density * velocity * bore / viscosity, 1e-6);
    }
    QVERIFY(hoses >= 5);
}

void FlowCommandTest::sectionsAreTheSumOfTheirLines()
{
    const auto said = flowOf({"injection-frame-rail"});
    QMap<QString, double> drops;
    for (const auto &line : listIn(said, "lines"))
        drops.insert(line.toObject().value(QLatin1String("line")).toString(),
                     figure(line, "dropPa"));
    const auto delivery = listIn(said, "deliveries").first().toObject();
    const auto pump = listIn(delivery, "pumps").first().toObject();
    for (const auto &section :
         {pump.value(QLatin1String("suction")), delivery.value(QLatin1String("line")),
          delivery.value(QLatin1String("return"))}) {
        double sum = 0;
        for (const auto &line : listIn(section, "lines"))
            sum += drops.value(line.toString(), std::nan(""));
        NEAR_PERCENT(figure(section, "dropPa"), sum, 1e-6);
    }
}

void FlowCommandTest::pumpAndInletAreWorkedOut()
{
    const auto said = flowOf({"injection-frame-rail"});
    const auto delivery = listIn(said, "deliveries").first();
    const auto pump = listIn(delivery, "pumps").first().toObject();
    const double suction = figure(pump.value(QLatin1String("suction")), "dropPa");
    // What it works against: the rail's 43.5 psi and its lines.
    NEAR_PERCENT(figure(delivery.toObject().value(QLatin1String("operating")), "pressurePa"),
                 43.5 * 6894.757293 + suction +
                     figure(delivery.toObject().value(QLatin1String("line")), "dropPa"),
                 0.01);
    const QJsonValue liquid = said.value(QLatin1String("liquid"));
    const QJsonValue inlet = pump.value(QLatin1String("inlet"));
    const double margin = 101325 - suction - figure(liquid, "vapourPa");
    NEAR_PERCENT(figure(inlet, "marginPa"), margin, 1e-6);
    NEAR_PERCENT(figure(inlet, "npshM"), margin / (figure(liquid, "densityKgM3") * 9.80665), 1e-6);
    const auto regulator = delivery.toObject().value(QLatin1String("regulator")).toObject();
    QCOMPARE(regulator.value(QLatin1String("holds")).toBool(), true);
    NEAR_PERCENT(figure(regulator, "keepsUpPa"),
                 figure(delivery.toObject().value(QLatin1String("return")), "dropPa"), 1e-6);
}

void FlowCommandTest::thePicturesBeginMeetAndEnd()
{
    const auto delivery = listIn(flowOf({"injection-frame-rail"}), "deliveries").first();
    const auto along = listIn(delivery, "pressureAlong");
    QVERIFY(along.size() > 10);
    QCOMPARE(figure(along.first(), "pressurePa"), 0.0);        // The open tank …
    QVERIFY(std::abs(figure(along.last(), "pressurePa")) < 1); // … and back in it.
    for (qsizetype at = 1; at < along.size(); ++at)
        QVERIFY(figure(along[at], "distanceM") >= figure(along[at - 1], "distanceM"));
    double highest = 0; // At the pump's outlet: what is set, and what the line takes of it.
    for (const auto &point : along)
        highest = std::max(highest, figure(point, "pressurePa"));
    NEAR_PERCENT(highest,
                 figure(delivery, "setPa") +
                     figure(delivery.toObject().value(QLatin1String("line")), "dropPa"),
                 1e-6);
    // 5 ft, 12 in and so on: as far as its lines are long together.
    QVERIFY(figure(along.last(), "distanceM") > 3);
    const auto curve = delivery.toObject().value(QLatin1String("pumpCurve"));
    const auto pumps = listIn(curve, "pumps");
    const auto system = listIn(curve, "system");
    QCOMPARE(pumps.size(), 50);
    QCOMPARE(system.size(), 50);
    for (qsizetype at = 1; at < 50; ++at) {
        QVERIFY(figure(pumps[at], "flowM3S") <= figure(pumps[at - 1], "flowM3S"));
        QVERIFY(figure(system[at], "pressurePa") >= figure(system[at - 1], "pressurePa"));
    }
    const QJsonValue operating = curve.toObject().value(QLatin1String("operating"));
    NEAR_PERCENT(figure(operating, "flowM3S"),
                 figure(delivery.toObject().value(QLatin1String("operating")), "flowM3S"), 1e-6);
}

void FlowCommandTest::conditionsAreAnswers()
{
    const auto marginOf = [this](const Words &more) {
        Words words{"injection-frame-rail"};
        words.insert(words.end(), more.begin(), more.end());
        const auto delivery = listIn(flowOf(words), "deliveries").first();
        return figure(listIn(delivery, "pumps").first().toObject().value(QLatin1String("inlet")),
                      "marginPa");
    };
    const double summer = marginOf({});
    // ISO 2533 (from memory): 101.325 kPa at the sea, 79.495 at 2000 m.
    NEAR_PERCENT(summer - marginOf({"--set", "altitude=2000 m"}), 101325 - 79495.2, 0.1);
    // Gasoline of 9 psi Reid by the formula of US EPA AP-42: 70.65 kPa at 40 °C, 37.13 at 20.
    for (const auto &[celsius, pascal] : {std::pair("40 C", 70.65e3), std::pair("20 C", 37.13e3)}) {
        const auto said = flowOf({"injection-frame-rail", "--set", "fluid=gasoline", "--set",
                                  std::string("fuel-temperature=") + celsius});
        NEAR_PERCENT(figure(said.value(QLatin1String("liquid")), "vapourPa"), pascal, 0.2);
    }
    QCOMPARE(marginOf({"--set", "altitude=0 ft", "--set", "fuel-temperature=40 C", "--set",
                       "voltage=13.5 V", "--set", "boost=0 psi"}),
             summer);
    const auto delivery =
        listIn(flowOf({"injection-frame-rail", "--set", "boost=10 psi"}), "deliveries").first();
    NEAR_PERCENT(figure(delivery, "setPa"), 53.5 * 6894.757293, 1e-4);
}

void FlowCommandTest::tellsAPerson()
{
    const Ran ran = runFlarestock({"flow", "injection-frame-rail", "--shop", m_demo.made()});
    QCOMPARE(ran.status, 0);
    for (const char *words :
         {"\nlines\n", "\nsections\n", "\npumps\n", "\nregulators\n", "\nassumed\n", "bore mm",
          "NPSH", "from boiling", "is wanted", "stay up", "rulebook"})
        QVERIFY2(ran.out.find(words) != std::string::npos, words);
    // 450 × 745.69987 W and 450 × 735.49875 W (GNU units: hp, metrichorsepower).
    QVERIFY2(ran.out.find("450 hp (335.6 kW; hp is mechanical") != std::string::npos,
             ran.out.c_str());
    const Ran metric = runFlarestock(
        {"flow", "injection-frame-rail", "--set", "power=450 PS", "--shop", m_demo.made()});
    QVERIFY2(metric.out.find("450 PS (331.0 kW; PS is metric") != std::string::npos,
             metric.out.c_str());
    const Ran planned = runFlarestock({"flow", "--build", "coupe-fuel", "--shop", m_demo.made()});
    QCOMPARE(planned.status, 0);
    const Ran help = runFlarestock({"flow", "--help"});
    QCOMPARE(help.status, 0);
    QVERIFY(help.out.find("--set") != std::string::npos);
}

void FlowCommandTest::gravityAndOilAreSaid()
{
    const auto said = flowOf({"gearbox-cooler"});
    const auto liquid = said.value(QLatin1String("liquid")).toObject();
    QCOMPARE(liquid.value(QLatin1String("name")).toString(), QStringLiteral("gear oil"));
    QVERIFY(listIn(said, "deliveries").isEmpty());
    for (const auto &line : listIn(said, "lines")) {
        NEAR_PERCENT(figure(line, "flowM3S"), 400 / 3.6e6, 1e-6);
        const double bore = figure(line, "boreM");
        // 64 / Re (Hagen and Poiseuille).
        if (!std::isnan(bore))
            QVERIFY(figure(line, "reynolds") < 2040);
    }
}

void FlowCommandTest::refusesInOneLine_data()
{
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QString>("said");
    const auto row = [](const char *name, const QStringList &words, const char *said) {
        QTest::newRow(name) << words << QString::fromUtf8(said);
    };
    row("coolant", {QStringLiteral("coolant")}, "has no flow to work out: nobody states how much");
    row("an engine's own oil pump", {QStringLiteral("dry-sump")}, "states how much engine oil");
    row("brakes", {QStringLiteral("brakes-dual")}, "has no flow to work out: nothing flows");
    row("no such template", {QStringLiteral("nothing")}, "nothing");
    row("neither", {}, "flarestock flow");
    row("too warm for the table",
        {QStringLiteral("injection-frame-rail"), QStringLiteral("--set"),
         QStringLiteral("fuel-temperature=80 C")},
        "fuel-temperature");
}

void FlowCommandTest::refusesInOneLine()
{
    QFETCH(QStringList, words);
    QFETCH(QString, said);
    Words all{"flow", "--shop", m_demo.made()};
    for (const auto &word : words)
        all.push_back(word.toStdString());
    const Ran ran = runFlarestock(all);
    QVERIFY2(ran.refusesInOneLine(), (ran.out + ran.err).c_str());
    QVERIFY2(ran.err.find(said.toStdString()) != std::string::npos, ran.err.c_str());
}

QTEST_APPLESS_MAIN(FlowCommandTest)
#include "tst_flow_of_a_build_is_said.moc"
