// SPDX-License-Identifier: MIT
//
// Fuel builds that are made wrong by one fact at a time: each is told once, at its place, and none
// twice; a healthy one says nothing of its flow. The figures stand in tst_build_carries_its_flow;
// the bounds are judgement, except the quarter over the engine's flow (14 CFR 23.955).

#include "flow_by_hand.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

void setCurve(FlowByHand &build, std::vector<PumpFacts::Point> curve)
{
    auto facts = *build.partAt("pump").as<PumpFacts>();
    facts.curve = std::move(curve);
    build.partAt("pump").facts = facts;
}

void setLoss(FlowByHand &build, const std::string &filter, std::optional<double> lossKpa)
{
    auto facts = *build.partAt(filter).as<FilterFacts>();
    facts.cleanLossKpa = lossKpa;
    build.partAt(filter).facts = facts;
}

struct Wrong {
    const char *name;
    FlowByHand (*healthy)();
    void (*spoil)(FlowByHand &);
    Severity severity;
    const char *where;
    const char *words; ///< In what it is about.
};

const Wrong WrongBuilds[] = {
    {"a return of 3/16 in cannot let the pressure down", carburettorWithReturn,
     [](FlowByHand &build) {
         build.hose("regulator-tank", {4.7625, 3000, 4});
     },
     Severity::Stop, "regulator", "Regulator P-regulator: cannot hold 45.0 kPa"},
    {"a return that keeps up a fifth", carburettorWithReturn,
     [](FlowByHand &build) {
         build.hose("regulator-tank", {7.94, 3000});
     },
     Severity::Caution, "regulator", "of the 45.0 kPa it holds"},
    {"an open regulator that keeps up more than it is set to", carburettorWithReturn,
     [](FlowByHand &build) {
         build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, 255.0, 50.0};
     },
     Severity::Stop, "regulator", "Regulator P-regulator: cannot hold 45.0 kPa"},
    {"a regulator of which nobody says what it takes", carburettorWithReturn,
     [](FlowByHand &build) {
         build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, {}, {}};
     },
     Severity::Note, "regulator", "what it takes wide open is assumed to be nothing"},
    {"a regulator that passes less than the pump", injectionWithReturn,
     [](FlowByHand &build) {
         build.partAt("regulator").facts = RegulatorFacts{10.0, 900.0, true, 200.0, {}};
     },
     Severity::Caution, "regulator", "more comes back than it passes"},
    {"a pump that gives less than the engine burns", injectionWithReturn,
     [](FlowByHand &build) {
         setCurve(build, {{200, 13.5, 110}, {500, 13.5, 90}});
     },
     Severity::Stop, "pump", "is wanted"},
    {"a pump that is enough for the engine, but not for a quarter more", injectionWithReturn,
     [](FlowByHand &build) {
         setCurve(build, {{200, 13.5, 105}, {500, 13.5, 105}});
     },
     Severity::Stop, "pump", "Pump P-pump: 105 L/h where 117 L/h is wanted"},
    {"a pump whose curve ends below the rail's pressure", injectionWithReturn,
     [](FlowByHand &build) {
         setCurve(build, {{100, 13.5, 280}, {250, 13.5, 260}});
     },
     Severity::Stop, "pump", "works beyond the end of its curve"},
    {"a pump whose curve begins above it", injectionWithReturn,
     [](FlowByHand &build) {
         setCurve(build, {{400, 13.5, 235}, {500, 13.5, 208}});
     },
     Severity::Caution, "pump", "works before the beginning of its curve"},
    {"too little at a flat battery", injectionWithReturn,
     [](FlowByHand &build) {
         build.expansion.answers["voltage"] = "11 V";
         setCurve(build, {{200, 11, 100}, {500, 11, 90}, {200, 13.5, 272}, {500, 13.5, 208}});
     },
     Severity::Stop, "pump", "is wanted"},
    {"a fine filter before the pump", injectionWithReturn,
     [](FlowByHand &build) { setLoss(build, "prefilter", 90); }, Severity::Stop, "pump",
     "from boiling"},
    {"fuel of 60 °C", injectionWithReturn,
     [](FlowByHand &build) { build.expansion.answers["fuel-temperature"] = "60 C"; },
     Severity::Stop, "pump", "the fuel boils at its inlet"},
    {"a mountain of 1200 m in summer", injectionWithReturn,
     [](FlowByHand &build) { build.expansion.answers["altitude"] = "1200 m"; }, Severity::Caution,
     "pump", "from boiling"},
    {"winter's gasoline in summer", injectionWithReturn,
     [](FlowByHand &build) { build.expansion.answers["vapour-pressure"] = "13 psi"; },
     Severity::Stop, "pump", "the fuel boils at its inlet"},
    {"a post-filter that is too small", injectionWithReturn,
     [](FlowByHand &build) { setLoss(build, "postfilter", 250); }, Severity::Stop, "postfilter",
     "The line from pump P-pump to regulator P-regulator takes"},
    {"a feed line of 3/16 in", injectionWithReturn,
     [](FlowByHand &build) {
         build.hose("postfilter-rail", {4.7625, 3000, 4});
     },
     Severity::Stop, "postfilter-rail", "The line from pump P-pump to regulator P-regulator takes"},
    {"a feed line that takes an eighth of the rail's pressure", injectionWithReturn,
     [](FlowByHand &build) {
         build.hose("postfilter-rail", {5.5, 2000, 4});
     },
     Severity::Caution, "postfilter-rail",
     "The line from pump P-pump to regulator P-regulator takes"},
    {"a thin line to the carburettor", carburettorWithReturn,
     [](FlowByHand &build) {
         build.hose("regulator-carburettor", {3, 400, 3});
     },
     Severity::Stop, "regulator-carburettor",
     "from regulator P-regulator to carburettor P-carburettor takes"},
    {"a launch that holds the fuel back", carburettorWithReturn,
     [](FlowByHand &build) {
         build.expansion.answers["acceleration"] = "1.5 g";
         build.placed("regulator-carburettor").forwardM = 3;
     },
     Severity::Stop, "regulator-carburettor", "to carburettor P-carburettor takes"},
    {"a short, thin supply, with its margin good", injectionWithReturn,
     [](FlowByHand &build) {
         build.hose("prefilter-pump", {7, 50, 6});
     },
     Severity::Caution, "prefilter-pump",
     "The line from prefilter P-prefilter to pump P-pump: 1.8"},
    {"a bore that nobody has entered", injectionWithReturn,
     [](FlowByHand &build) {
         build.hose("postfilter-rail", {0, 1200});
     },
     Severity::Note, "", "Bores are assumed of H-postfilter-rail"},
    {"a filter without a curve", injectionWithReturn,
     [](FlowByHand &build) { setLoss(build, "postfilter", {}); }, Severity::Note, "",
     "Flow could not be judged in full"},
    {"a pump without a curve", injectionWithReturn,
     [](FlowByHand &build) {
         setCurve(build, {{300, 13.5, 255}});
     },
     Severity::Note, "", "Flow could not be judged in full"},
    {"a slow line between laminar and turbulent", carburettorWithReturn,
     [](FlowByHand &build) {
         build.hose("regulator-carburettor", {25, 400, 16});
     },
     Severity::Note, "regulator-carburettor", "One line runs between laminar and turbulent"},
};

} // namespace

class WrongFlowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aHealthyBuildSaysNothing();
    void whatIsWrongIsToldOnce_data();
    void whatIsWrongIsToldOnce();
    void aThinLineIsNotAlsoItsPumpsFault();
    void aWeakPumpIsToldBesideALineThatTakesALittleMuch();
    void theReturnOfThePublishedCheck_data();
    void theReturnOfThePublishedCheck();
    void theInletSaysWhatAircraftAreHeldTo();
    void velocityIsToldWherePressureIsNotKnown();
    void warmFuelIsOneCauseForAllPumps();
    void aFilterAtFaultIsNamed();
    void everyFindingSaysWhyBySourceAndWhatToDo();
};

void WrongFlowTest::aHealthyBuildSaysNothing()
{
    for (const auto make : {injectionWithReturn, carburettorWithReturn}) {
        const auto build = make();
        QVERIFY(!build.flow().runs.empty() && build.flow().unknown.empty());
        const auto found = build.flowFindings();
        QVERIFY2(found.empty(), listed(found).c_str());
    }
}

void WrongFlowTest::whatIsWrongIsToldOnce_data()
{
    QTest::addColumn<std::size_t>("at");
    for (std::size_t at = 0; at < std::size(WrongBuilds); ++at)
        QTest::newRow(WrongBuilds[at].name) << at;
}

