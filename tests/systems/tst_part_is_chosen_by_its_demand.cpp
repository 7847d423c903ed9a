// SPDX-License-Identifier: MIT
//
// Which part stands at a station: by kind, words, micron, flow, pressure, rating, fluid and ports,
// and of those that would do by preference.

#include "tests/systems/bench.h"

#include "model/systems/expanding/pump_curve.h"

#include <QTest>

using namespace flarestock;

class PartIsChosenByItsDemand : public QObject {
    Q_OBJECT

private:
    static std::string chosen(const Bench &bench, const Demand &demand,
                              Preference preference = Preference::Shelf);
    static Bench filters();

private Q_SLOTS:
    void readsAPumpCurveBetweenItsPoints();
    void takesAPumpThatDeliversAtThePressure();
    void takesWhatMeetsTheDemand_data();
    void takesWhatMeetsTheDemand();
    void keepsWhatTheFluidRuinsOut();
    void prefersAsTheBuilderDoes();
    void takesThePartThatTheLineGoesOn();
    void letsTheTemplateNameItsOwnPart();
    void asksForThePortsThatTheRunsUse();
    void saysWhyInNumbers();
    void takesHoseByDashSeriesAndFluid();
    void takesNoHoseThatMayNotLastBeforeOneThatDoes();
};

std::string PartIsChosenByItsDemand::chosen(const Bench &bench, const Demand &demand,
                                            Preference preference)
{
    Bench made;
    made.parts = bench.parts;
    Template form;
    form.id = "one";
    form.fluid = Fluid::E85;
    form.stations = {station("here", demand.kind)};
    form.stations[0].demand = demand;
    made.add(form);
    auto request = made.request("one");
    request.preference = preference;
    const auto built = expand(request);
    if (!built)
        return built.error().text();
    const Part *part = built->stations.front().part;
    return part ? part->number : "nothing";
}

Bench PartIsChosenByItsDemand::filters()
{
    Bench made;
    const auto add = [&](const std::string &number, int micron, std::optional<double> flow) {
        Part &part = made.part(number, Kind::Filter, "in: AN -8 male; out: AN -8 male");
        part.facts = FilterFacts{
            MicronRating{Decimal(micron), {}, {}}, "stainless mesh", "", true, flow, {}, {}};
        part.words = {"in-line"};
    };
    add("F-10", 10, 500.0);
    add("F-40", 40, 500.0);
    add("F-100", 100, 500.0);
    add("F-100X", 100, {}); // Its maker publishes no flow.
    made.parts[1].ratings.pressureKpa = 1000;
    made.parts[2].words.push_back("billet");
    made.part("RG-LOW", Kind::Regulator).facts = RegulatorFacts{20.0, 80.0, false, 200.0, {}};
    made.part("RG-HIGH", Kind::Regulator).facts = RegulatorFacts{250.0, 500.0, true, 800.0, {}};
    return made;
}

void PartIsChosenByItsDemand::readsAPumpCurveBetweenItsPoints()
{
    PumpFacts pump;
    pump.curve = {{200, 12, 235},   {300, 12, 215},   {300, 13.5, 255},
                  {200, 13.5, 272}, {400, 13.5, 235}, {500, 13.5, 208}};
    QCOMPARE(pumpFlowLh(pump, 300).value(), 255.0);
    // Half way from 3 to 4 bar: (255 + 235) / 2. A quarter of the way from 4 to 5: 235 − 27/4.
    QCOMPARE(pumpFlowLh(pump, 350).value(), 245.0);
    QCOMPARE(pumpFlowLh(pump, 425).value(), 228.25);
    QCOMPARE(pumpFlowLh(pump, 43.5 * 6.894757).value(), 255.0); // 43.5 psi is meant to be 3 bar.
    QVERIFY(!pumpFlowLh(pump, 520)); // Never extrapolated, to neither side.
    QVERIFY(!pumpFlowLh(pump, 150));
    QVERIFY(!pumpFlowLh(PumpFacts{}, 300));
    QCOMPARE(mostFlowLh(pump).value(), 272.0);
}

