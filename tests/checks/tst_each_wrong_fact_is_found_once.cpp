// SPDX-License-Identifier: MIT
//
// Builds in which nothing is found are made wrong by one fact; then that is found, by one finding,
// and nothing else. Limits of wire and fuse: FAA AC 43.13-1B, table 11-3 (12 AWG: fuse of 20 A,
// 18 AWG: 10 A, 0.00202 ohm/ft for 12 AWG). Weakest piece: SAE J517, scope. Fluids against metals,
// media and seals, the budget of losses, bypass and bends: as the tables of model/fluids/data say,
// with their sources there. Arc of a quarter turn: π/2 × radius.

#include "said_findings.h"
#include "whole_builds.h"

#include <QTest>

#include <functional>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

using Change = std::function<void(WholeBuild &)>;

struct Wrong {
    Change whole;  ///< Makes the build in which nothing is found.
    Change before; ///< What else holds in this row, still quiet.
    Change fact;   ///< The one fact.
};

Change with(Fluid fluid)
{
    return [fluid](WholeBuild &build) { build.expansion.fluid = fluid; };
}

void nothing(WholeBuild &) {}

void rubberHose(WholeBuild &build)
{
    std::get<HoseFacts>(build.hose->facts).liner = "NBR";
}

FilterFacts &filterOf(WholeBuild &build, const char *number)
{
    return std::get<FilterFacts>(build.part(number).facts);
}

HoseFacts &hoseOf(WholeBuild &build)
{
    return std::get<HoseFacts>(build.hose->facts);
}

void need(WholeBuild &build, const std::string &number, const Decimal &amount)
{
    for (auto &line : build.expansion.lines)
        if (line.part->number == number)
            line.need.amount = amount;
    for (auto *quantity : {&build.shelf[number].onHand, &build.shelf[number].free,
                           &build.shelf[number].pieces.front()})
        quantity->amount = amount;
}

} // namespace

Q_DECLARE_METATYPE(Wrong)

class WrongFactsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aWholeBuildIsQuiet();
    void isFoundOnce_data();
    void isFoundOnce();
    void allAtOnceIsEachOnce();
    void injectorsStandInTheChain();
    void aBetaSaysHowMuchIsHeldBack();

private:
    static void row(const char *name, Severity severity, const char *about, Wrong wrong)
    {
        QTest::newRow(name) << severity << std::string(about) << std::move(wrong);
    }
    static void materialRows();
    static void lineRows();
    static void ratingRows();
    static void filterRows();
    static void wiringRows();
    static void oilAndBrakeRows();
};

void WrongFactsTest::aWholeBuildIsQuiet()
{
    for (const auto &whole : {fuel, oil, brakes}) {
        WholeBuild build;
        whole(build);
        for (const auto &finding : build.found())
            QVERIFY2(finding.severity == Severity::Note, listed({finding}));
    }
}

void WrongFactsTest::isFoundOnce_data()
{
    QTest::addColumn<Severity>("severity");
    QTest::addColumn<std::string>("about");
    QTest::addColumn<Wrong>("wrong");
    materialRows();
    lineRows();
    ratingRows();
    filterRows();
    wiringRows();
    oilAndBrakeRows();
}

