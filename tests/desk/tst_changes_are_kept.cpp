// SPDX-License-Identifier: MIT
//
// A plan that is changed on the desk is in the shop file soon, and there when it is opened again;
// where it cannot be kept, the desk says so.

#include "desk_on_demo.h"

#include <QAbstractItemModelTester>

using namespace flarestock;

class ChangesAreKept : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init() { renew("coupe-fuel"); }
    void inTheShopFileAndComeBack();
    void byThemselvesAfterAWhile();
    void alsoTheirTakingBack();
    void onlyOfPlannedBuilds();
    void whereTheFileCannotBeOpenedItIsSaid();
    void whereThereIsNoShopNothingIsOpen();
    void listsOfBuildsKeepTheRulesOfAModel();
};

void ChangesAreKept::inTheShopFileAndComeBack()
{
    const QString total = m_desk->build()->total();
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    QVERIFY(m_desk->build()->total() != total || m_desk->build()->canTakeBack());
    QCOMPARE(m_desk->kept(), QStringLiteral("writing"));
    m_desk->keepNow();
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
    const auto proof = ShopFile::verify(m_file.toStdString());
    QVERIFY(proof && proof->whole);

    const QString changed = m_desk->build()->total();
    QVERIFY(m_desk->openShopFile(m_file));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QCOMPARE(m_desk->build()->total(), changed);
}

void ChangesAreKept::byThemselvesAfterAWhile()
{
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    QTRY_VERIFY(m_desk->kept().startsWith(QStringLiteral("kept, ")));
    QCOMPARE(inFile()->build("coupe-fuel")->answers.at("power"), std::string("610 hp"));
}

void ChangesAreKept::alsoTheirTakingBack()
{
    const BuildPlan before = *inFile()->build("coupe-fuel");
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    m_desk->keepNow();
    m_desk->build()->takeBack();
    m_desk->keepNow();
    QVERIFY(inFile()->build("coupe-fuel")->answers == before.answers);
    QVERIFY(inFile()->build("coupe-fuel")->picks == before.picks);
}

void ChangesAreKept::onlyOfPlannedBuilds()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("template|injection-frame-rail")));
    const auto before = inFile()->builds.size();
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    QCOMPARE(m_desk->kept(), QStringLiteral("tried out, not kept"));
    m_desk->keepNow();
    QCOMPARE(inFile()->builds.size(), before);
}

void ChangesAreKept::whereTheFileCannotBeOpenedItIsSaid()
{
    QVERIFY(!m_desk->openShopFile(m_folder.filePath(QStringLiteral("nosuch"))));
    QVERIFY(m_desk->problem().contains(QStringLiteral("nosuch")));
    QVERIFY(m_desk->build()->isOpen());   // The shop before stays on the desk.
    QVERIFY(!m_desk->makeDemoIn(m_file)); // It exists; nothing is written over.
    QVERIFY(!m_desk->openBuild(QStringLiteral("no-such-build")));
    QVERIFY(m_desk->problem().contains(QStringLiteral("no-such-build")));
}

void ChangesAreKept::whereThereIsNoShopNothingIsOpen()
{
    m_desk.reset();
    Desk desk(nullptr);
    QVERIFY(!desk.hasShop());
    QVERIFY(!desk.build()->isOpen());
    QVERIFY(!desk.makeDemoIn(m_folder.filePath(QStringLiteral("other"))));
    desk.build()->takeBack();
    desk.build()->find(QStringLiteral("pump"));
    desk.build()->openAt(QStringLiteral("pump"));
    QVERIFY(!desk.build()->mend(0));
    QVERIFY(!desk.build()->letGo(QStringLiteral("pump")));
    QVERIFY(!desk.build()->answer(QStringLiteral("power"), QStringLiteral("1 hp")));
}

void ChangesAreKept::listsOfBuildsKeepTheRulesOfAModel()
{
    const QAbstractItemModelTester tester(m_desk->builds(),
                                          QAbstractItemModelTester::FailureReportingMode::QtTest);
    QVERIFY(m_desk->builds()->count() > 12);
    QVERIFY(m_desk->openShopFile(m_file));
}

QTEST_MAIN(ChangesAreKept)
#include "tst_changes_are_kept.moc"