void PartIsChosenByItsDemand::takesAPumpThatDeliversAtThePressure()
{
    Bench made;
    made.part("P-A", Kind::Pump).facts =
        PumpFacts{{{200, 13.5, 272}, {400, 13.5, 235}}, {}, true, false, "in-line"};
    made.part("P-B", Kind::Pump).facts =
        PumpFacts{{{200, 13.5, 486}, {400, 13.5, 428}}, {}, true, false, "in-tank"};
    Demand demand;
    demand.kind = Kind::Pump;
    demand.pressure = said("3 bar");
    demand.flow = said("253.5 L/h"); // P-A delivers (272 + 235) / 2 = 253.5
    QCOMPARE(chosen(made, demand), std::string("P-A"));
    demand.flow = said("253.6 L/h");
    QCOMPARE(chosen(made, demand), std::string("P-B"));
    demand.pressure = said("5 bar");
    QCOMPARE(chosen(made, demand), std::string("nothing"));
    demand.pressure = {};
    demand.words = {"in-tank"};
    QCOMPARE(chosen(made, demand), std::string("P-B"));
    demand.flow = said("much");
    QVERIFY(chosen(made, demand).find("template one, station here") != std::string::npos);
}

void PartIsChosenByItsDemand::takesWhatMeetsTheDemand_data()
{
    QTest::addColumn<QString>("micron");
    QTest::addColumn<QString>("flow");
    QTest::addColumn<QString>("rated");
    QTest::addColumn<QString>("word");
    QTest::addColumn<QString>("takes");
    const auto row = [](const char *name, std::array<const char *, 5> texts) {
        QTestData &made = QTest::newRow(name);
        for (const char *text : texts)
            made << QString::fromUtf8(text);
    };
    row("coarse", {"75 to 150", "", "", "", "F-100"});
    row("coarse, with a flow", {"75 to 150", "400 L/h", "", "", "F-100"});
    row("coarse, with too much flow", {"75 to 150", "501 L/h", "", "", "nothing"});
    row("exactly 40", {"40", "", "", "", "F-40"});
    row("both bounds count", {"40 to 40", "", "", "", "F-40"});
    row("between the grades", {"50 to 60", "", "", "", "nothing"});
    row("rated, which one maker says", {"", "", "100 psi", "", "F-40"});
    row("rated beyond", {"", "", "200 psi", "", "nothing"});
    row("by a word", {"", "", "", "Billet", "F-100"});
    row("by its medium", {"", "", "", "stainless mesh", "F-10"});
    row("no range", {"fine", "", "", "", "no range"});
    row("a range the wrong way round", {"150 to 75", "", "", "", "no range"});
}

void PartIsChosenByItsDemand::takesWhatMeetsTheDemand()
{
    QFETCH(QString, micron);
    QFETCH(QString, flow);
    QFETCH(QString, rated);
    QFETCH(QString, word);
    QFETCH(QString, takes);
    Demand demand;
    if (!micron.isEmpty())
        demand.micron = said(micron.toStdString());
    if (!flow.isEmpty())
        demand.flow = said(flow.toStdString());
    if (!rated.isEmpty())
        demand.rated = said(rated.toStdString());
    if (!word.isEmpty())
        demand.words = {word.toStdString()};
    const std::string found = chosen(filters(), demand);
    QVERIFY2(found.find(takes.toStdString()) != std::string::npos, found.c_str());
    QVERIFY(takes == QStringLiteral("no range") || found == takes.toStdString());
}

void PartIsChosenByItsDemand::keepsWhatTheFluidRuinsOut()
{
    Bench made = filters();
    Demand demand;
    demand.micron = said("10");
    made.parts[0].suits = {Fluid::Gasoline};
    QCOMPARE(chosen(made, demand), std::string("nothing")); // Its maker does not name E85.
    made.parts[0].suits = {Fluid::Gasoline, Fluid::E85};
    made.parts[0].seal = "FKM";
    QCOMPARE(chosen(made, demand), std::string("F-10"));
    made.parts[0].seal = "EPDM"; // Swells in fuel, whatever the maker says.
    QCOMPARE(chosen(made, demand), std::string("nothing"));
    made.parts[0].seal = "FKM";
    std::get<FilterFacts>(made.parts[0].facts).medium = "paper"; // Swells in alcohol.
    QCOMPARE(chosen(made, demand), std::string("nothing"));
}