void WrongFactsTest::materialRows()
{
    using enum Severity;
    row("a seal", Stop, "EPDM seal is ruined by gasoline",
        {fuel, nothing, [](WholeBuild &build) { build.part("P-coarse").seal = "EPDM"; }});
    row("a liner", Stop, "EPDM liner is ruined by gasoline",
        {fuel, nothing, [](WholeBuild &build) { hoseOf(build).liner = "EPDM"; }});
    row("an element", Stop, "paper element is ruined by E85",
        {fuel, with(Fluid::E85),
         [](WholeBuild &build) { filterOf(build, "P-coarse").medium = "paper"; }});
    row("an element that may last", Caution, "bronze element may not last in methanol",
        {fuel, with(Fluid::Methanol),
         [](WholeBuild &build) { filterOf(build, "P-coarse").medium = "bronze"; }});
    row("the element in its housing", Stop, "its element EL is not made for E85",
        {fuel, with(Fluid::E85),
         [](WholeBuild &build) { build.element.suits = {Fluid::Gasoline}; }});
    row("a metal in methanol", Caution, "Aluminium in methanol: I",
        {fuel, with(Fluid::Methanol),
         [](WholeBuild &build) { build.part("I").material = "aluminium"; }});
    row("a metal in E85", Note, "Aluminium in E85: I",
        {fuel, with(Fluid::E85),
         [](WholeBuild &build) { build.part("I").material = "aluminium"; }});
    row("a steel nut", Caution, "a steel nut on an aluminium cone",
        {fuel,
         [](WholeBuild &build) {
             build.end->material = build.part("P-rail").material = "aluminium";
         },
         [](WholeBuild &build) { build.end->material = "steel"; }});
    row("an element in its filter", Stop, "its element EL, paper, is ruined by E85",
        {fuel,
         [](WholeBuild &build) {
             build.expansion.fluid = Fluid::E85;
             filterOf(build, "P-fine").medium.clear();
         },
         [](WholeBuild &build) { std::get<ElementFacts>(build.element.facts).medium = "paper"; }});
    row("a filter entered as paper", Stop, "paper element is ruined by E85",
        {fuel, with(Fluid::E85),
         [](WholeBuild &build) { filterOf(build, "P-fine").medium = "paper"; }});
}

void WrongFactsTest::lineRows()
{
    using enum Severity;
    row("a line that does not conduct", Caution, "Hose that is not said to conduct: H",
        {fuel, nothing, [](WholeBuild &build) { hoseOf(build).conductive = false; }});
    row("rubber behind a filter", Caution, "Hose that is not said to conduct: H",
        {fuel, rubberHose, [](WholeBuild &build) { hoseOf(build).conductive = false; }});
    row("rubber behind no filter", Note, "Hose that is not said to conduct: X",
        {fuel, nothing, [](WholeBuild &build) {
             build.expansion.runs[2].line = // From pump to filter.
                 &build.onBill("X", Kind::Hose, HoseFacts{"R", 6, 8.0, 60.0, "NBR", false, false},
                               {40, Unit::Inch});
             build.part("X").ratings.pressureKpa = 1000;
         }});
    row("torques that differ", Note,
        "Published torques differ by a factor of up to 2.1", // 26 to 12.5 N·m
        {fuel, nothing, [](WholeBuild &build) { build.end->material = "aluminium"; }});
}

void WrongFactsTest::ratingRows()
{
    using enum Severity;
    row("a hose", Stop, "H is rated for 200 kPa, the system runs at 300 kPa",
        {fuel, nothing, [](WholeBuild &build) { build.hose->ratings.pressureKpa = 200; }});
    row("boost on top", Stop, "H is rated for 350 kPa, the system runs at 400 kPa",
        {fuel, [](WholeBuild &build) { build.hose->ratings.pressureKpa = 350; },
         [](WholeBuild &build) { build.expansion.answers["boost"] = "1 bar"; }});
    row("an end", Stop, "E is rated for 200 kPa, the system runs at 300 kPa",
        {fuel, nothing, [](WholeBuild &build) { build.end->ratings.pressureKpa = 200; }});
    row("nobody rates it", Caution, "No working pressure is published for E",
        {fuel, nothing, [](WholeBuild &build) { build.end->ratings = {}; }});
    row("nobody rates it, carburettor", Note, "No working pressure is published for E",
        {fuel,
         [](WholeBuild &build) {
             build.stations[5].demand.pressure = always("7 psi");
             build.part("P-regulator").facts = RegulatorFacts{20, 60, true, {}, {}};
         },
         [](WholeBuild &build) { build.end->ratings = {}; }});
    row("a bend", Stop, "H bends to 60 mm, its way to 25 mm",
        {fuel, [](WholeBuild &build) { build.runOf("fine-rail").bend = always("3 in"); },
         [](WholeBuild &build) { build.runOf("fine-rail").bend = always("1 in"); }});
    row("a short line", Note, "is too short for a quarter turn", // 94.2 mm, 3.7 in
        {fuel,
         [](WholeBuild &build) {
             build.expansion.runs[3].length = {4, Unit::Inch};
         },
         [](WholeBuild &build) {
             build.expansion.runs[3].length = {3, Unit::Inch};
         }});
    row("an angle", Caution, "the end is of 0°, 90° is asked for",
        {fuel, [](WholeBuild &build) { build.runOf("fine-rail").endAngle = always("0"); },
         [](WholeBuild &build) { build.runOf("fine-rail").endAngle = always("90"); }});
}

