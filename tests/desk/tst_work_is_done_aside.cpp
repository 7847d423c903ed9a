// SPDX-License-Identifier: MIT
//
// Where a build takes long to work out the desk does not wait for it: what is asked meanwhile
// follows in its order, nothing is lost, and the plan is kept as it was asked for.

#include "desk_on_demo.h"

using namespace flarestock;

class WorkIsDoneAside : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void aChangeComesLaterAndIsSaidUntilThen();
    void whatIsAskedMeanwhileFollowsInItsOrder();
    void anAnswerGivenBackMeanwhileIsNotTakenForTheOld();
    void takingBackWaitsForTheLastStep();
    void whatIsRefusedChangesNothing();
    void anotherBuildComesAndTheOneBeforeIsKept();
    void noneIsDoneOnceTheShopIsAnotherOne();
    void whatSomebodyElseWroteIsShownWithIt();

private:
    [[nodiscard]] BuildDesk &build() const { return *m_desk->build(); }
    [[nodiscard]] std::string power() const
    {
        return build().worked().expansion->answers.at("power");
    }
    bool answer(const char *power)
    {
        return build().answer(QStringLiteral("power"), QString::fromLatin1(power));
    }
};

void WorkIsDoneAside::init()
{
    renew("coupe-fuel");
    build().setPatience(0);
    QCOMPARE(power(), std::string("520 hp"));
}

void WorkIsDoneAside::aChangeComesLaterAndIsSaidUntilThen()
{
    const QString total = build().total();
    QVERIFY(answer("610 hp"));
    QVERIFY(build().isWorking());
    QCOMPARE(power(), std::string("520 hp")); // The screen has what was worked out.
    QCOMPARE(build().total(), total);
    QCOMPARE(build().lastStep(), QStringLiteral("Being worked out …"));
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QCOMPARE(power(), std::string("610 hp"));
    QVERIFY2(build().lastStep().contains(QStringLiteral("610 hp")), qPrintable(build().lastStep()));
    m_desk->keepNow();
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
}

void WorkIsDoneAside::whatIsAskedMeanwhileFollowsInItsOrder()
{
    QVERIFY(answer("610 hp"));
    QVERIFY(build().answer(QStringLiteral("rail-pressure"), QStringLiteral("50 psi")) ||
            build().choose(QStringLiteral("fluid"), 0));
    QVERIFY(answer("300 hp"));
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QCOMPARE(power(), std::string("300 hp"));
    QVERIFY(m_desk->canTakeBack());
    m_desk->takeBack();
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QCOMPARE(power(), std::string("610 hp"));
}

void WorkIsDoneAside::anAnswerGivenBackMeanwhileIsNotTakenForTheOld()
{
    QVERIFY(answer("610 hp"));
    QVERIFY(answer("520 hp")); // As the screen still has it.
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QCOMPARE(power(), std::string("520 hp"));
}

void WorkIsDoneAside::takingBackWaitsForTheLastStep()
{
    QVERIFY(answer("610 hp"));
    build().takeBack();
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QCOMPARE(power(), std::string("520 hp"));
    QVERIFY(!build().canTakeBack());
}

void WorkIsDoneAside::whatIsRefusedChangesNothing()
{
    const BuildPlan before = build().plan();
    (void)build().pick(QStringLiteral("pump"), QStringLiteral("NO-SUCH-PART"));
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QVERIFY(build().plan() == before);
    QVERIFY2(build().lastStep().startsWith(QStringLiteral("Not done")),
             qPrintable(build().lastStep()));
    QVERIFY(answer("610 hp")); // And the next one does not suffer from it.
    QTRY_COMPARE_WITH_TIMEOUT(power(), std::string("610 hp"), 30000);
}

void WorkIsDoneAside::anotherBuildComesAndTheOneBeforeIsKept()
{
    QVERIFY(answer("610 hp"));
    QVERIFY(m_desk->openBuild(QStringLiteral("roadster-fuel")));
    QVERIFY(!answer("300 hp")); // Of which build would that be?
    QTRY_COMPARE_WITH_TIMEOUT(build().id(), QStringLiteral("roadster-fuel"), 30000);
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    m_desk->keepNow();
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
    QVERIFY(*inFile()->build("roadster-fuel") == build().plan());
}

void WorkIsDoneAside::noneIsDoneOnceTheShopIsAnotherOne()
{
    QVERIFY(answer("610 hp"));
    QVERIFY(m_desk->openShopFile(m_file));
    QTRY_VERIFY_WITH_TIMEOUT(!build().isWorking(), 30000);
    QTest::qWait(100);
    QVERIFY(!build().canTakeBack());
}

void WorkIsDoneAside::whatSomebodyElseWroteIsShownWithIt()
{
    QVERIFY(answer("610 hp"));
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        for (BuildPlan &plan : builds)
            plan.title += plan.id == "roadster-fuel" ? ", again" : "";
    }));
    QTRY_COMPARE_WITH_TIMEOUT(power(), std::string("610 hp"), 30000);
    const auto isThere = [this] {
        for (int row = 0; row < m_desk->builds()->count(); ++row) {
            if (m_desk->builds()
                    ->cell(row, QStringLiteral("title"))
                    .toString()
                    .endsWith(QStringLiteral(", again")))
                return true;
        }
        return false;
    };
    QTRY_VERIFY_WITH_TIMEOUT(isThere(), 30000);
    QTRY_COMPARE_WITH_TIMEOUT(inFile()->build("coupe-fuel")->answers.at("power"),
                              std::string("610 hp"), 30000);
    QCOMPARE(power(), std::string("610 hp"));
}

QTEST_MAIN(WorkIsDoneAside)
#include "tst_work_is_done_aside.moc"
