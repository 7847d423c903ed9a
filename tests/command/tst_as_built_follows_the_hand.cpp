// SPDX-License-Identifier: MIT
//
// What a car really has: a piece that went in instead of the planned one, and a joint that is
// opened again. The demo shop is invented; what two ports do is by the thread and seat tables that
// tests/ports checks against their standards.

#include "tests/command/changed_shop.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

constexpr const char *Build = "coupe-fuel";
constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";

} // namespace

class AsBuilt : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    void issue() const
    {
        QCOMPARE(run({"reserve", Build}).status, 0);
        QCOMPARE(run({"issue", Build}).status, 0);
    }
    /// What the car holds of a part: "2", or nothing.
    [[nodiscard]] std::string inCar(const char *part) const
    {
        const auto now = arrayOf(json({"history", part, "--place", "car-2"}), "now");
        return now.isEmpty() ? std::string() : textOf(now.at(0), "quantity");
    }
    [[nodiscard]] std::string usedUp(const char *part) const
    {
        int count = 0;
        for (const auto &one : arrayOf(json({"history", part, "--place", "used-up"}), "movements"))
            count += textOf(one, "to") == "used-up" ? std::stoi(textOf(one, "quantity")) : 0;
        return std::to_string(count);
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void anotherPieceGoesInAndTheVerdictIsSaid();
    void anotherPieceIsTakenBackAsOneAction();
    void whatIsTakenBackIsPromisedAgain();
    void whatGoesAfterATestAsksForAnother();
    void onlyWhatWasIssuedIsReplaced();
    void anOpenedJointTakesFreshRings();
    void anOpenedJointTakesWhatTheCarReallyHas();
    void aRingThatIsShortIsSaid();
    void aJointWithoutRingsIsRefused();
};

