// SPDX-License-Identifier: MIT
//
// The screen of the cars is for everyone: the keyboard reaches everything, every control has a
// name, no word is cut, targets are for gloves, a scanner's letters begin no work.

#include "app/desk/scan/scan_ear.h"
#include "for_everyone.h"
#include "service_on_screen.h"

using namespace flarestock;

class ServiceIsForEveryone : public QObject, protected ServiceOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        openWithCars();
        showService();
    }
    void aScannerBeginsNoWork();
    void tabComesRound_data();
    void tabComesRound();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    ScanEar m_ear;
};

/// Its letters are those of works: W, R, I …
void ServiceIsForEveryone::aScannerBeginsNoWork()
{
    connect(&m_ear, &ScanEar::heard, m_desk.get(), &Desk::scanned);
    m_ear.listenTo(*m_window);
    item("dueList")->forceActiveFocus(Qt::TabFocusReason);
    type("ep-460", 3);
    key(Qt::Key_Return);
    QTRY_COMPARE(service().selected(), QStringLiteral("coupe-fuel/pump"));
    QTest::qWait(120);
    QVERIFY(item("doDeed") == nullptr);
    m_window->removeEventFilter(&m_ear);
}

void ServiceIsForEveryone::tabComesRound_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

void ServiceIsForEveryone::tabComesRound()
{
    QFETCH(Qt::Key, tab);
    showCar("car-2");
    walkTo(Element);
    const QString missed =
        missedByTab(*m_window,
                    {"overdue", "dueNext", "tab-due", "tab-car|car-2", "tab-lot", "positionLine",
                     "rings", "serviceCard", "inspectionSheet", "piecePanel", "work-wash",
                     "work-replace", "work-ran", "area-5"},
                    {tab});
    QVERIFY2(missed.isEmpty(), qPrintable(missed));
}

void ServiceIsForEveryone::everyControlHasAName()
{
    QCOMPARE(namelessControls(*m_window, 30), QString());
}

void ServiceIsForEveryone::cutsNoWordsShort_data()
{
    addScreenSizes();
}

void ServiceIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    service().seekLot(QStringLiteral("SN 4417"));
    awaitRead();
    for (const char *tab : {"lot", "due", "car|car-1", "car|car-2", "car|car-3"}) {
        service().setTab(QString::fromLatin1(tab));
        for (const bool dark : {false, true}) {
            m_look->setDark(dark);
            (void)pictureOf(*m_window, size);
        }
        seenWords.look(*m_window);
    }
    service().setTab(QStringLiteral("car|car-2"));
    m_look->setDark(size.width() == 1024);
    picture(size.width() == 1024   ? "dark-small"
            : size.width() == 1280 ? "middling"
                                   : "light",
            size);
    m_look->setDark(false);
    QCOMPARE(seenWords.cut(), QString());
}

void ServiceIsForEveryone::targetsAreBigEnoughForGloves()
{
    showCar("car-2");
    walkTo(Element);
    const QString small = tooSmallForGloves(
        *m_window, {"overdue", "dueNext", "tab-due", "tab-lot", "positionLine", "rings",
                    "work-wash", "work-replace", "work-inspect", "work-damaged", "work-takeOut",
                    "work-fit", "work-ran", "area-5"});
    QVERIFY2(small.isEmpty(), qPrintable(small));
}

void ServiceIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(ServiceIsForEveryone)
#include "tst_service_is_for_everyone.moc"
