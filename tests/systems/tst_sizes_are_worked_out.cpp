// SPDX-License-Identifier: MIT
//
// Answers that are worked out: fuel demand, pump pressure and line size from the answers above
// them. Sizes against a table of power by dash that was worked out apart (5 m, K = 5), demand
// against a worked example; bounds are judgement, as model/fluids/data/line_budgets.csv says.

#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/line/dash_bore.h"
#include "model/fluids/liquid.h"
#include "model/systems/sizing/completing.h"
#include "tests/fluids/table_file.h"
#include "tests/systems/bench.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr double Psi = 6894.757293168361;

Question worked(Question question, const WorkedDefault &by)
{
    question.workedOut = by;
    return question;
}

Question dash(const std::string &id, const std::string &standard)
{
    Question made = choice(id, {"-4", "-6", "-8", "-10", "-12", "-16"});
    made.isDash = true;
    made.standard = standard;
    return made;
}

WorkedDefault demand()
{
    return {};
}

WorkedDefault lineOfSize(WorkedDefault::Line line)
{
    WorkedDefault by;
    by.by = WorkedDefault::By::LineSize;
    by.line = line;
    by.setPressure = said("{set}");
    by.flow = said("{flow}");
    by.lengths = {said("{length}")};
    return by;
}

/// Fluid, power, what is set, a length and a temperature of 20 °C; then flow and sizes.
Template form()
{
    Template made;
    made.id = "fuel";
    made.fluidQuestion = "fluid";
    made.questions = {choice("fluid", {"gasoline", "E85", "methanol"}),
                      measure("power", Dimension::Power, "450 hp"),
                      measure("set", Dimension::Pressure, "43.5 psi"),
                      measure("length", Dimension::Length, "11 ft"),
                      measure("fuel-temperature", Dimension::Temperature, "20 C"),
                      worked(measure("flow", Dimension::VolumeFlow, "200 L/h"), demand())};
    WorkedDefault pump;
    pump.by = WorkedDefault::By::PumpPressure;
    pump.setPressure = said("{set}");
    made.questions.push_back(worked(measure("pump", Dimension::Pressure, "50 psi"), pump));
    made.questions.push_back(
        worked(dash("feed", "-6"), lineOfSize(WorkedDefault::Line::BeforeRegulator)));
    made.questions.push_back(worked(dash("return", "-6"), lineOfSize(WorkedDefault::Line::Return)));
    return made;
}

CompletedAnswers workedBy(const Answers &given, const Template &asked = form())
{
    const auto complete = completedWith(asked, given, {});
    if (!complete)
        qFatal("%s", complete.error().text().c_str());
    return *complete;
}

const WorkedAnswer &of(const CompletedAnswers &complete, std::string_view question)
{
    return *std::find_if(complete.worked.begin(), complete.worked.end(),
                         [question](const WorkedAnswer &one) { return one.question == question; });
}

double flowM3S(Fluid fuel, double consumption, double horsepower)
{
    FuelAsked asked;
    asked.powerW = wattsOf(horsepower, PowerUnit::MechanicalHorsepower);
    asked.consumptionKgJ =
        kilogramPerJoule(consumption, ConsumptionUnit::PoundPerMechanicalHorsepowerHour);
    asked.densityKgM3 = liquidAt20C(fuel).densityKgM3;
    return fuelDemand(asked).value().volumeM3S;
}

} // namespace

class SizesAreWorkedOut : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void smallestSizeIsThatOfTheTable();
    void demandIsThatOfTheExample();
    void demandIsSharedAndGravityWantsMore();
    void pumpStandsOverWhatIsSet();
    void ownAnswerCountsAndIsTakenBack();
    void whatAnOverrideCosts();
    void whatCannotBeReckonedIsSaid();
    void noSizeKeepsToItsBounds();
    void onlyHoseOfTheShopIsTaken();
    void linesCarryAllThatTheirPumpGives();
    void practiceStandsBeside();
};

/// One horsepower less than the table's largest keeps, 2 % more wants the next size (its figures
/// have three digits).
void SizesAreWorkedOut::smallestSizeIsThatOfTheTable()
{
    const TableFile table("power_by_dash.csv");
    int tried = 0;
    for (std::size_t row = 0; row < table.size(); ++row) {
        if (table.cell(row, "numbering") != "as tube")
            continue;
        const Fluid fuel = parseFluid(table.cell(row, "fuel")).value();
        const int size = static_cast<int>(table.number(row, "dash"));
        for (const char *psi : {"1", "3"}) {
            LineAsked line;
            line.densityKgM3 = liquidAt20C(fuel).densityKgM3;
            line.viscosityPaS = liquidAt20C(fuel).viscosityPaS;
            line.lengthM = 5;
            line.minorK = 5;
            line.mostPa = QByteArray(psi).toDouble() * Psi;
            std::vector<DashBore> bores;
            for (const int one : {4, 6, 8, 10, 12, 16})
                bores.push_back({one, assumedBore(one, DashNumbering::AsTube)->boreM});
            const double power = table.number(row, "hp at " + std::string(psi) + " psi");
            const auto smallest = [&](double horsepower) {
                line.flowM3S = flowM3S(fuel, table.number(row, "consumption lb/hp.h"), horsepower);
                const auto sizes = triedSizes(line, bores);
                const auto *keeps = smallestThatKeeps(sizes);
                return keeps ? keeps->size.dash : 99;
            };
            QCOMPARE(smallest(power * 0.99), size);
            QVERIFY(smallest(power * 1.01) > size);
            ++tried;
        }
    }
    QCOMPARE(tried, 36);
}

