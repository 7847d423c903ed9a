// SPDX-License-Identifier: MIT
//
// The buyer's screen is for everyone: the keyboard reaches everything, every control has a name, no
// word is cut, targets are for gloves; its lists keep the rules that views count on.

#include "buying_on_screen.h"
#include "for_everyone.h"

#include <QAbstractItemModelTester>

using namespace flarestock;

class BuyingIsForEveryone : public QObject, protected BuyingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        watchLists();
        showBuying();
        placeSomething();
    }
    void tabComesRound_data();
    void tabComesRound();
    void everyControlHasAName_data();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void aScannedCodeLeadsThere();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    void watchLists();
    void placeSomething();
    void turnTo(int page)
    {
        key(static_cast<Qt::Key>(Qt::Key_1 + page), Qt::ControlModifier);
        QTRY_COMPARE(buying().page(), page);
        awaitBuying();
    }
    void putBoxOnBench()
    {
        QVERIFY(buying().box()->open(buying().orders()->selected()));
        QTRY_VERIFY(item("tickLine") != nullptr && item("handPlace") != nullptr);
    }
    static void eachPage();

    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void BuyingIsForEveryone::watchLists()
{
    BuyingDesk &desk = buying();
    for (Rows *rows :
         {desk.lacking()->days(), desk.lacking()->lines(), desk.lacking()->facts(),
          desk.slips()->aims(), desk.slips()->slips(), desk.orders()->orders(),
          desk.orders()->lines(), desk.orders()->sums(), desk.orders()->facts(),
          desk.orders()->deeds(), desk.box()->ticks(), desk.box()->troubles(), desk.box()->came(),
          desk.owed()->claims(), desk.owed()->facts(), desk.owed()->deeds()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
}

/// An order on its way, a box of it on the bench, and something owed.
void BuyingIsForEveryone::placeSomething()
{
    OrdersPage &orders = *buying().orders();
    QVERIFY(orders.begin(QStringLiteral("new")));
    orders.form()->finish({{QStringLiteral("supplier"), 5},
                           {QStringLiteral("part"), QStringLiteral("AD-6-6")},
                           {QStringLiteral("quantity"), QStringLiteral("12")}});
    awaitBuying();
    QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    QCOMPARE(orders.orders()->count(), 1);
    QVERIFY(orders.begin(QStringLiteral("place")));
    orders.form()->finish({});
    awaitBuying();
    QVERIFY(buying().owed()->begin(QStringLiteral("raise")));
    buying().owed()->form()->finish({{QStringLiteral("part"), QStringLiteral("BK-460")},
                                     {QStringLiteral("quantity"), QStringLiteral("1")},
                                     {QStringLiteral("supplier"), 0}});
    awaitBuying();
    QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    QCOMPARE(buying().owed()->open(), 1);
}

void BuyingIsForEveryone::eachPage()
{
    QTest::addColumn<int>("page");
    QTest::newRow("what is short") << 0;
    QTest::newRow("slips") << 1;
    QTest::newRow("orders") << 2;
    QTest::newRow("owed") << 3;
    QTest::newRow("a box on the bench") << 4;
}

void BuyingIsForEveryone::tabComesRound_data()
{
    eachPage();
}

void BuyingIsForEveryone::tabComesRound()
{
    QFETCH(int, page);
    turnTo(page == 4 ? 2 : page);
    if (page == 4)
        putBoxOnBench();
    const std::vector<PartNames> wanted{
        {"inTime", "owed", "page-3", "dayColumn", "lackingLine", "lackingPanel"},
        {"aim-cheapest", "aim-parcels", "draftAll", "slipDraft", "slipLines"},
        {"orderCard", "deed-new", "deed-place", "deed-receive", "paper-pdf", "orderLine"},
        {"claimCard", "deed-raise", "deed-promise", "deed-drop", "letter"},
        {"tickAll", "tickLine", "handPlace", "oneMore", "trouble", "putAway", "boxDone"}};
    const QString missed =
        missedByTab(*m_window, wanted.at(static_cast<std::size_t>(page)), {Qt::Key_Tab, 90});
    QVERIFY2(missed.isEmpty(), qPrintable(missed));
    buying().box()->close();
}

void BuyingIsForEveryone::everyControlHasAName_data()
{
    eachPage();
}

void BuyingIsForEveryone::everyControlHasAName()
{
    QFETCH(int, page);
    turnTo(page == 4 ? 2 : page);
    if (page == 4)
        putBoxOnBench();
    QCOMPARE(namelessControls(*m_window, 20), QString());
    buying().box()->close();
}

void BuyingIsForEveryone::cutsNoWordsShort_data()
{
    addScreenSizes();
}

/// Of lines and days of the first page the panel and the list say all, so that they may be longer
/// than their column.
void BuyingIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    for (int page = 0; page < 5; ++page) {
        turnTo(page == 4 ? 2 : page);
        if (page == 4)
            putBoxOnBench();
        for (const bool dark : {false, true}) {
            m_look->setDark(dark);
            (void)pictureOf(*m_window, size);
        }
        m_look->setDark(size.width() == 1024);
        pictureOfBuying(qPrintable(QStringLiteral("page%1-%2").arg(page).arg(size.width())), size);
        seenWords.look(*m_window, {"lackingLine", "dayColumn"});
        buying().box()->close();
    }
    m_look->setDark(false);
    QCOMPARE(seenWords.cut(200), QString());
}

void BuyingIsForEveryone::aScannedCodeLeadsThere()
{
    turnTo(BuyingDesk::Slips);
    QVERIFY(buying().scan(QStringLiteral("HE-10")));
    QCOMPARE(buying().page(), static_cast<int>(BuyingDesk::Lacking));
    QCOMPARE(buying().lacking()->part(), QStringLiteral("HE-10"));
    const QString order = buying().orders()->selected();
    QVERIFY(buying().scan(order));
    QCOMPARE(buying().page(), static_cast<int>(BuyingDesk::Orders));
    QVERIFY(buying().box()->open(order));
    QVERIFY(buying().scan(QStringLiteral("AD-6-6"))); // Of a box on the bench it is a piece.
    QCOMPARE(buying().page(), static_cast<int>(BuyingDesk::Orders));
    QCOMPARE(cell(buying().box()->ticks(), 0, "came"), QStringLiteral("1 of 12"));
    buying().box()->close();
    QVERIFY(!buying().scan(QStringLiteral("no such thing")));
}

void BuyingIsForEveryone::targetsAreBigEnoughForGloves()
{
    const std::vector<PartNames> wanted{
        {"inTime", "owed", "page-0", "dayColumn", "lackingLine"},
        {"aim-cheapest", "draftAll", "slipDraft"},
        {"orderCard", "deed-new", "deed-place", "paper-csv", "orderLine"},
        {"claimCard", "deed-raise", "deed-promise", "letter"}};
    for (std::size_t page = 0; page < wanted.size(); ++page) {
        turnTo(static_cast<int>(page));
        (void)pictureOf(*m_window, QSize(1440, 900));
        const QString small = tooSmallForGloves(*m_window, wanted[page]);
        QVERIFY2(small.isEmpty(), qPrintable(small));
    }
}

void BuyingIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(BuyingIsForEveryone)
#include "tst_buying_is_for_everyone.moc"
