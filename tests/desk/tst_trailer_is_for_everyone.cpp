// SPDX-License-Identifier: MIT
//
// The trailer's screen is for everyone: the keyboard comes round, every control has a name, no word
// is cut, targets are for gloves, a scanner finds drawers and lines of the list.

#include "app/desk/scan/scan_ear.h"
#include "for_everyone.h"
#include "trailer_on_screen.h"

using namespace flarestock;

class TrailerIsForEveryone : public QObject, protected TrailerOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aScannerPullsOutAndTicks();
    void tabComesRound();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    ScanEar m_ear;
};

void TrailerIsForEveryone::initTestCase()
{
    openTrailer();
    copies().take({{QStringLiteral("file"), m_folder.filePath(QStringLiteral("away.flarestock"))},
                   {QStringLiteral("with"), QStringLiteral("the pit crew at the lake")},
                   {QStringLiteral("places"), QStringList{QStringLiteral("trailer-3")}}});
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
}

void TrailerIsForEveryone::aScannerPullsOutAndTicks()
{
    connect(&m_ear, &ScanEar::heard, m_desk.get(), &Desk::scanned);
    m_ear.listenTo(*m_window);
    item("findField")->forceActiveFocus(Qt::TabFocusReason);
    type("trailer-5", 3);
    key(Qt::Key_Return);
    QTRY_COMPARE(trailer().drawer(), QStringLiteral("trailer-5"));
    QVERIFY(words("findField").isEmpty());
    type("EG-10-S", 3);
    key(Qt::Key_Return);
    QTRY_COMPARE(trailer().load()->tickedCount(), 1);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("loadStop"));
    m_window->removeEventFilter(&m_ear);
}

void TrailerIsForEveryone::tabComesRound()
{
    trailer().pullOut(QStringLiteral("trailer-1"));
    QTRY_VERIFY(trailer().inDrawer()->count() > 0);
    const QString missed = missedByTab(
        *m_window, {"allThere", "copiesAway", "drawerCell", "inDrawerLine", "loadDrawer", "workIn",
                    "workCopies", "loadStop", "loadTicked", "area-4"});
    QVERIFY2(missed.isEmpty(), qPrintable(missed));
}

void TrailerIsForEveryone::everyControlHasAName()
{
    for (const char *work : {"workIn", "workOut", "workCarry", "workCopies"}) {
        press(work);
        QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading(), 20000);
        (void)pictureOf(*m_window, QSize(1440, 900));
        QCOMPARE(namelessControls(*m_window, 30), QString());
    }
}

void TrailerIsForEveryone::cutsNoWordsShort_data()
{
    addScreenSizes();
}

void TrailerIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    for (const char *work : {"workDrawer", "workIn", "workOut", "workCarry", "workCopies"}) {
        m_look->setDark(size.width() == 1024);
        (void)pictureOf(*m_window, size);
        if (item(work) == nullptr)
            continue; // With room the drawer stands beside the work.
        press(work);
        QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading(), 20000);
        trailerPicture(
            qPrintable(QStringLiteral("%1-%2").arg(size.width()).arg(QString::fromLatin1(work))),
            size);
        seenWords.look(*m_window);
    }
    m_look->setDark(false);
    QCOMPARE(seenWords.cut(), QString());
}

void TrailerIsForEveryone::targetsAreBigEnoughForGloves()
{
    (void)pictureOf(*m_window, QSize(1440, 900));
    press("workIn");
    const QString small = tooSmallForGloves(
        *m_window, {"allThere", "copiesAway", "drawerFront", "loadDrawer", "workIn", "workOut",
                    "workCarry", "workCopies", "loadStop", "loadTicked"});
    QVERIFY2(small.isEmpty(), qPrintable(small));
}

void TrailerIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TrailerIsForEveryone)
#include "tst_trailer_is_for_everyone.moc"
