// SPDX-License-Identifier: MIT
//
// The screen of the cars is for everyone: the keyboard reaches everything, every control has a
// name, no word is cut, targets are for gloves, a scanner's letters begin no work.

#include "app/desk/scan/scan_ear.h"
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
    item("findField")->forceActiveFocus();
    QStringList passed;
    const QQuickItem *first = m_window->activeFocusItem();
    for (int at = 0; at < 70; ++at) {
        key(tab);
        passed.append(focusName(*m_window));
        if (m_window->activeFocusItem() == first)
            break;
    }
    QVERIFY2(m_window->activeFocusItem() == first, qPrintable(passed.join(u' ')));
    for (const char *part : {"overdue", "dueNext", "tab-due", "tab-car|car-2", "tab-lot",
                             "positionLine", "rings", "serviceCard", "inspectionSheet",
                             "piecePanel", "work-wash", "work-replace", "work-ran", "area-5"})
        QVERIFY2(passed.contains(QLatin1String(part)),
                 qPrintable(QString(QLatin1String(part) + QStringLiteral(" is not in ") +
                                    passed.join(u' '))));
}

void ServiceIsForEveryone::everyControlHasAName()
{
    int controls = 0;
    QStringList nameless;
    visit(QAccessible::queryAccessibleInterface(m_window), controls, nameless);
    QVERIFY2(controls > 30, qPrintable(QString::number(controls)));
    QCOMPARE(nameless, QStringList());
}

void ServiceIsForEveryone::cutsNoWordsShort_data()
{
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(1024, 640), QSize(1280, 720), QSize(1440, 900)})
        QTest::newRow(QByteArray::number(size.width()).constData()) << size;
}

void ServiceIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    QStringList cut;
    int texts = 0;
    service().seekLot(QStringLiteral("SN 4417"));
    awaitRead();
    for (const char *tab : {"lot", "due", "car|car-1", "car|car-2", "car|car-3"}) {
        service().setTab(QString::fromLatin1(tab));
        for (const bool dark : {false, true}) {
            m_look->setDark(dark);
            (void)pictureOf(*m_window, size);
        }
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
    service().setTab(QStringLiteral("car|car-2"));
    m_look->setDark(size.width() == 1024);
    picture(size.width() == 1024   ? "dark-small"
            : size.width() == 1280 ? "middling"
                                   : "light",
            size);
    m_look->setDark(false);
    QVERIFY2(cut.isEmpty(), qPrintable(cut.join(u'\n')));
}

/// 40 px: common practice for a hand in a glove, no source.
void ServiceIsForEveryone::targetsAreBigEnoughForGloves()
{
    showCar("car-2");
    walkTo(Element);
    for (const char *name : {"overdue", "dueNext", "tab-due", "tab-lot", "positionLine", "rings",
                             "work-wash", "work-replace", "work-inspect", "work-damaged",
                             "work-takeOut", "work-fit", "work-ran", "area-5"}) {
        QVERIFY2(item(name) != nullptr, name);
        QVERIFY2(item(name)->height() >= 40 && item(name)->width() >= 40, name);
    }
}

void ServiceIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(ServiceIsForEveryone)
#include "tst_service_is_for_everyone.moc"
