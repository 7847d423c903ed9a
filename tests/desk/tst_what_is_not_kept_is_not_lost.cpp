// SPDX-License-Identifier: MIT
//
// A changed build that cannot be kept, because the server went away or the disk is full, is tried
// again until it is: also once another build is on the desk, and by the next desk where this one
// ends before. What another seat has changed meanwhile is not overwritten.

#include "desk_on_demo.h"

#include <QSemaphore>

#include <atomic>

using namespace flarestock;

class WhatIsNotKept : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void isKeptOnceItCanBe();
    void isKeptThoughAnotherBuildCame();
    void isKeptThoughOthersWereOnlyLookedAt();
    void isTheLastChangeWhereOneBeforeItFails();
    void isTheBuildsWhenItComesBack();
    void isThereAtTheNextStart();
    void isKnownWhereOnlyTheAnswerWasLost();
    void doesNotOverwriteAnotherSeats();

private:
    /// The shop of the file, which can be neither read nor written as long as it is away.
    void openOn(Desk &desk)
    {
        desk.setDeeds({[this](const std::string &file) { return open(file); }, makeDemoFile});
        desk.show(open(m_file.toStdString()).value());
    }
    [[nodiscard]] Result<ShopOnDesk> open(const std::string &file)
    {
        if (m_isAway)
            return problem("the server", "is away", "Wait.");
        auto shop = openShopFile(file);
        shop->keep = [this, keep = shop->keep](const ChangedPlan &changed) -> Result<void> {
            if (m_isSlow) {
                m_begun.release();
                m_mayEnd.acquire();
            }
            if (m_isAway && !m_onlyAnswers)
                return problem("the server", "is away", "Wait.");
            auto kept = keep(changed);
            return m_isAway ? problem("the server", "is away", "Wait.") : kept;
        };
        shop->watch = [this](std::function<void()> changed) {
            m_changed = std::move(changed);
            return std::make_shared<int>(0);
        };
        return shop;
    }
    void setAway(bool isAway)
    {
        m_isAway = isAway;
        if (!isAway)
            m_changed(); // A watch says so when it can look again.
    }
    void answer(const char *build, const char *power)
    {
        QVERIFY(m_desk->openBuild(QString::fromLatin1(build)));
        QTRY_COMPARE(m_desk->build()->id(), QString::fromLatin1(build));
        QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QString::fromLatin1(power)));
    }
    void loseIt()
    {
        setAway(true);
        answer("coupe-fuel", "610 hp");
        m_desk->keepNow();
        QVERIFY(m_desk->isOwing());
        QCOMPARE(m_desk->kept(), QStringLiteral("not kept: the server: is away. Wait."));
    }
    [[nodiscard]] std::string powerInFile(const char *build = "coupe-fuel") const
    {
        return inFile()->build(build)->answers.at("power");
    }
    [[nodiscard]] std::string powerOnDesk() const
    {
        return m_desk->build()->plan().answers.at("power");
    }

    std::atomic<bool> m_isAway = false; ///< Asked by another thread, too.
    std::atomic<bool> m_onlyAnswers = false;
    std::atomic<bool> m_isSlow = false;
    QSemaphore m_begun;
    QSemaphore m_mayEnd;
    std::function<void()> m_changed;
};

void WhatIsNotKept::init()
{
    m_isAway = m_onlyAnswers = m_isSlow = false;
    renew();
    openOn(*m_desk);
}

void WhatIsNotKept::isKeptOnceItCanBe()
{
    loseIt();
    QVERIFY(powerInFile() != "610 hp");
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("610 hp"));
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    QVERIFY2(m_desk->build()->lastStep().endsWith(QStringLiteral("what was changed is kept now.")),
             qPrintable(m_desk->build()->lastStep()));
}

void WhatIsNotKept::isKeptThoughAnotherBuildCame()
{
    loseIt();
    const std::string roadster = powerInFile("roadster-fuel");
    QVERIFY(roadster != "400 hp");
    answer("roadster-fuel", "400 hp");
    m_desk->keepNow();
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-oil")));
    QVERIFY(m_desk->isOwing());
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("610 hp"));
    QCOMPARE(powerInFile("roadster-fuel"), std::string("400 hp"));
    QCOMPARE(m_desk->build()->id(), QStringLiteral("coupe-oil"));
}

