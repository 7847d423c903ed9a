// SPDX-License-Identifier: MIT
//
// What the checks say about builds that are wrong in one way; seals: tst_seals_against_fluids.

#include "build_by_hand.h"
#include "said_findings.h"

#include <QTest>

#include <algorithm>
#include <tuple>

using namespace flarestock;
using namespace flarestock::tests;

class FindingsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aHealthyBuildHasNoStop();
    void flowFollowsTheMakersMark();
    void aLeakingPickIsAStopWithAMend();
    void anOutdonePickIsANoteWithAMend();
    void anOpenJointIsAStop();
    void twoFixedEndsCannotBeScrewedUp();
    void aCautionOnManyJointsIsSaidOnce();
    void theFluidRuinsASeal();
    void regulatorAndUserAgreeOnPressure();
    void whatIsShortIsSaidOnce();
    void aMissingBracketIsSaid();
    void boxesThatLackAreCountedAsTheyAreTaken();
    void everyFindingHasSourceRemedyAndOrder();
    void saysWhatProtectsWhat();
};

namespace {

BuildByHand injection()
{
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("prefilter", 100);
    build.pump("pump");
    build.filter("postfilter", 10, RatingBasis::Absolute);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "prefilter", "pump", "postfilter", "rail"});
    return build;
}

} // namespace

void FindingsTest::aHealthyBuildHasNoStop()
{
    const auto build = injection();
    const auto findings = build.findings();
    QVERIFY2(of(findings, Severity::Stop).empty(), listed(findings));
    QVERIFY2(of(findings, Severity::Caution).empty(), listed(findings));
}

void FindingsTest::flowFollowsTheMakersMark()
{
    auto build = injection();
    for (auto &run : build.runs) {
        if (run.id == "postfilter-rail")
            run.from.port = "in";
        if (run.id == "pump-postfilter")
            run.to.port = "out";
    }
    const auto findings = build.findings();
    SAYS(findings, Severity::Stop, "goes through it backwards");
}

void FindingsTest::aLeakingPickIsAStopWithAMend()
{
    auto build = injection();
    auto &joint =
        build.joint("postfilter-rail", "rail inlet", direct("AN -6 male", "ORB -6 female"));
    joint.picked = true;
    const auto findings = build.findings();
    SAYS(findings, Severity::Stop, "it screws together and leaks");
    const auto stop = of(findings, Severity::Stop).front();
    QCOMPARE(stop.where, std::string("rail inlet"));
    QVERIFY(stop.mend == (Picks{{"rail inlet", ""}})); // nothing else is known: let the pick go
}

void FindingsTest::anOutdonePickIsANoteWithAMend()
{
    auto build = injection();
    auto &joint =
        build.joint("postfilter-rail", "rail inlet", direct("AN -6 male", "AN -6 female swivel"));
    joint.picked = joint.outdone = true;
    joint.others = {direct("AN -6 male", "AN -6 female")};
    const auto notes = of(build.findings(), Severity::Note);
    const auto note = std::find_if(notes.begin(), notes.end(),
                                   [](const Finding &one) { return one.where == "rail inlet"; });
    QVERIFY(note != notes.end());
    QVERIFY(note->mend == (Picks{{"rail inlet", joint.others.front().key()}}));
    QVERIFY(of(build.findings(), Severity::Stop).empty());
}

void FindingsTest::anOpenJointIsAStop()
{
    auto build = injection();
    build.joint("postfilter-rail", "rail inlet", {}).way.reset();
    SAYS(build.findings(), Severity::Stop, "nothing in the catalogue closes it");
}

void FindingsTest::twoFixedEndsCannotBeScrewedUp()
{
    auto build = injection();
    const auto fixed = [] { return direct("ORB -6 male + o-ring", "ORB -6 female"); };
    build.joint("pump-postfilter", "start", fixed());
    build.joint("pump-postfilter", "end", fixed());
    SAYS(build.findings(), Severity::Stop, "cannot be screwed up at its second end");

    auto turning = injection();
    turning.joint("pump-postfilter", "start", fixed());
    turning.joint("pump-postfilter", "end", direct("AN -6 male", "AN -6 female swivel"));
    QVERIFY2(of(turning.findings(), Severity::Stop).empty(), listed(turning.findings()));

    auto bodies = injection();
    bodies.joint("pump-postfilter", "start", fixed()); // no line between the two bodies
    SAYS(bodies.findings(), Severity::Stop, "neither side of the joint turns");
    for (auto &station : bodies.stations)
        station.bracketed = station.id != "postfilter";
    QVERIFY2(of(bodies.findings(), Severity::Stop).empty(), listed(bodies.findings()));
}

