// SPDX-License-Identifier: MIT
//
// `flarestock torque`, from the outside. The figures are those of
// tst_torques_agree_with_their_sources, with their sources there; here it is the shape, the manners
// and the card of a build.

#include "demo_copy.h"

#include <QTest>

using namespace flarestock::tests;

class TorqueCommandTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void saysEachSource();
    void tellsAPerson();
    void saysWhereNothingIsPublished();
    void makesACardOfABuild();
    void aCardFollowsTheAnswers();
    void refusesInOneLine_data();
    void refusesInOneLine();

private:
    DemoCopy m_demo;
};

void TorqueCommandTest::saysEachSource()
{
    const auto said = runFlarestock({"torque", "ORB -6 male", "--json"}).json();
    QCOMPARE(said.keys(),
             QStringList({QStringLiteral("differ"), QStringLiteral("metal"), QStringLiteral("on"),
                          QStringLiteral("port"), QStringLiteral("torques")}));
    const auto torques = said.value(QLatin1String("torques")).toArray();
    QCOMPARE(torques.size(), 2);
    QCOMPARE(torques[0].toObject().value(QLatin1String("leastNm")).toDouble(), 43.0);
    QCOMPARE(torques[0].toObject().value(QLatin1String("mostNm")).toDouble(), 53.0);
    QCOMPARE(torques[1].toObject().value(QLatin1String("mostNm")).toDouble(), 26.4);
    for (const auto &torque : torques)
        QVERIFY(!torque.toObject().value(QLatin1String("source")).toString().isEmpty());
    QVERIFY(std::abs(said.value(QLatin1String("differ")).toDouble() - 2) < 1e-9);

    const auto aluminium =
        runFlarestock({"torque", "ORB -6 male", "--metal", "aluminium", "--json"}).json();
    QVERIFY(aluminium.value(QLatin1String("differ")).isNull());
}

void TorqueCommandTest::tellsAPerson()
{
    const Ran ran = runFlarestock({"torque", "an -6", "--on", "hose"}); // No gender: the size.
    QCOMPARE(ran.status, 0);
    QVERIFY(ran.out.starts_with("AN -6 male, its nut on hose, all of steel\n"));
    QVERIFY(ran.out.find("23.7 to 28.2 N.m") != std::string::npos); // 210 to 250 in-lb
    QVERIFY(ran.out.find("17.5 to 20.8 lbf.ft") != std::string::npos);
    QVERIFY(ran.out.find("government technical manuals") != std::string::npos);
    QVERIFY(ran.out.find("The part maker's") == std::string::npos);
    QVERIFY(ran.out.find("come first") != std::string::npos);
    const Ran boss = runFlarestock({"torque", "ORB -6 male"});
    QVERIFY(boss.out.find("differ by a factor of 2.0") != std::string::npos);
}

void TorqueCommandTest::saysWhereNothingIsPublished()
{
    const auto said = runFlarestock({"torque", "NPT 3/8 male", "--json"}).json();
    QVERIFY(said.value(QLatin1String("torques")).toArray().isEmpty());
    QVERIFY(said.value(QLatin1String("differ")).isNull());
    const Ran ran = runFlarestock({"torque", "NPT 3/8 male"});
    QVERIFY(ran.out.find("no table that is known here") != std::string::npos);
}

void TorqueCommandTest::makesACardOfABuild()
{
    const Words words{"torque", "--build", "coupe-fuel", "--shop", m_demo.made()};
    Words asked = words;
    asked.emplace_back("--json");
    const auto card = runFlarestock(asked).json();
    QCOMPARE(card.value(QLatin1String("build")).toString(), QStringLiteral("coupe-fuel"));
    const auto joints = card.value(QLatin1String("joints")).toArray();
    QVERIFY(joints.size() > 10);
    int hoses = 0;
    int differing = 0;
    int rated = 0;
    for (const auto &each : joints) {
        const auto joint = each.toObject();
        hoses += joint.value(QLatin1String("on")).toString() == QLatin1String("hose") ? 1 : 0;
        differing += joint.value(QLatin1String("differ")).isNull() ? 0 : 1;
        rated += joint.value(QLatin1String("ratedKpa")).toDouble() > 0 ? 1 : 0;
        QCOMPARE(joint.value(QLatin1String("weakest")).isNull(),
                 joint.value(QLatin1String("ratedKpa")).isNull());
        // A hose in its end is made up on the bench, and nobody measures its torque.
        QVERIFY(!joint.value(QLatin1String("port")).toString().startsWith(QLatin1String("HOSE")));
    }
    QVERIFY(hoses > 5);
    QVERIFY(rated > 10);
    QVERIFY(differing > 0); // Nuts of aluminium on hose: 26 against 12.5 N·m.
    const Ran ran = runFlarestock(words);
    QCOMPARE(ran.status, 0);
    QVERIFY(ran.out.starts_with("TORQUES: Coupe, hill-climb"));
    QVERIFY(ran.out.find("\nS19  ") != std::string::npos);
    QVERIFY(ran.out.find(" kPa by RL-6, 200 °C by PT-6") != std::string::npos); // The rail's joint.
    QVERIFY(ran.out.find("The sources differ by a factor of") != std::string::npos);
}

void TorqueCommandTest::aCardFollowsTheAnswers()
{
    const auto joints = [this](const Words &more) {
        Words words{"torque", "--shop", m_demo.made(), "--json"};
        words.insert(words.end(), more.begin(), more.end());
        return runFlarestock(words).json().value(QLatin1String("joints")).toArray();
    };
    const auto six = joints({"--template", "injection-frame-rail"});
    QVERIFY(!six.isEmpty());
    QVERIFY(six != joints({"--template", "injection-frame-rail", "--set", "supply-size=-12"}));
    QVERIFY(joints({"--build", "coupe-fuel"}) !=
            joints({"--build", "coupe-fuel", "--set", "return-size=-8"}));
}

void TorqueCommandTest::refusesInOneLine_data()
{
    QTest::addColumn<Words>("words");
    QTest::newRow("nothing") << Words{"torque"};
    QTest::newRow("no port") << Words{"torque", "AN six"};
    QTest::newRow("no metal") << Words{"torque", "AN -6", "--metal", "wood"};
    QTest::newRow("on nothing") << Words{"torque", "AN -6", "--on", "wood"};
    QTest::newRow("both") << Words{"torque", "AN -6", "--build", "coupe-fuel"};
    QTest::newRow("no shop") << Words{"torque", "--build", "coupe-fuel"};
    QTest::newRow("no answer") << Words{"torque", "--template", "gravity-feed", "--set",
                                        "x=1",    "--shop",     m_demo.made()};
    QTest::newRow("no build") << Words{"torque", "--build", "none", "--shop", m_demo.made()};
}

void TorqueCommandTest::refusesInOneLine()
{
    QFETCH(Words, words);
    const Ran ran = runFlarestock(words);
    QVERIFY2(ran.refusesInOneLine(), (ran.out + ran.err).c_str());
}

QTEST_GUILESS_MAIN(TorqueCommandTest)
#include "tst_torques_are_said_with_their_source.moc"
