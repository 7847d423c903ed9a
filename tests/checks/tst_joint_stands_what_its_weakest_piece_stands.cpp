// SPDX-License-Identifier: MIT
//
// Working pressure and temperature of a joint: the lowest of its pieces (SAE J517, scope: the lower
// of hose and connector). The nut or stud that the torque card names, and on what it is turned.

#include "whole_builds.h"

#include "model/checks/joint_rating.h"
#include "model/checks/torque_card.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class JointStandsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLowestOfItsPieces();
    void namesWhatNobodyRates();
    void theCardNamesTheNut();
    void theCardKnowsTheTube();
};

void JointStandsTest::theLowestOfItsPieces()
{
    WholeBuild build;
    fuel(build);
    build.part("P-rail").ratings = {900, -30, 110};
    build.end->ratings = {800, -40, 120};
    build.hose->ratings = {850, -54, 100};
    const auto *joint = build.expansion.joint("fine-rail at rail");
    QVERIFY(joint != nullptr);
    const auto rating = ratingOf(*joint, build.expansion);
    QCOMPARE(rating.pressureKpa.value(), 800.0);
    QCOMPARE(rating.weakest, build.end);
    QCOMPARE(rating.highC.value(), 100.0);
    QCOMPARE(rating.tenderest, build.hose);
    QCOMPARE(rating.lowC.value(), -30.0);
    QVERIFY(rating.unrated.empty());
}

void JointStandsTest::namesWhatNobodyRates()
{
    WholeBuild build;
    fuel(build);
    build.end->ratings = {};
    const auto rating = ratingOf(*build.expansion.joint("fine-rail at rail"), build.expansion);
    QCOMPARE(rating.unrated, std::vector<const Part *>{build.end});
    QCOMPARE(rating.pressureKpa.value(), 1000.0);
    QVERIFY(!holdsPressure(Kind::Ring) && !holdsPressure(Kind::Tank));
    // An open joint is what its station is.
    auto open = *build.expansion.joint("fine-rail at rail");
    open.way.reset();
    QCOMPARE(ratingOf(open, build.expansion).weakest, &build.part("P-rail"));
}

void JointStandsTest::theCardNamesTheNut()
{
    WholeBuild build;
    fuel(build);
    build.end->material = build.part("P-rail").material = "steel";
    const auto card = torqueCard(build.expansion);
    QCOMPARE(card.size(), build.expansion.joints.size()); // One nut each; the hose is on the bench.
    const auto line = std::find_if(card.begin(), card.end(), [](const TorqueLine &some) {
        return some.joint == "fine-rail at rail";
    });
    QVERIFY(line != card.end());
    QCOMPARE(line->asked.port.text(), std::string("AN -6 female swivel"));
    QCOMPARE(line->into.text(), std::string("AN -6 male"));
    QVERIFY(line->asked.on == NutOn::Hose && line->asked.ferrous);
    QCOMPARE(line->torques.size(), std::size_t{3}); // S19 for hose, S20 and S22 for any nut.
    QCOMPARE(line->rating.weakest->number, std::string("P-rail")); // All of 1000 kPa: the first.
    build.part("P-rail").material = "aluminium";
    const auto other = torqueCard(build.expansion);
    QVERIFY(!other[static_cast<std::size_t>(line - card.begin())].asked.ferrous);
}

void JointStandsTest::theCardKnowsTheTube()
{
    WholeBuild build;
    brakes(build);
    build.end->kind = Kind::TubeNut;
    const auto on = [&](const char *material) {
        build.hose->material = material; // As if it were tubing.
        return torqueCard(build.expansion).front().asked.on;
    };
    QVERIFY(on("steel") == NutOn::SteelTube);
    QVERIFY(on("aluminium") == NutOn::AluminiumTube);
    QVERIFY(on("copper-nickel") == NutOn::OtherTube);
    QVERIFY(isFerrous("stainless") && !isFerrous("brass") && !isFerrous(""));
}

QTEST_APPLESS_MAIN(JointStandsTest)
#include "tst_joint_stands_what_its_weakest_piece_stands.moc"
