// SPDX-License-Identifier: MIT
//
// The trailer's screen is for everyone: the keyboard comes round, every control has a name, no word
// is cut, targets are for gloves, a scanner finds drawers and lines of the list.

#include "app/desk/scan/scan_ear.h"
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
    item("findField")->forceActiveFocus();
    QStringList passed;
    const QQuickItem *first = m_window->activeFocusItem();
    for (int at = 0; at < 70; ++at) {
        key(Qt::Key_Tab);
        passed.append(focusName(*m_window));
        if (m_window->activeFocusItem() == first)
            break;
    }
    QVERIFY2(m_window->activeFocusItem() == first, qPrintable(passed.join(u' ')));
    for (const char *part : {"allThere", "copiesAway", "drawerCell", "inDrawerLine", "loadDrawer",
                             "workIn", "workCopies", "loadStop", "loadTicked", "area-4"})
        QVERIFY2(passed.contains(QLatin1String(part)),
                 qPrintable(QString(QLatin1String(part) + QStringLiteral(" is not in ") +
                                    passed.join(u' '))));
}

void TrailerIsForEveryone::everyControlHasAName()
{
    for (const char *work : {"workIn", "workOut", "workCarry", "workCopies"}) {
        press(work);
        QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading(), 20000);
        (void)pictureOf(*m_window, QSize(1440, 900));
        int controls = 0;
        QStringList nameless;
        visit(QAccessible::queryAccessibleInterface(m_window), controls, nameless);
        QVERIFY2(controls > 30, work);
        QCOMPARE(nameless, QStringList());
    }
}

void TrailerIsForEveryone::cutsNoWordsShort_data()
{
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(1024, 640), QSize(1280, 720), QSize(1440, 900)})
        QTest::newRow(QByteArray::number(size.width()).constData()) << size;
}

void TrailerIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    QStringList cut;
    int texts = 0;
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
        for (const QQuickItem *one : allSeen(*m_window)) {
            if (!one->property("truncated").isValid())
                continue;
            ++texts;
            if (one->property("truncated").toBool())
                cut.append(one->property("text").toString());
        }
    }
    QVERIFY(texts > 100);
    cut.removeDuplicates();
    m_look->setDark(false);
    QVERIFY2(cut.isEmpty(), qPrintable(cut.join(u'\n')));
}

/// 40 px: common practice for a hand in a glove, no source.
void TrailerIsForEveryone::targetsAreBigEnoughForGloves()
{
    (void)pictureOf(*m_window, QSize(1440, 900));
    press("workIn");
    for (const char *name : {"allThere", "copiesAway", "drawerFront", "loadDrawer", "workIn",
                             "workOut", "workCarry", "workCopies", "loadStop", "loadTicked"}) {
        QVERIFY2(item(name) != nullptr, name);
        QVERIFY2(item(name)->height() >= 40 && item(name)->width() >= 40, name);
    }
}

void TrailerIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TrailerIsForEveryone)
#include "tst_trailer_is_for_everyone.moc"