void FindingsTest::aCautionOnManyJointsIsSaidOnce()
{
    auto build = injection();
    build.joint("pump-postfilter", "one", direct("AN -6 male", "JIC -6 female swivel"));
    build.joint("postfilter-rail", "two", direct("AN -6 male", "JIC -6 female swivel"));
    const auto cautions = of(build.findings(), Severity::Caution);
    QCOMPARE(cautions.size(), std::size_t{1});
    SAYS(cautions, Severity::Caution, "2 joints pair AN with JIC");
}

void FindingsTest::theFluidRuinsASeal()
{
    auto build = injection();
    build.parts[1].seal = "EPDM"; // never with petroleum
    SAYS(build.findings(), Severity::Stop, "EPDM seal is ruined by gasoline");
    build.parts[1].seal = "NBR";
    build.expansion.fluid = Fluid::E85;
    SAYS(build.findings(), Severity::Caution, "may not last in E85");
    build.parts[1].suits = {Fluid::Gasoline};
    SAYS(build.findings(), Severity::Stop, "not made for E85");
    SAYS(build.findings(), Severity::Stop,
         "NBR seal may not last in it"); // One cause, one finding:
    QCOMPARE(of(build.findings(), Severity::Caution).size(), std::size_t{0});
    QCOMPARE(build.findings().front().matter, Matter::FluidAndMaterial); // the gravest first
}

void FindingsTest::regulatorAndUserAgreeOnPressure()
{
    auto build = injection();
    RegulatorFacts facts;
    facts.lowKpa = 20;
    facts.highKpa = 60;
    build.add("regulator", Kind::Regulator, facts);
    build.stations.back().demand.pressure.alternatives = {{{}, "43.5 psi"}};
    SAYS(build.findings(), Severity::Stop, "cannot be set to 43.5 psi");
    build.parts[4].facts = FuelUserFacts{30, 50, {}};
    SAYS(build.findings(), Severity::Stop, "wants another pressure");
    build.parts[3].ratings.pressureKpa = 200; // the post-filter; 43.5 psi is 300 kPa
    SAYS(build.findings(), Severity::Stop, "is rated for 200 kPa");
}

void FindingsTest::whatIsShortIsSaidOnce()
{
    auto build = injection();
    build.shelf.erase("P-pump");
    build.shelf.erase("P-rail");
    const auto notes = of(build.findings(), Severity::Note);
    SAYS(notes, Severity::Note, "2 of 5 lines are short");
}

void FindingsTest::aMissingBracketIsSaid()
{
    auto build = injection();
    build.shelf["P-pump"].missing = {"BK-1"};
    SAYS(build.findings(), Severity::Caution, "its box on the shelf lacks BK-1");
}

/// The build takes one pump: of two boxes that lack a bracket it takes one.
void FindingsTest::boxesThatLackAreCountedAsTheyAreTaken()
{
    auto build = injection();
    FreeStock &pumps = build.shelf["P-pump"];
    pumps.free = {2, Unit::Each};
    pumps.missing = {"BK-1", "BK-1"};
    SAYS(build.findings(), Severity::Caution, "P-pump: its box on the shelf lacks BK-1");
    for (const Finding &one : build.findings())
        QVERIFY2(one.about.find("BK-1, BK-1") == std::string::npos, one.about.c_str());
    pumps.free = {3, Unit::Each}; // One is whole.
    SAYS(of(build.findings(), Severity::Note), Severity::Note, "2 of its boxes on the shelf lack");
}

void FindingsTest::everyFindingHasSourceRemedyAndOrder()
{
    auto build = injection();
    build.parts[1].seal = "EPDM";
    build.shelf.clear();
    build.joint("pump-postfilter", "one", direct("AN -6 male", "ORB -6 female"));
    for (auto &run : build.runs)
        run.from.port = "in";
    const auto findings = build.findings();
    QVERIFY(findings.size() > 4);
    for (std::size_t i = 0; i < findings.size(); ++i) {
        QVERIFY(!findings[i].source.empty());
        QVERIFY(!findings[i].remedy.empty());
        QVERIFY(!findings[i].text.empty());
        QVERIFY(findings[i].about.find("safe") == std::string::npos);
        if (i > 0)
            QVERIFY(std::tie(findings[i - 1].severity, findings[i - 1].matter) <=
                    std::tie(findings[i].severity, findings[i].matter));
    }
    QVERIFY(findings == build.findings()); // the same again
}

void FindingsTest::saysWhatProtectsWhat()
{
    const auto build = injection();
    const auto said = protections(build.expansion);
    QCOMPARE(said.size(), std::size_t{2});
    QCOMPARE(said[0].station, std::string("prefilter"));
    QVERIFY(said[0].protects == (std::vector<std::string>{"pump", "postfilter"}));
    QVERIFY(said[1].protects == (std::vector<std::string>{"rail"}));
    SAYS(build.findings(), Severity::Note, "protects pump and postfilter");
}

QTEST_APPLESS_MAIN(FindingsTest)
#include "tst_wrong_builds_get_their_finding.moc"