void WrongFactsTest::filterRows()
{
    using enum Severity;
    row("a loss before the pump", Caution, "takes 4.5 kPa clean at 255 L/h", // 9 × 255 / 510
        {fuel, nothing, [](WholeBuild &build) { filterOf(build, "P-coarse").cleanLossKpa = 9; }});
    row("a bypass in fuel", Caution, "has a bypass, in fuel",
        {fuel, nothing, [](WholeBuild &build) { filterOf(build, "P-fine").bypassKpa = 100; }});
    row("injectors that pass less", Stop, "is too coarse for the injectors I",
        {fuel, nothing, [](WholeBuild &build) {
             std::get<FuelUserFacts>(build.part("I").facts).passageMicron = 4;
         }});
    row("a rating without its basis", Caution, "100 µm without a basis",
        {fuel, nothing, [](WholeBuild &build) {
             filterOf(build, "P-coarse").rating->basis = RatingBasis::Unstated;
         }});
    row("another element", Caution, "its element EL is another than it is sold with",
        {fuel, nothing, [](WholeBuild &build) {
             std::get<ElementFacts>(build.element.facts).rating.micron = 40;
         }});
    row("glass to be washed", Caution, "EL: entered as washable, of microglass",
        {fuel, nothing,
         [](WholeBuild &build) { std::get<ElementFacts>(build.element.facts).washable = true; }});
}

void WrongFactsTest::wiringRows()
{
    using enum Severity;
    row("a fuse too small", Caution, "a fuse of 7.5 A will blow", // below 1.25 × 8 A
        {fuel, nothing, [](WholeBuild &build) { build.part("F").facts = CurrentFacts{7.5}; }});
    row("a fuse too large", Stop, "a fuse of 30 A does not guard its wire",
        {fuel, nothing, [](WholeBuild &build) { build.part("F").facts = CurrentFacts{30}; }});
    row("no fuse", Stop, "no fuse is on the bill for it",
        {fuel, nothing, [](WholeBuild &build) { build.leaveOut("F"); }});
    row("a wire too thin", Stop, "AWG 20 is too thin for it", // 5 A at most
        {fuel, nothing, [](WholeBuild &build) { build.part("W").facts = WireFacts{20}; }});
    row("a wire of no margin", Caution, "AWG 18 is too thin for it", // 10 A, 1.25 × 8.4 = 10.5
        {fuel,
         [](WholeBuild &build) { std::get<PumpFacts>(build.part("P-pump").facts).amps = 8.4; },
         [](WholeBuild &build) { build.part("W").facts = WireFacts{18}; }});
    row("a long wire", Caution, "AWG 12 loses too much on the way", // 40 ft × 0.00202 × 8 A
        {fuel, nothing, [](WholeBuild &build) { need(build, "W", 480); }});
    row("no relay", Caution, "no relay is on the bill for it",
        {fuel, nothing, [](WholeBuild &build) { build.leaveOut("R"); }});
    row("a wire of no gauge", Note, "The wiring could not be judged in full",
        {fuel, nothing, [](WholeBuild &build) { build.part("W").facts = WireFacts{}; }});
    row("no wire", Note, "The wiring could not be judged in full",
        {fuel, nothing, [](WholeBuild &build) { build.leaveOut("W"); }});
    row("a pump of no current", Note, "The wiring could not be judged in full",
        {fuel, nothing,
         [](WholeBuild &build) { std::get<PumpFacts>(build.part("P-pump").facts).amps.reset(); }});
    row("a relay too small", Caution, "a relay of 9 A is too small for it",
        {fuel, nothing, [](WholeBuild &build) { build.part("R").facts = CurrentFacts{9}; }});
}