void PartIsChosenByItsDemand::prefersAsTheBuilderDoes()
{
    Bench made;
    // C costs most and lies on the shelf; B is cheapest; A has the run's dash.
    made.part("A", Kind::Filter, "in: AN -8 male");
    made.part("B", Kind::Filter, "in: AN -6 male");
    made.part("C", Kind::Filter, "in: AN -6 male");
    made.part("D", Kind::Filter, "in: AN -6 male"); // Nobody sells it.
    made.part("E", Kind::Filter, "in: AN -6 male"); // As B.
    made.part("T", Kind::Tank, "out: AN -8 male");
    made.hose("PT");
    for (const auto &[number, cost] :
         {std::pair("A", "50"), std::pair("B", "30"), std::pair("C", "60"), std::pair("E", "30")})
        made.offer(number, cost);
    made.stock("C", 1, "55.00");
    Template form;
    form.id = "one";
    form.stations = {station("tank", Kind::Tank), station("filter", Kind::Filter)};
    form.runs = {run("supply", "tank.out", "filter.in", "-8", "1 ft")};
    made.add(form);
    const auto order = [&](Preference preference) {
        auto request = made.request("one");
        request.preference = preference;
        const auto built = expand(request);
        std::string all = built->station("filter")->part->number;
        for (const Part *other : built->station("filter")->others)
            all += other->number;
        return all;
    };
    QCOMPARE(order(Preference::Shelf), std::string("CABED"));
    QCOMPARE(order(Preference::Money), std::string("BEACD"));
    QCOMPARE(order(Preference::Joints), std::string("ACBED"));
}

/// Common practice, no source: a fitter takes the filter with -8 ends for a -8 line, not one that
/// is 2 USD cheaper and takes an adapter at each end.
void PartIsChosenByItsDemand::takesThePartThatTheLineGoesOn()
{
    Bench made;
    made.part("F-8", Kind::Filter, "in: AN -8 male; out: AN -8 male");
    made.part("F-NPT", Kind::Filter, "in: NPT 3/8 female; out: NPT 3/8 female");
    made.part("F-ORB", Kind::Filter, "in: ORB -8 female; out: AN -8 male");
    made.part("F-10", Kind::Filter, "in: AN -10 male; out: AN -10 male");
    for (const auto &[number, price] : {std::pair("F-8", "50"), std::pair("F-NPT", "48"),
                                        std::pair("F-ORB", "47"), std::pair("F-10", "46")})
        made.offer(number, price);
    made.part("T", Kind::Tank, "out: AN -8 male");
    made.hose("PT");
    Template form;
    form.id = "one";
    form.stations = {station("tank", Kind::Tank), station("filter", Kind::Filter),
                     station("cell", Kind::Tank)};
    form.runs = {run("supply", "tank.out", "filter.in", "-8", "1 ft"),
                 run("back", "filter.out", "cell.out", "-8", "1 ft")};
    made.add(form);
    const auto first = [&](Preference preference) {
        auto request = made.request("one");
        request.preference = preference;
        return expand(request)->station("filter")->part->number;
    };
    QCOMPARE(first(Preference::Shelf), std::string("F-8"));
    QCOMPARE(first(Preference::Joints), std::string("F-8"));
    QCOMPARE(first(Preference::Money), std::string("F-10")); // Who asks for least money gets it.
    // Two bosses of which one has the line's size: an adapter does either, and the cheaper is
    // taken.
    made.parts.erase(made.parts.begin());
    made.part("F-6", Kind::Filter, "in: ORB -6 female; out: AN -8 male");
    made.offer("F-6", "20");
    made.offers.erase(made.offers.begin());
    made.close();
    QCOMPARE(first(Preference::Shelf), std::string("F-6"));
    QCOMPARE(first(Preference::Joints), std::string("F-ORB"));
    made.stock("F-NPT", 1, "48");
    QCOMPARE(first(Preference::Shelf), std::string("F-NPT")); // What is here is what it is about.
    QCOMPARE(first(Preference::Joints), std::string("F-ORB"));
}

void PartIsChosenByItsDemand::letsTheTemplateNameItsOwnPart()
{
    Demand demand;
    demand.micron = said("10");
    demand.part = said("f-100");
    QCOMPARE(chosen(filters(), demand), std::string("F-100"));
    demand.part = said("F-9999"); // It left the catalogue: then by demand.
    QCOMPARE(chosen(filters(), demand), std::string("F-10"));
}

void PartIsChosenByItsDemand::asksForThePortsThatTheRunsUse()
{
    Bench made;
    made.part("RL-A", Kind::Rail, "in: ORB -6 female");
    made.part("RL-B", Kind::Rail, "in: ORB -6 female; out: ORB -6 female");
    made.part("RL-C", Kind::Rail, "in: ORB -6 female; out: ORB -6 female; gauge: ORB -6 female");
    Template form;
    form.id = "one";
    form.stations = {station("left", Kind::Rail), station("right", Kind::Rail)};
    form.runs = {run("across", "left.out", "right.in")};
    form.stations[1].plugged = {"gauge"};
    made.add(form);
    const auto built = expand(made.request("one"));
    QCOMPARE(built->station("left")->part->number, std::string("RL-B"));
    QCOMPARE(built->station("right")->part->number, std::string("RL-C"));
}