/// 500 hp × 0.60 lb/(hp h), 745 kg/m³, a quarter more: 228.318 L/h (flow's worked example D04).
/// Gasoline boosted has 0.60 as its usual consumption, and 745 kg/m³ at 20 °C.
void SizesAreWorkedOut::demandIsThatOfTheExample()
{
    Template asked = form();
    asked.questions.insert(asked.questions.begin() + 5,
                           measure("boost", Dimension::Pressure, "10 psi"));
    const auto complete = workedBy({{"power", "500 hp"}}, asked);
    QCOMPARE(complete.answers.at("flow"), std::string("229 L/h")); // Up to the next whole one.
}

/// 14 CFR 23.955: gravity gives 150 %, a pump 125 %: 1.2 times as much.
void SizesAreWorkedOut::demandIsSharedAndGravityWantsMore()
{
    const auto litres = [](const CompletedAnswers &complete) {
        return in(*Measure::parse(complete.answers.at("flow")), "L/h");
    };
    const Answers given{{"power", "1000 hp"}};
    const double whole = litres(workedBy(given));
    Template asked = form();
    asked.questions[5].workedOut->sharedBy = 2;
    QVERIFY(std::abs(litres(workedBy(given, asked)) - whole / 2) <= 1);
    asked.questions[5].workedOut->sharedBy = 1;
    asked.questions[5].workedOut->feed = Feed::Gravity;
    QVERIFY(std::abs(litres(workedBy(given, asked)) - whole * 1.2) <= 2);
}

/// 43.5 psi and 10 % of it, 299.92 + 29.99 kPa; of a carburettor 7 psi and 3 psi, 68.95 kPa.
void SizesAreWorkedOut::pumpStandsOverWhatIsSet()
{
    QCOMPARE(workedBy({}).answers.at("pump"), std::string("330 kPa"));
    Template asked = form();
    asked.questions[6].workedOut->delivery = FuelSystem::Carburettor;
    QCOMPARE(workedBy({{"set", "7 psi"}}, asked).answers.at("pump"), std::string("69 kPa"));
}

void SizesAreWorkedOut::ownAnswerCountsAndIsTakenBack()
{
    const auto worked = workedBy({});
    const auto own = workedBy({{"feed", "-16"}, {"flow", "500 L/h"}});
    QCOMPARE(own.answers.at("feed"), std::string("-16"));
    QVERIFY(of(own, "feed").own && !of(worked, "feed").own);
    QVERIFY(of(own, "feed").worked != "-16");
    QCOMPARE(of(own, "flow").worked, worked.answers.at("flow"));
    // What depends on it goes by the builder's flow, not by the one that was worked out.
    QCOMPARE(of(own, "return").sizes->line.flowM3S, 500e-3 / 3600);
    QCOMPARE(workedBy({{"feed", ""}, {"flow", " "}}).answers, worked.answers);
    QVERIFY(!of(workedBy({{"feed", ""}}), "feed").own);
    QVERIFY(!completed(form(), {{"feed", "-7"}}));
}

/// Against Blasius' law for smooth pipe, f = 0.3164 / Re^0.25 (textbook), good to 5 % here.
void SizesAreWorkedOut::whatAnOverrideCosts()
{
    const auto complete = workedBy({{"flow", "460 L/h"}, {"length", "20 ft"}, {"feed", "-6"}});
    const auto &feed = of(complete, "feed");
    QCOMPARE(feed.worked, std::string("-8"));
    const auto drop = [](double bore) {
        const double flow = 460e-3 / 3600;
        const double density = 745;
        const double viscosity = 0.41e-3;
        const double velocity = flow / (3.14159265 / 4 * bore * bore);
        const double reynolds = density * velocity * bore / viscosity;
        const double friction = 0.3164 / std::pow(reynolds, 0.25);
        return (friction * 20 * 0.3048 / bore + 2) * density * velocity * velocity / 2;
    };
    const double more = drop(0.3125 * 0.0254) - drop(0.40625 * 0.0254);
    const double said = feed.sizes->overWorkedPa(*feed.sizes->of(feed.sizes->taken));
    QVERIFY2(std::abs(said - more) < 0.05 * more,
             (std::to_string(said) + " for " + std::to_string(more)).c_str());
    QCOMPARE(feed.sizes->nextDown()->size.dash, 6);
    QVERIFY(!feed.sizes->of(6)->keeps);
}