void WrongFactsTest::oilAndBrakeRows()
{
    using enum Severity;
    row("no bypass", Caution, "has no bypass",
        {oil, nothing, [](WholeBuild &build) { filterOf(build, "P-filter").bypassKpa.reset(); }});
    row("a bypass that opens at once", Caution, "its bypass opens while it is clean",
        {oil, nothing, [](WholeBuild &build) { filterOf(build, "P-filter").bypassKpa = 15; }});
    row("no beta", Note, "30 µm without a beta",
        {oil, nothing,
         [](WholeBuild &build) { filterOf(build, "P-filter").rating->beta.reset(); }});
    row("beta 20", Note, "P-filter: beta 20 at 30 µm",
        {oil, nothing, [](WholeBuild &build) { filterOf(build, "P-filter").rating->beta = 20; }});
    row("oil that is to be clean", Caution, "beta 200 at 30 µm, and oil of 18/16/13 is wanted",
        {oil, nothing,
         [](WholeBuild &build) { build.expansion.answers["cleanliness"] = "18/16/13"; }});
    row("no basis and no beta", Caution, "30 µm without a basis",
        {oil, [](WholeBuild &build) { build.expansion.filters = FilterRule::OilReturn; },
         [](WholeBuild &build) {
             filterOf(build, "P-filter").rating = MicronRating{30, {}, {}};
         }});
    row("a liner in the heat", Caution, "NBR stands up to 100 °C, the fluid reaches 120 °C: H",
        {oil, [](WholeBuild &build) { build.hose->ratings.highC.reset(); }, rubberHose});
    row("a seal in the heat", Caution,
        "NBR stands up to 100 °C, the fluid reaches 120 °C: P-filter",
        {oil, nothing, [](WholeBuild &build) { build.part("P-filter").seal = "NBR"; }});
    row("heat", Caution, "H is made for 100 °C, the fluid reaches 120 °C",
        {oil, nothing, [](WholeBuild &build) { build.hose->ratings.highC = 100; }});
    row("a cooler", Stop, "P-cooler is rated for 500 kPa",
        {oil, nothing,
         [](WholeBuild &build) { build.part("P-cooler").ratings.pressureKpa = 500; }});
    row("a calliper nobody rates", Stop, "P-calliper: no working pressure is published",
        {brakes, nothing, [](WholeBuild &build) { build.part("P-calliper").ratings = {}; }});
    row("a brake hose", Stop, "H is rated for 7000 kPa",
        {brakes, nothing, [](WholeBuild &build) { build.hose->ratings.pressureKpa = 7000; }});
    row("aluminium in brakes", Caution, "Aluminium fittings in the brakes: E",
        {brakes, nothing, [](WholeBuild &build) { build.end->material = "aluminium"; }});
    row("a seal in brakes", Stop, "NBR seal is ruined by DOT 4",
        {brakes, nothing, [](WholeBuild &build) { build.part("P-calliper").seal = "NBR"; }});
}

void WrongFactsTest::isFoundOnce()
{
    QFETCH(Severity, severity);
    QFETCH(std::string, about);
    QFETCH(Wrong, wrong);
    WholeBuild build;
    wrong.whole(build);
    wrong.before(build);
    const auto before = build.found();
    wrong.fact(build);
    std::vector<Finding> fresh;
    for (const auto &finding : build.found())
        if (std::none_of(before.begin(), before.end(), [&](const Finding &known) {
                return known.about == finding.about && known.where == finding.where;
            }))
            fresh.push_back(finding);
    QVERIFY2(fresh.size() == 1, listed(fresh));
    QVERIFY2(fresh.front().severity == severity, listed(fresh));
    QVERIFY2(fresh.front().about.find(about) != std::string::npos, listed(fresh));
    QVERIFY(!fresh.front().text.empty() && !fresh.front().source.empty() &&
            !fresh.front().remedy.empty());
    for (const char *word : {"safe", "Safe"})
        QVERIFY((fresh.front().about + fresh.front().text + fresh.front().remedy).find(word) ==
                std::string::npos);
}