void WrongFlowTest::whatIsWrongIsToldOnce()
{
    QFETCH(std::size_t, at);
    const Wrong &wrong = WrongBuilds[at];
    auto build = wrong.healthy();
    const auto before = build.findings();
    wrong.spoil(build);
    auto found = build.findings(); // Whatever it is about: filters, ratings, flow.
    found.erase(std::remove_if(found.begin(), found.end(),
                               [&before](const Finding &one) {
                                   return std::find(before.begin(), before.end(), one) !=
                                          before.end();
                               }),
                found.end());
    QVERIFY2(found.size() == 1, listed(found).c_str());
    QVERIFY2(found.front().severity == wrong.severity, listed(found).c_str());
    QVERIFY2(found.front().where == wrong.where, listed(found).c_str());
    QVERIFY2(found.front().about.find(wrong.words) != std::string::npos, listed(found).c_str());
}

void WrongFlowTest::aThinLineIsNotAlsoItsPumpsFault()
{
    auto build = injectionWithReturn();
    build.hose("postfilter-rail", {4.7625, 9000, 4}); // Far beyond what the pump can push.
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == 1 && found.front().where == "postfilter-rail", listed(found).c_str());
}

void WrongFlowTest::aWeakPumpIsToldBesideALineThatTakesALittleMuch()
{
    // With a line that keeps to its tenth the pump would still give too little: two causes.
    auto build = injectionWithReturn();
    build.hose("postfilter-rail", {3.7, 2000, 3});
    setCurve(build, {{200, 13.5, 110}, {500, 13.5, 90}});
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == 2, listed(found).c_str());
    QCOMPARE(found.front().where, std::string("pump"));
    QVERIFY(found.front().severity == Severity::Stop);
    QCOMPARE(found.back().where, std::string("postfilter-rail"));
    QVERIFY2(found.back().severity == Severity::Caution, listed(found).c_str());
}

void WrongFlowTest::theReturnOfThePublishedCheck_data()
{
    // 255 L/h of 745 kg/m³ and 0.41 mPa·s, 3 m, K = 4, by python-fluids 1.0.22: 111.25, 10.58,
    // 4.62 and 1.27 kPa; of 45 kPa 247, 24, 10 and 2.8 %. Up to 5 % is quiet, over 100 % a stop.
    QTest::addColumn<double>("boreMm");
    QTest::addColumn<QString>("severity");
    QTest::addColumn<QString>("words");
    QTest::newRow("3/16 in") << 4.7625 << "stop"
                             << "cannot hold 45.0 kPa";
    QTest::newRow("5/16 in") << 7.9375 << "caution"
                             << "10.6 kPa, 24 % of 45.0 kPa";
    QTest::newRow("3/8 in") << 9.525 << "caution"
                            << "4.6 kPa, 10 % of 45.0 kPa";
    QTest::newRow("1/2 in") << 12.7 << ""
                            << "";
}

void WrongFlowTest::theReturnOfThePublishedCheck()
{
    QFETCH(double, boreMm);
    QFETCH(QString, severity);
    QFETCH(QString, words);
    auto build = carburettorWithReturn();
    build.expansion.answers["fuel-temperature"] = "20 C"; // The table's 745 and 0.41.
    build.hose("regulator-tank", {boreMm, 3000});
    std::vector<const Part *> ends; // Ten swept ends of 0.3 and the way into the tank: 4.
    for (int end = 0; end < 10; ++end)
        ends.push_back(&build.hoseEnd(90, boreMm));
    build.passes("regulator-tank", ends);
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == (severity.isEmpty() ? 0 : 1), listed(found).c_str());
    if (found.empty())
        return;
    QCOMPARE(QString::fromStdString(std::string(text(found.front().severity))), severity);
    const std::string all = found.front().about + " " + found.front().text;
    QVERIFY2(all.find(words.toStdString()) != std::string::npos, listed(found).c_str());
}