void WhatIsNotKept::isKeptThoughOthersWereOnlyLookedAt()
{
    loseIt();
    for (const char *build : {"roadster-fuel", "coupe-oil"}) {
        QVERIFY(m_desk->openBuild(QString::fromLatin1(build)));
        m_desk->keepNow();
    }
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("610 hp"));
}

void WhatIsNotKept::isTheLastChangeWhereOneBeforeItFails()
{
    m_isSlow = true;
    answer("coupe-fuel", "610 hp");
    QTRY_VERIFY(m_begun.available() > 0);
    m_isSlow = false;
    answer("coupe-fuel", "620 hp");
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-oil"))); // Does not wait for the slow one.
    QVERIFY(!m_desk->isOwing());                             // Nothing has failed yet.
    m_isAway = true;
    m_mayEnd.release();
    QTRY_VERIFY(m_desk->kept().startsWith(QStringLiteral("not kept")));
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("620 hp"));
}

void WhatIsNotKept::isTheBuildsWhenItComesBack()
{
    loseIt();
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-oil")));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QTRY_COMPARE(m_desk->build()->id(), QStringLiteral("coupe-fuel"));
    QCOMPARE(powerOnDesk(), std::string("610 hp"));
    answer("coupe-fuel", "620 hp");
    setAway(false);
    m_desk->keepNow();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("620 hp"));
    answer("coupe-fuel", "630 hp"); // It begins with what is there now.
    m_desk->keepNow();
    QCOMPARE(powerInFile(), std::string("630 hp"));
}

void WhatIsNotKept::isThereAtTheNextStart()
{
    QString left;
    m_desk->pen()->unwritten().setShop(m_file, {});
    QObject::connect(&m_desk->pen()->unwritten(), &Unwritten::kept, m_desk.get(),
                     [&left](const QString &, const QString &text) { left = text; });
    loseIt();
    QTRY_VERIFY(!left.isEmpty());
    m_desk.reset();
    m_isAway = false;
    QVERIFY(powerInFile() != "610 hp");

    m_desk = std::make_unique<Desk>(nullptr);
    openOn(*m_desk);
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QTRY_COMPARE(m_desk->build()->id(), QStringLiteral("coupe-fuel"));
    QObject::connect(&m_desk->pen()->unwritten(), &Unwritten::kept, m_desk.get(),
                     [&left](const QString &, const QString &text) { left = text; });
    m_desk->pen()->unwritten().setShop(m_file, left);
    QTRY_COMPARE(powerOnDesk(), std::string("610 hp"));
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("610 hp"));
    QTRY_VERIFY(left.isEmpty());
}

void WhatIsNotKept::isKnownWhereOnlyTheAnswerWasLost()
{
    m_onlyAnswers = true;
    loseIt();
    QCOMPARE(powerInFile(), std::string("610 hp"));
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    QCOMPARE(powerOnDesk(), std::string("610 hp"));
    answer("coupe-fuel", "620 hp");
    m_desk->keepNow();
    QCOMPARE(powerInFile(), std::string("620 hp"));
}

void WhatIsNotKept::doesNotOverwriteAnotherSeats()
{
    loseIt();
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-oil")));
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        for (BuildPlan &plan : builds) {
            if (plan.id == "coupe-fuel")
                plan.answers["power"] = "500 hp";
        }
    }));
    setAway(false);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isOwing(), 20'000);
    QCOMPARE(powerInFile(), std::string("500 hp"));
    QVERIFY2(m_desk->build()->lastStep().contains(QStringLiteral("was changed at another seat")),
             qPrintable(m_desk->build()->lastStep()));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QTRY_COMPARE(powerOnDesk(), std::string("500 hp"));
}

QTEST_MAIN(WhatIsNotKept)
#include "tst_what_is_not_kept_is_not_lost.moc"