void SizesAreWorkedOut::whatCannotBeReckonedIsSaid()
{
    Template asked = form();
    asked.questions[1].id = "kilowatts"; // Nobody says the power.
    const auto complete = workedBy({}, asked);
    QCOMPARE(complete.answers.at("flow"), std::string("200 L/h"));
    QVERIFY(of(complete, "flow").why.find("no power") != std::string::npos);
    QVERIFY(of(complete, "feed").sizes); // The line goes on from the fixed flow.
}

void SizesAreWorkedOut::noSizeKeepsToItsBounds()
{
    const auto complete = workedBy({{"flow", "90000 L/h"}});
    QCOMPARE(complete.answers.at("feed"), std::string("-16"));
    QVERIFY(of(complete, "feed").why.find("no size keeps") != std::string::npos);
    QVERIFY(of(workedBy({}), "feed").why.empty());
}

void SizesAreWorkedOut::onlyHoseOfTheShopIsTaken()
{
    Bench bench;
    bench.hose("PT"); // -6, -8 and -10, without a bore.
    bench.close();
    const KnownParts shop{&*bench.catalogue, nullptr, {}};
    Template asked = form();
    asked.questions[7].workedOut->construction = said("PT");
    const auto feed = [&](const Answers &given, const KnownParts &known) {
        return completedWith(asked, given, known)->answers.at("feed");
    };
    QCOMPARE(feed({{"flow", "20 L/h"}}, {}), std::string("-4"));
    QCOMPARE(feed({{"flow", "20 L/h"}}, shop), std::string("-6"));
    QCOMPARE(feed({{"flow", "1500 L/h"}}, {}), std::string("-12"));
    QCOMPARE(feed({{"flow", "1500 L/h"}}, shop), std::string("-10"));
}

void SizesAreWorkedOut::linesCarryAllThatTheirPumpGives()
{
    Bench bench;
    bench.hose("PT");
    Part &pump = bench.part("P-460", Kind::Pump, "in: ORB -8 female; out: ORB -8 female");
    pump.facts = PumpFacts{{{200, 13.5, 480}, {400, 13.5, 440}}, {}, true, false, "in-line"};
    bench.part("TANK", Kind::Tank, "out: AN -8 male; return: AN -8 male");
    bench.part("ENGINE", Kind::Engine, "in: AN -8 male");
    Template asked = form();
    asked.stations = {station("tank", Kind::Tank), station("pump", Kind::Pump),
                      station("engine", Kind::Engine)};
    asked.stations[1].demand.flow = said("{flow}");
    asked.stations[1].demand.pressure = said("{pump}");
    asked.runs = {run("supply", "tank.out", "pump.in", "-8", "3 ft"),
                  run("feed", "pump.out", "engine.in", "", "11 ft")};
    asked.runs[1].dash = said("{feed}");
    asked.questions[7].workedOut->pumps = {"pump"};
    bench.add(asked);
    const auto build = expand(bench.request("fuel", {{"power", "200 hp"}, {"length", "20 ft"}}));
    QVERIFY2(build, build ? "" : build.error().text().c_str());
    const auto found = std::find_if(build->workedOut.begin(), build->workedOut.end(),
                                    [](const WorkedAnswer &one) { return one.question == "feed"; });
    // At 43.5 psi, half way between the curve's points: 460 L/h, not the 76 that are asked for.
    QVERIFY(std::abs(found->sizes->line.flowM3S * 3.6e6 - 460) < 0.1);
    QCOMPARE(build->run("feed")->dash, 8);
    // Without a pump that gives enough it goes by what is asked for.
    const auto none = expand(bench.request("fuel", {{"power", "1500 hp"}}));
    QVERIFY(none && !none->station("pump")->part);
}

/// The rule of thumb: gasoline -6 to about 500 hp, -8 to 800-1,000, -10 to 1,200-1,500, alcohol one
/// to two sizes up (common practice, no source).
void SizesAreWorkedOut::practiceStandsBeside()
{
    const auto practice = [](Fluid fluid, double power) {
        const auto said = practiceOf(fluid, power);
        return said ? std::pair(said->dash, said->mostDash) : std::pair(0, 0);
    };
    QCOMPARE(practice(Fluid::Gasoline, 500), std::pair(6, 6));
    QCOMPARE(practice(Fluid::Gasoline, 501), std::pair(8, 8));
    QCOMPARE(practice(Fluid::Gasoline, 1400), std::pair(10, 10));
    QCOMPARE(practice(Fluid::Gasoline, 1501), std::pair(0, 0));
    QCOMPARE(practice(Fluid::E85, 450), std::pair(8, 10));
    QCOMPARE(practice(Fluid::Methanol, 1400), std::pair(12, 16));
    QCOMPARE(practice(Fluid::EngineOil, 450), std::pair(0, 0));
    QVERIFY(of(workedBy({}), "feed").sizes->practice);
    QVERIFY(!of(workedBy({}), "return").sizes->practice);
}

QTEST_APPLESS_MAIN(SizesAreWorkedOut)
#include "tst_sizes_are_worked_out.moc"
