// SPDX-License-Identifier: MIT
//
// Templates inside templates: shared, ordered, in a circle, and more of them than can be made.

#include "tests/systems/bench.h"

#include <QTest>

#include <ctime>

using namespace flarestock;

namespace {

Template formOf(const std::string &id)
{
    Template made;
    made.id = made.title = id;
    made.system = "fuel";
    return made;
}

Module moduleOf(const std::string &id, const std::string &of)
{
    Module made;
    made.id = id;
    made.templateId = of;
    return made;
}

/// `height` templates, each `width` times in the next: width^height stations at the top.
Bench tower(int height, int width)
{
    Bench bench;
    Template ground = formOf("t0");
    ground.stations = {station("pump", Kind::Pump)};
    bench.add(ground);
    for (int i = 1; i <= height; ++i) {
        Template floor = formOf("t" + std::to_string(i));
        for (int j = 0; j < width; ++j)
            floor.modules.push_back(moduleOf("m" + std::to_string(j), "t" + std::to_string(i - 1)));
        bench.add(floor);
    }
    return bench;
}

double cpuMilliseconds()
{
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

} // namespace

class NestingIsBounded : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void namesTheNumberOfStationsThatAreTooMany();
    void isOverInAMillisecond();
    void makesAsManyAsAreAllowed();
    void namesTheCircle();
    void namesAModuleThatIsNotThere();
    void refusesToGoTooDeep();
    void sharesASubAssembly();
    void standsInFlowOrder();
    void answersAModulesQuestions();
    void leavesOutARunToWhatIsNotThere();
};

void NestingIsBounded::namesTheNumberOfStationsThatAreTooMany()
{
    const Bench bench = tower(60, 2);
    const auto built = expand(bench.request("t60"));
    QVERIFY(!built);
    // 2^60 = 1152921504606846976
    QVERIFY2(built.error().wrong.find("1152921504606846976 stations") != std::string::npos,
             built.error().wrong.c_str());
    const Bench higher = tower(150, 3); // 3^150 has 72 digits
    const auto beyond = expand(higher.request("t150"));
    QVERIFY(!beyond);
    QVERIFY2(beyond.error().wrong.find("more stations than 64 bits count") != std::string::npos,
             beyond.error().wrong.c_str());
}

void NestingIsBounded::isOverInAMillisecond()
{
    const Bench bench = tower(60, 2);
    const ExpandRequest request = bench.request("t60");
    double best = 1e9;
    for (int i = 0; i < 20; ++i) {
        const double before = cpuMilliseconds();
        const auto built = expand(request);
        QVERIFY(!built && built.error().wrong.find("stations") != std::string::npos);
        best = std::min(best, cpuMilliseconds() - before);
    }
    qInfo("2^60 paths refused in %.3f ms of CPU time", best);
    QVERIFY2(best < 1.0, "a hostile template costs no more than a millisecond");
}

void NestingIsBounded::makesAsManyAsAreAllowed()
{
    const Bench bench = tower(13, 2);
    auto request = bench.request("t13");
    const auto built = expand(request);
    QVERIFY(built);
    QCOMPARE(built->stations.size(), std::size_t(8192));
    QVERIFY(built->station("m1/m1/m1/m1/m1/m1/m1/m1/m1/m1/m1/m1/m1/pump"));
    request.copies = 13; // 106,496
    QVERIFY(!expand(request));
}

void NestingIsBounded::namesTheCircle()
{
    Bench bench;
    for (const auto &[id, inner] :
         {std::pair("a", "b"), std::pair("b", "c"), std::pair("c", "b")}) {
        Template made = formOf(id);
        made.modules = {moduleOf("within", inner)};
        bench.add(made);
    }
    const auto built = expand(bench.request("a"));
    QVERIFY(!built);
    QVERIFY2(built.error().wrong.find("b → c → b") != std::string::npos,
             built.error().wrong.c_str());
    QVERIFY(built.error().wrong.find("a →") == std::string::npos);
}

void NestingIsBounded::namesAModuleThatIsNotThere()
{
    Bench bench;
    Template made = formOf("a");
    made.modules = {moduleOf("filters", "nowhere")};
    bench.add(made);
    const auto built = expand(bench.request("a"));
    QVERIFY(!built);
    QVERIFY(built.error().wrong.find("nowhere") != std::string::npos);
}

void NestingIsBounded::refusesToGoTooDeep()
{
    const Bench bench = tower(200, 1);
    QVERIFY(expand(bench.request("t199")));
    const auto built = expand(bench.request("t200"));
    QVERIFY(!built);
    QVERIFY(built.error().wrong.find("deeper than 200") != std::string::npos);
}

