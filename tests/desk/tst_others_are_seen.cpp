// SPDX-License-Identifier: MIT
//
// What another seat writes into the shop is on the desk soon, and what is being done here is not
// disturbed by it, nor by what the desk itself has written.

#include "desk_on_demo.h"

#include <QSemaphore>

#include <atomic>

using namespace flarestock;

class OthersAreSeen : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init() { renew("coupe-fuel"); }
    void aNewBuildIsInTheList();
    void aChangedPlanIsOnTheBench();
    void whatWasDoneHereCanStillBeTakenBack();
    void whatWasReadBeforeADeedDoesNotHideIt();

private:
    /// Another seat plans one more build.
    [[nodiscard]] bool plannedElsewhere() const
    {
        return changedElsewhere([](std::vector<BuildPlan> &builds) {
            BuildPlan another = builds.front();
            another.id = "another-seat";
            builds.push_back(another);
        });
    }
};

void OthersAreSeen::aNewBuildIsInTheList()
{
    const int before = m_desk->builds()->count();
    QVERIFY(plannedElsewhere());
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->builds()->count(), before + 1, 20'000);
    QCOMPARE(m_desk->build()->plan().id, std::string("coupe-fuel"));
}

void OthersAreSeen::aChangedPlanIsOnTheBench()
{
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        for (BuildPlan &plan : builds) {
            if (plan.id == "coupe-fuel")
                plan.title = "Changed elsewhere";
        }
    }));
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->build()->plan().title, std::string("Changed elsewhere"),
                              20'000);
}

void OthersAreSeen::whatWasDoneHereCanStillBeTakenBack()
{
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    m_desk->keepNow();
    const int before = m_desk->builds()->count();
    QVERIFY(plannedElsewhere());
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->builds()->count(), before + 1, 20'000);
    QTest::qWait(1500); // Also what the desk itself has written was heard of by now.
    QVERIFY(m_desk->build()->canTakeBack());
    QVERIFY(m_desk->build()->plan().answers.contains("power"));
}

/// A reading that began before something was written here ends after it.
void OthersAreSeen::whatWasReadBeforeADeedDoesNotHideIt()
{
    std::atomic<int> readings = 0;
    QSemaphore mayEnd;
    m_desk->setDeeds({[&readings, &mayEnd](const std::string &file) {
                          auto shop = openShopFile(file);
                          ++readings;
                          mayEnd.acquire();
                          return shop;
                      },
                      makeDemoFile});
    QVERIFY(plannedElsewhere());
    QTRY_COMPARE_WITH_TIMEOUT(readings.load(), 1, 20'000);
    m_desk->setWho(QStringLiteral("Kim"));
    m_desk->handing()->reserve();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->handing()->isBusy(), 20'000);
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    m_desk->keepNow();
    QVERIFY(m_desk->handing()->picks()->count() > 0);
    int fewestPicks = m_desk->handing()->picks()->count();
    bool isAnswered = true;
    connect(m_desk->handing(), &HandingOut::changed, m_desk.get(),
            [this, &fewestPicks, &isAnswered] {
                fewestPicks = std::min(fewestPicks, m_desk->handing()->picks()->count());
                isAnswered = isAnswered && m_desk->build()->plan().answers.contains("power");
            });
    mayEnd.release(1000);
    QTRY_VERIFY_WITH_TIMEOUT(readings > 1, 20'000);
    QTest::qWait(500);
    QVERIFY(fewestPicks > 0);
    QVERIFY(isAnswered);
    m_desk.reset(); // Its reading ends before what it calls.
}

QTEST_MAIN(OthersAreSeen)
#include "tst_others_are_seen.moc"