void WrongFactsTest::allAtOnceIsEachOnce()
{
    WholeBuild build;
    fuel(build);
    build.hose->ratings.pressureKpa = 200; // Both ends of four runs show it.
    build.part("P-coarse").seal = "EPDM";
    build.part("F").facts = CurrentFacts{30};
    const auto findings = build.found();
    const auto count = [&](const char *about) {
        return std::count_if(findings.begin(), findings.end(), [about](const Finding &finding) {
            return finding.severity == Severity::Stop &&
                   finding.about.find(about) != std::string::npos;
        });
    };
    for (const char *about : {"is rated for 200 kPa", "EPDM seal", "does not guard its wire", ""})
        QVERIFY2(count(about) == (about[0] == '\0' ? 3 : 1), listed(findings));
}

/// 1 - 1/β: 20 holds back 95 %, 75 98.67 %, 200 99.5 % (arithmetic of ISO 16889). At 4 µm(c) it
/// says something of all three sizes that ISO 4406 counts, at 14 of the largest.
void WrongFactsTest::aBetaSaysHowMuchIsHeldBack()
{
    const auto said = [](int micron, int beta, const char *wanted) {
        WholeBuild build;
        oil(build);
        build.expansion.answers["cleanliness"] = wanted;
        filterOf(build, "P-filter").rating = {micron, RatingBasis::Absolute, beta};
        for (const auto &finding : build.found())
            if (finding.about.find("P-filter: beta") != std::string::npos)
                return std::string(text(finding.severity)) + ": " + finding.text;
        return std::string();
    };
    const auto has = [](const std::string &all, const char *words) {
        return all.find(words) != std::string::npos;
    };
    QVERIFY(has(said(30, 20, "not said"), "note: Beta 20: 1 in 20 gets through, and 95.0 %"));
    QVERIFY(has(said(30, 20, "not said"), "Of 4, 6 and 14 µm"));
    QVERIFY(has(said(30, 20, "not said"), "ask how it was measured"));
    QVERIFY(has(said(14, 75, "not said"), "98.7 % is held back. Of 4 and 6 µm"));
    QVERIFY(!has(said(14, 75, "not said"), "ask how it was measured"));
    QVERIFY(has(said(14, 75, "18/16/13"), "caution: "));
    WholeBuild strainer; // Coarser than 74 µm: no beta is asked of it.
    oil(strainer);
    filterOf(strainer, "P-filter").rating = {100, RatingBasis::Nominal, {}};
    for (const auto &finding : strainer.found())
        QVERIFY2(finding.about.find("beta") == std::string::npos, listed({finding}));
    QVERIFY(has(said(4, 200, "18/16/13"), "note: Beta 200: 1 in 200 gets through, and 99.5 %"));
    QVERIFY(!has(said(4, 200, "18/16/13"), "it says nothing"));
}

void WrongFactsTest::injectorsStandInTheChain()
{
    WholeBuild build;
    fuel(build);
    const auto findings = build.found();
    const auto chain = std::find_if(findings.begin(), findings.end(), [](const Finding &finding) {
        return finding.about == "What protects what";
    });
    QVERIFY(chain != findings.end());
    QVERIFY2(
        chain->text.find("Fine (10 µm absolute) protects rail with injectors I and regulator") !=
            std::string::npos,
        listed({*chain}));
}

QTEST_APPLESS_MAIN(WrongFactsTest)
#include "tst_each_wrong_fact_is_found_once.moc"