void WrongFlowTest::theInletSaysWhatAircraftAreHeldTo()
{
    auto build = injectionWithReturn();
    build.expansion.answers["altitude"] = "1200 m";
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == 1, listed(found).c_str());
    // 5 psi = 34.5 kPa (pump handbook).
    for (const char *words : {"which leaves ", "34.5 kPa (5 psi)"})
        QVERIFY2(found.front().text.find(words) != std::string::npos, listed(found).c_str());
}

void WrongFlowTest::velocityIsToldWherePressureIsNotKnown()
{
    // 4 Q / π d²: 255 L/h in 9 mm run at 1.11 m/s, in 7 mm at 1.84. Usual up to 1.0, a stop from
    // 1.5 only where the inlet could not be judged.
    for (const double boreMm : {9.0, 7.0}) {
        auto build = injectionWithReturn();
        build.hose("prefilter-pump", {boreMm, 50, 8});
        auto found = build.flowFindings();
        QVERIFY2(found.size() == 1, listed(found).c_str());
        QVERIFY2(found.front().severity == Severity::Caution, listed(found).c_str());
        QVERIFY2(found.front().text.find("kPa from boiling") != std::string::npos,
                 listed(found).c_str());
        setLoss(build, "prefilter", {});
        found = build.flowFindings();
        QVERIFY2(found.size() == 2, listed(found).c_str()); // That, and what is not known.
        QVERIFY2(found.front().severity == (boreMm > 8 ? Severity::Caution : Severity::Stop),
                 listed(found).c_str());
        QCOMPARE(found.front().where, std::string("prefilter-pump"));
    }
}

void WrongFlowTest::warmFuelIsOneCauseForAllPumps()
{
    auto build = injectionWithReturn();
    build.add("second tank", Kind::Tank, VesselFacts{});
    build.pumpOf("second", {{0, 13.5, 300}, {100, 13.5, 300}});
    build.run("tank", "second", Level::Suction);
    build.run("second", "second tank");
    for (const char *id : {"tank-second", "second-second tank"})
        build.hose(id, {12.7, 500, 10});
    QVERIFY2(build.flowFindings().empty(), listed(build.flowFindings()).c_str());
    build.expansion.answers["fuel-temperature"] = "60 C";
    const auto found = build.flowFindings();
    QVERIFY2(found.size() == 1, listed(found).c_str());
}

void WrongFlowTest::aFilterAtFaultIsNamed()
{
    auto line = injectionWithReturn();
    setLoss(line, "postfilter", 250); // 250 kPa × 255 / 1000, a little less for what comes through.
    const auto found = line.flowFindings();
    QCOMPARE(found.size(), std::size_t{1});
    QVERIFY2(found.front().text.find("Of it postfilter P-postfilter takes 6") != std::string::npos,
             listed(found).c_str());
    QVERIFY(found.front().remedy == "Use a filter with more area.");
    auto inlet = injectionWithReturn();
    setLoss(inlet, "prefilter", 90);
    QVERIFY2(inlet.flowFindings().front().text.find("of it prefilter P-prefilter") !=
                 std::string::npos,
             listed(inlet.flowFindings()).c_str());
}

void WrongFlowTest::everyFindingSaysWhyBySourceAndWhatToDo()
{
    for (const auto &wrong : WrongBuilds) {
        auto build = wrong.healthy();
        wrong.spoil(build);
        for (const auto &finding : build.flowFindings()) {
            const std::string all = finding.about + finding.text + finding.remedy;
            QVERIFY2(!finding.source.empty() && !finding.remedy.empty(), wrong.name);
            QVERIFY2(finding.text.find_first_of("0123456789") != std::string::npos ||
                         finding.severity == Severity::Note,
                     wrong.name);
            QVERIFY2(all.find("safe") == std::string::npos, wrong.name);
        }
    }
}

QTEST_APPLESS_MAIN(WrongFlowTest)
#include "tst_wrong_flow_is_found_once.moc"
