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
    void aScannedPlaceBringsItsLineIntoHand();
    void aScannedPlaceIsWhereItGoes();
    void tabComesRound();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    void scan(const QString &code)
    {
        QTest::qWait(ScanEar::GapMost * 3);
        type(qPrintable(code), 3);
        key(Qt::Key_Return);
        QTest::qWait(ScanEar::GapMost * 3);
    }
    [[nodiscard]] static QString cell(LoadList &list, int row, const char *name)
    {
        return list.rows()->cell(row, QString::fromLatin1(name)).toString();
    }
    [[nodiscard]] static QString drawerOf(LoadList &list, int row)
    {
        return cell(list, row, "section").section(u',', 0, 0);
    }
    /// The row of a list that is in hand.
    [[nodiscard]] int inHand(const char *list) const
    {
        return item(list)->property("currentIndex").toInt();
    }

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

/// As on the walk past the bins: a place is no piece, so nothing is ticked by it.
void TrailerIsForEveryone::aScannedPlaceBringsItsLineIntoHand()
{
    m_ear.listenTo(*m_window);
    LoadList &list = *trailer().load();
    press("workIn");
    item("loadTicked")->forceActiveFocus(Qt::TabFocusReason);
    int last = list.rows()->count() - 1;
    while (last > 0 && (list.rows()->cell(last, QStringLiteral("isToBuy")).toBool() ||
                        list.rows()->cell(last, QStringLiteral("ticked")).toBool()))
        --last;
    QVERIFY(last > 0);
    const int ticked = list.tickedCount();
    item("loadList")->setProperty("currentIndex", 0);
    scan(cell(list, last, "place").toLower());
    QTRY_COMPARE(cell(list, inHand("loadList"), "place"), cell(list, last, "place"));
    QVERIFY(!list.rows()->cell(inHand("loadList"), QStringLiteral("ticked")).toBool());
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("loadStop"));
    item("loadList")->setProperty("currentIndex", 0);
    scan(drawerOf(list, last)); // It is pulled out as well.
    QTRY_COMPARE(drawerOf(list, inHand("loadList")), drawerOf(list, last));
    QCOMPARE(trailer().drawer(), drawerOf(list, last));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("loadStop"));
    QCOMPARE(list.tickedCount(), ticked);
    scan(QStringLiteral("NO-SUCH-BIN"));
    QTRY_VERIFY2(words("lastStep").contains(QStringLiteral("not on this list")),
                 qPrintable(words("lastStep")));
    key(Qt::Key_Space);
    QTRY_COMPARE(list.tickedCount(), ticked + 1);
    key(Qt::Key_Space);
    m_window->removeEventFilter(&m_ear);
}

/// What no bin keeps is taken to the one that is scanned behind it.
void TrailerIsForEveryone::aScannedPlaceIsWhereItGoes()
{
    m_ear.listenTo(*m_window);
    LoadList &list = *trailer().unload();
    press("workOut");
    int homeless = list.rows()->count() - 1;
    while (homeless >= 0 && !cell(list, homeless, "place").isEmpty())
        --homeless;
    int other = list.rows()->count() - 1;
    while (other >= 0 && cell(list, other, "place").isEmpty())
        --other;
    QVERIFY2(homeless >= 0 && other >= 0, "the demo shop has both in its drawers");
    const QString home = cell(list, other, "place");
    scan(home); // Nothing waits for a place: its line comes into hand.
    QTRY_COMPARE(cell(list, inHand("unloadList"), "place"), home);
    QCOMPARE(list.tickedCount(), 0);
    const QString part = cell(list, homeless, "part");
    const QString from = drawerOf(list, homeless);
    scan(part);
    QTRY_COMPARE(list.tickedCount(), 1);
    QVERIFY(item("unloadHome") != nullptr);
    QCOMPARE(list.home(), -1);
    QCOMPARE(item("unloadHome")->property("currentIndex").toInt(), -1);
    scan(home);
    QTRY_COMPARE(list.homes().value(list.home()), home);
    QCOMPARE(item("unloadHome")->property("currentText").toString(), home);
    trailerPicture("take-out-scanned");
    const auto there = all(qPrintable(part), qPrintable(home));
    const auto before = all(qPrintable(part), qPrintable(from));
    press("takeOutTicked");
    awaitShown();
    QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    QVERIFY(all(qPrintable(part), qPrintable(home)) > there);
    QVERIFY(all(qPrintable(part), qPrintable(from)) < before);
    QCOMPARE(list.home(), -1); // The next is asked about anew.
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitShown();
    m_window->removeEventFilter(&m_ear);
    press("workIn");
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