void PartIsChosenByItsDemand::saysWhyInNumbers()
{
    Bench made = filters();
    made.stock("F-100", 2);
    Template form;
    form.id = "one";
    form.stations = {station("coarse", Kind::Filter), station("set", Kind::Regulator)};
    form.stations[0].demand.micron = said("75 to 150");
    form.stations[1].demand.pressure = said("43.5 psi");
    made.add(form);
    const auto built = expand(made.request("one"));
    QCOMPARE(built->station("coarse")->why,
             std::string("100 µm, 75 to 150 µm wanted; 2 on the shelf"));
    QCOMPARE(built->station("set")->part->number, std::string("RG-HIGH"));
    QCOMPARE(built->station("set")->why,
             std::string("adjusts to 43.5 psi; to be bought, without a price"));
}

void PartIsChosenByItsDemand::takesHoseByDashSeriesAndFluid()
{
    Bench made;
    made.hose("PT");
    made.hose("EP", "EPDM");
    made.offer("EP-8", "0.10");
    made.part("T", Kind::Tank, "out: AN -8 male");
    Template form;
    form.id = "one";
    form.fluid = Fluid::E85;
    form.stations = {station("left", Kind::Tank), station("right", Kind::Tank)};
    form.runs = {run("across", "left.out", "right.out", "-8", "1 ft")};
    made.add(form);
    const auto lineOfRun = [&] {
        const auto built = expand(made.request("one"));
        const PlacedRun *across = built->run("across");
        return across->line ? across->line->number : "none: " + across->wanted;
    };
    QCOMPARE(lineOfRun(), std::string("PT-8")); // EP is cheaper, and fuel ruins its liner.
    form.fluid = Fluid::WaterGlycol;
    made.add(form);
    QCOMPARE(lineOfRun(), std::string("EP-8"));
    form.runs[0].construction = said("pt");
    made.add(form);
    QCOMPARE(lineOfRun(), std::string("PT-8"));
    form.runs[0].dash = said("-4");
    made.add(form);
    QCOMPARE(lineOfRun(), std::string("none: hose -4 pt"));
    form.runs[0].dash = {}; // Not said: the port's.
    form.runs[0].construction = {};
    made.add(form);
    QCOMPARE(lineOfRun(), std::string("EP-8"));
}

/// Nitrile rubber in E85 and in methanol: on conditions; PTFE stands both (the tables behind
/// model/fluids: ORNL/TM-2012/88, alcohol row of a rubber moulder's table). In gasoline both are
/// good.
void PartIsChosenByItsDemand::takesNoHoseThatMayNotLastBeforeOneThatDoes()
{
    Bench made;
    made.hose("NB", "NBR");
    made.hose("PT");
    made.hose("XX", "a new rubber"); // The table knows nothing of it.
    for (const char *cheap : {"NB-8", "XX-8"}) {
        made.offer(cheap, "0.10");
        made.stock(cheap, 100, "1.00");
        made.shelf[cheap].onHand.unit = made.shelf[cheap].free.unit = Unit::Inch;
    }
    made.part("T", Kind::Tank, "out: AN -8 male");
    Template form;
    form.id = "one";
    form.stations = {station("left", Kind::Tank), station("right", Kind::Tank)};
    form.runs = {run("across", "left.out", "right.out", "-8", "1 ft")};
    const auto lineIn = [&](Fluid fluid, Preference preference) {
        form.fluid = fluid;
        made.add(form);
        auto request = made.request("one");
        request.preference = preference;
        const auto built = expand(request);
        const PlacedRun *across = built->run("across");
        return across->line ? across->line->number : "none";
    };
    for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
        for (const Fluid fluid : {Fluid::E85, Fluid::Methanol})
            QCOMPARE(lineIn(fluid, preference), std::string("PT-8"));
        QCOMPARE(lineIn(Fluid::Gasoline, preference), std::string("NB-8"));
    }
    // What the maker names counts where the table is silent, and not against it.
    for (Part &part : made.parts)
        if (part.number == "XX-8" || part.number == "NB-8")
            part.suits = {Fluid::E85};
    made.close();
    QCOMPARE(lineIn(Fluid::E85, Preference::Money), std::string("XX-8"));
}

QTEST_APPLESS_MAIN(PartIsChosenByItsDemand)
#include "tst_part_is_chosen_by_its_demand.moc"