void AsBuilt::anotherPieceGoesInAndTheVerdictIsSaid()
{
    issue();
    QCOMPARE(inCar("AD-8-10"), std::string("1"));
    const auto made = json({"instead", Build, "AD-8-10", "AD-8-8"});
    QVERIFY2(made.status == 0, made.err.c_str());
    const auto joint = arrayOf(made, "joints").at(0).toObject();
    QCOMPARE(textOf(joint, "at"), std::string("pump inlet"));
    QCOMPARE(textOf(joint, "before"), std::string("fits"));
    QCOMPARE(textOf(joint, "after"), std::string("no-fit")); // A -8 flare into a -10 nut.
    QVERIFY(joint.value(QStringLiteral("worse")).toBool());
    QCOMPARE(inCar("AD-8-10"), std::string());
    QCOMPARE(inCar("AD-8-8"), std::string("1"));
    QCOMPARE(m_shop.stockOf("AD-8-10", "free"), std::string("A3=2 ")); // It waits for nobody.
    QCOMPARE(m_shop.stockOf("AD-8-8", "onHand"), std::string("A3=3 trailer-2=1 "));
    // A straight union of the same ports changes nothing: HE-6 for HE-6-45.
    const auto alike = json({"instead", Build, "HE-6", "HE-6-45"});
    QVERIFY2(alike.status == 0, alike.err.c_str());
    const auto joints = arrayOf(alike, "joints");
    QVERIFY(joints.size() > 2);
    for (const auto &one : joints)
        QVERIFY(!one.toObject().value(QStringLiteral("worse")).toBool(true));
    // At the rail inlet a union was planned, which leaks; the adapter that belongs there does not.
    QCOMPARE(run({"receive", "AD-6-6", "1", "--from", "supplier-TCF", "--to", "K8", "--cost", "6"})
                 .status,
             0);
    const auto mended =
        arrayOf(json({"instead", Build, "UN-6", "AD-6-6", "--from", "K8"}), "joints");
    QCOMPARE(textOf(mended.at(0), "at") + " " + textOf(mended.at(0), "before") + " " +
                 textOf(mended.at(0), "after"),
             std::string("rail inlet leaks fits"));
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::anotherPieceIsTakenBackAsOneAction()
{
    issue();
    const auto before = m_shop.stock();
    const Words swap{"instead", Build, "AD-8-10", "AD-8-8", "--id", Id};
    QCOMPARE(run(swap).status, 0);
    QVERIFY(json(swap).json().value(QStringLiteral("already")).toBool());
    QCOMPARE(run({"take-back", Id}).status, 0);
    QCOMPARE(m_shop.stock(), before);
    QCOMPARE(inCar("AD-8-10"), std::string("1"));
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::whatIsTakenBackIsPromisedAgain()
{
    issue();
    // The planned piece may lie where nobody is promised it: in the car again it is the build's.
    for (const char *now : {"new", "not to be used"}) {
        const auto swapped = json({"instead", Build, "AD-8-10", "AD-8-8", "--now", now});
        QVERIFY2(swapped.status == 0, swapped.err.c_str());
        const auto back =
            run({"take-back", textOf(arrayOf(swapped, "movements").at(1), "movement")});
        QVERIFY2(back.status == 0, back.err.c_str());
        QCOMPARE(inCar("AD-8-10"), std::string("1"));
        // Given back it waits for the build, as it did before.
        QCOMPARE(run({"give-back", Build, "AD-8-10", "1", "--to", "A3"}).status, 0);
        QCOMPARE(m_shop.stockOf("AD-8-10", "promised"), std::string("A3=1 "));
        QCOMPARE(m_shop.stockOf("AD-8-10", "onHand"), std::string("A3=2 "));
        QCOMPARE(run({"issue", Build}).status, 0);
    }
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::whatGoesAfterATestAsksForAnother()
{
    issue();
    const Words test{"leak-test", Build,    "--medium", "air",    "--pressure", "60 psi",
                     "--held",    "10 min", "--result", "passed", "--who",      "fitter"};
    const auto swapped = json({"instead", Build, "AD-8-10", "AD-8-8"});
    QCOMPARE(run(test).status, 0);
    QCOMPARE(run({"build-done", Build, "--who", "fitter"}).status, 0);
    QCOMPARE(run({"take-back", textOf(swapped.json(), "movement")}).status, 0);
    const Ran done = run({"build-done", Build, "--who", "fitter"});
    QVERIFY(done.refusesInOneLine());
    QVERIFY2(done.err.find("no leak test of it as it stands") != std::string::npos,
             done.err.c_str());
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::onlyWhatWasIssuedIsReplaced()
{
    QVERIFY(run({"instead", Build, "AD-8-10", "AD-8-8"}).refusesInOneLine());
    issue();
    const auto before = m_shop.stock();
    const std::vector<Words> wrong = {{"AD-12-12", "AD-8-8"},
                                      {"AD-8-10", "AD-8-8", "2"},
                                      {"AD-8-10", "AD-8-10"},
                                      {"AD-8-10", "PT-8"},
                                      {"AD-8-10", "AD-8-8", "0"},
                                      {"AD-8-10", "nothing"},
                                      {"AD-8-10", "AD-8-8", "--from", "G4"}};
    for (const Words &more : wrong) {
        Words words{"instead", Build};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words);
        QVERIFY2(ran.refusesInOneLine(), (more[1] + ": " + ran.out + ran.err).c_str());
    }
    QCOMPARE(m_shop.stock(), before);
}

void AsBuilt::anOpenedJointTakesFreshRings()
{
    QVERIFY(run({"open-joint", Build, "pump inlet"}).refusesInOneLine()); // Nothing is closed yet.
    issue();
    const auto before = m_shop.stockOf("RG-908", "onHand");
    QCOMPARE(before, std::string("R1=19 trailer-3=6 "));
    const auto opened = json({"open-joint", Build, "pump inlet", "--id", Id});
    QVERIFY2(opened.status == 0, opened.err.c_str());
    const auto piece = objectWith(arrayOf(opened, "pieces"), "part", "RG-908");
    QCOMPARE(textOf(piece, "need") + textOf(piece, "taken") + textOf(piece, "short"),
             std::string("110"));
    QVERIFY(opened.out.find("leak-test") != std::string::npos);
    QCOMPARE(m_shop.stockOf("RG-908", "onHand"), std::string("R1=18 trailer-3=6 "));
    QCOMPARE(usedUp("RG-908"), std::string("1"));
    QCOMPARE(inCar("RG-908"), std::string("1"));
    QVERIFY(json({"open-joint", Build, "pump inlet", "--id", Id})
                .json()
                .value(QStringLiteral("already"))
                .toBool());
    QCOMPARE(run({"take-back", Id}).status, 0);
    QCOMPARE(m_shop.stockOf("RG-908", "onHand"), before);
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::anOpenedJointTakesWhatTheCarReallyHas()
{
    issue();
    QCOMPARE(run({"instead", Build, "RG-908", "RN-908"}).status, 0);
    const auto opened = json({"open-joint", Build, "PUMP INLET"});
    QVERIFY2(opened.status == 0, opened.err.c_str());
    QCOMPARE(arrayOf(opened, "pieces").size(), 1);
    QCOMPARE(textOf(arrayOf(opened, "pieces").at(0), "part"), std::string("RN-908"));
    QCOMPARE(m_shop.stockOf("RN-908", "onHand"), std::string("R2=12 ")); // 14, one in, one anew.
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::aRingThatIsShortIsSaid()
{
    issue();
    for (const char *place : {"R1", "trailer-3"})
        QCOMPARE(run({"count", "RG-908", "0", "--place", place}).status, 0);
    const auto opened = json({"open-joint", Build, "pump inlet", "--strict"});
    QCOMPARE(opened.status, 1);
    const auto piece = arrayOf(opened, "pieces").at(0);
    QCOMPARE(textOf(piece, "short"), std::string("1"));
    QCOMPARE(textOf(piece, "spent"), std::string("1")); // The old one is spent all the same.
    QCOMPARE(inCar("RG-908"), std::string());
    QVERIFY(m_shop.isWhole());
}

void AsBuilt::aJointWithoutRingsIsRefused()
{
    issue();
    QVERIFY(run({"open-joint", Build, "tank outlet"}).refusesInOneLine());
    const Ran none = run({"open-joint", Build, "pomp inlet"});
    QVERIFY(none.refusesInOneLine());
    QVERIFY(run({"open-joint", "no-build", "pump inlet"}).refusesInOneLine());
}

QTEST_GUILESS_MAIN(AsBuilt)
#include "tst_as_built_follows_the_hand.moc"