void NestingIsBounded::sharesASubAssembly()
{
    Bench bench;
    bench.part("EP-1", Kind::Pump, "in: ORB -8 female; out: ORB -6 female");
    Template inner = formOf("feed");
    inner.stations = {station("pump", Kind::Pump)};
    bench.add(inner);
    Template outer = formOf("twin");
    outer.modules = {moduleOf("left", "feed"), moduleOf("right", "feed")};
    outer.stations = {station("pump", Kind::Pump)};
    bench.add(outer);
    const auto built = expand(bench.request("twin"));
    QVERIFY(built);
    QVERIFY(built->station("left/pump") && built->station("right/pump") && built->station("pump"));
    QCOMPARE(needOf(*built, "EP-1"), std::string("3"));
    QCOMPARE(built->lines.size(), std::size_t(1));
    QCOMPARE(built->lines.front().stations.size(), std::size_t(3));
}

void NestingIsBounded::standsInFlowOrder()
{
    Bench bench;
    Template filters = formOf("filters");
    filters.stations = {station("coarse", Kind::Filter), station("pump", Kind::Pump),
                        station("fine", Kind::Filter)};
    filters.runs = {run("suction", "coarse.out", "pump.in", "-8", "1 ft"),
                    run("pressure", "pump.out", "fine.in", "-6", "1 ft")};
    bench.add(filters);
    Template outer = formOf("fuel");
    outer.stations = {station("cell", Kind::Tank), station("rail", Kind::Rail)};
    outer.modules = {moduleOf("around", "filters")};
    outer.runs = {run("to-rail", "around/fine.out", "rail.in", "-6", "2 ft"),
                  run("supply", "cell.out", "around/coarse.in", "-8", "2 ft")};
    bench.add(outer);
    const auto built = expand(bench.request("fuel"));
    QVERIFY(built);
    std::string stations;
    for (const PlacedStation &one : built->stations)
        stations += one.id + " ";
    QCOMPARE(stations, std::string("cell around/coarse around/pump around/fine rail "));
    std::string runs;
    for (const PlacedRun &one : built->runs)
        runs += one.id + " ";
    QCOMPARE(runs, std::string("supply around/suction around/pressure to-rail "));
}

void NestingIsBounded::answersAModulesQuestions()
{
    Bench bench;
    Template inner = formOf("feed");
    inner.questions = {choice("size", {"small", "large"}), choice("fluid", {"gasoline", "E85"})};
    inner.fluidQuestion = "fluid";
    inner.stations = {station("pump", Kind::Pump)};
    inner.stations[0].when = *Condition::parse("size is large and fluid is E85");
    bench.add(inner);
    Template outer = formOf("fuel");
    outer.questions = {choice("power", {"much", "little"}), choice("fluid", {"E85", "gasoline"})};
    outer.fluidQuestion = "fluid";
    outer.modules = {moduleOf("feed", "feed")};
    outer.modules[0].answers.emplace("size", eitherOr("power is much", "large", "small"));
    bench.add(outer);
    const auto much = expand(bench.request("fuel"));
    QVERIFY(much);
    QVERIFY(much->station("feed/pump")); // E85 was said once, outside, and holds inside.
    const auto little = expand(bench.request("fuel", {{"power", "little"}}));
    QVERIFY(little);
    QVERIFY(!little->station("feed/pump"));

    outer.modules[0].answers["size"] = said("huge");
    bench.add(outer);
    const auto wrong = expand(bench.request("fuel"));
    QVERIFY(!wrong);
    QVERIFY2(wrong.error().text().find("module feed, size") != std::string::npos,
             wrong.error().text().c_str());
}

void NestingIsBounded::leavesOutARunToWhatIsNotThere()
{
    Bench bench;
    Template fuel = formOf("fuel");
    fuel.questions = {choice("gauge", {"no", "yes"})};
    fuel.stations = {station("pump", Kind::Pump), station("gauge", Kind::Gauge)};
    fuel.stations[1].when = *Condition::parse("gauge is yes");
    fuel.runs = {run("to-gauge", "pump.out", "gauge.in")};
    bench.add(fuel);
    const auto without = expand(bench.request("fuel"));
    QVERIFY(without);
    QVERIFY(without->runs.empty());
    QVERIFY(without->notes.front().find("to-gauge") != std::string::npos);
    const auto with = expand(bench.request("fuel", {{"gauge", "yes"}}));
    QVERIFY(with);
    QCOMPARE(with->runs.size(), std::size_t(1));
    QCOMPARE(with->joints.size(), std::size_t(1)); // Open, as there is no part at either side.
    QVERIFY(!with->joints.front().way);
}

QTEST_APPLESS_MAIN(NestingIsBounded)
#include "tst_nesting_is_bounded.moc"
