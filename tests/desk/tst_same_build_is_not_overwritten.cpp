// SPDX-License-Identifier: MIT
//
// Who changes a build that was changed at another seat a moment before is told so and shown how it
// stands now; nothing of the other's is lost, and changes of other builds go together.

#include "desk_on_demo.h"

using namespace flarestock;

namespace {

BuildPlan &buildIn(std::vector<BuildPlan> &builds, const std::string &id)
{
    return *std::find_if(builds.begin(), builds.end(),
                         [&id](const BuildPlan &plan) { return plan.id == id; });
}

/// Another seat gives that build another title.
auto retitled(const std::string &id)
{
    return
        [id](std::vector<BuildPlan> &builds) { buildIn(builds, id).title = "Changed elsewhere"; };
}

} // namespace

class SameBuildIsNotOverwritten : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init() { renew("coupe-fuel"); }
    void theLaterChangeIsRefusedAndSaid();
    void afterwardsItIsChangedAgain();
    void alsoWhatWasKeptHereBeforeIsNotTakenForTheOthers();
    void changesOfOtherBuildsGoTogether();
    void oneThatWasTakenOutIsNotPutIn();
    void whatTheDiskRefusesStaysOnTheDesk();

private:
    [[nodiscard]] bool answerPower(const char *power)
    {
        return m_desk->build()->answer(QStringLiteral("power"), QString::fromLatin1(power));
    }
    /// Another seat changes the same build between a change here and its being kept.
    void meet()
    {
        QVERIFY(answerPower("610 hp"));
        QVERIFY(changedElsewhere(retitled("coupe-fuel")));
        m_desk->keepNow();
    }
};

void SameBuildIsNotOverwritten::theLaterChangeIsRefusedAndSaid()
{
    const auto powerBefore = inFile()->build("coupe-fuel")->answers;
    meet();
    const QString sentence = QStringLiteral(
        "build coupe-fuel: was changed at another seat just now, so that this change is not in it. "
        "It is shown as it is now: look at it, then change it again.");
    QCOMPARE(m_desk->kept(), QString(QStringLiteral("not kept: ") + sentence));
    QCOMPARE(inFile()->build("coupe-fuel")->title, std::string("Changed elsewhere"));
    QVERIFY(inFile()->build("coupe-fuel")->answers == powerBefore);
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->build()->plan().title, std::string("Changed elsewhere"),
                              20'000);
    QVERIFY(m_desk->build()->plan().answers == powerBefore);
    QCOMPARE(m_desk->build()->lastStep(), sentence);
}

void SameBuildIsNotOverwritten::afterwardsItIsChangedAgain()
{
    meet();
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->build()->plan().title, std::string("Changed elsewhere"),
                              20'000);
    QVERIFY(answerPower("610 hp"));
    m_desk->keepNow();
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    QCOMPARE(inFile()->build("coupe-fuel")->title, std::string("Changed elsewhere"));
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
}

void SameBuildIsNotOverwritten::alsoWhatWasKeptHereBeforeIsNotTakenForTheOthers()
{
    for (const char *power : {"610 hp", "620 hp", "630 hp"}) {
        QVERIFY(answerPower(power));
        m_desk->keepNow();
        QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string(power));
    }
}

void SameBuildIsNotOverwritten::changesOfOtherBuildsGoTogether()
{
    QVERIFY(answerPower("610 hp"));
    QVERIFY(changedElsewhere(retitled("coupe-oil")));
    m_desk->keepNow();
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
    QCOMPARE(inFile()->build("coupe-oil")->title, std::string("Changed elsewhere"));
}

void SameBuildIsNotOverwritten::oneThatWasTakenOutIsNotPutIn()
{
    QVERIFY(answerPower("610 hp"));
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        std::erase_if(builds, [](const BuildPlan &plan) { return plan.id == "coupe-fuel"; });
    }));
    m_desk->keepNow();
    QVERIFY2(m_desk->kept().contains(QStringLiteral("was taken out of the shop just now")),
             qPrintable(m_desk->kept()));
    QVERIFY(inFile()->build("coupe-fuel") == nullptr);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->build()->plan().id != "coupe-fuel", 20'000);
}

void SameBuildIsNotOverwritten::whatTheDiskRefusesStaysOnTheDesk()
{
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.keep = [](const ChangedPlan &) -> Result<void> {
        return problem("the disk", "is full", "Make room.");
    };
    m_desk->show(std::move(shop));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QVERIFY(answerPower("610 hp"));
    m_desk->keepNow();
    QCOMPARE(m_desk->kept(), QStringLiteral("not kept: the disk: is full. Make room."));
    const int before = m_desk->builds()->count();
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        builds.push_back(builds.front());
        builds.back().id = "another-seat";
    }));
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->builds()->count(), before + 1, 20'000); // Read anew by now.
    QCOMPARE(m_desk->build()->plan().answers.at("power"), std::string("610 hp"));
    m_desk->keepNow();
    QVERIFY(answerPower("620 hp"));
    m_desk->keepNow(); // The file it was read from anew can be written.
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("620 hp"));
}

QTEST_MAIN(SameBuildIsNotOverwritten)
#include "tst_same_build_is_not_overwritten.moc"
