// SPDX-License-Identifier: MIT
//
// The templates are for everyone: each of the shop's is drawn as it stands; the keyboard reaches
// everything, every control has a name, no word is cut, targets are for gloves; lists are sound.

#include "for_everyone.h"
#include "templates_on_screen.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QTextCursor>

using namespace flarestock;

class TemplatesAreForEveryone : public QObject, protected TemplatesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showParts(); // Below the sheet lies an area, as always.
    }
    void listsAreSound();
    void eachIsDrawnAsItStands();
    void tabComesRound_data();
    void tabComesRound();
    void everyControlHasAName();
    void aLetterKeepsNobodyWaiting();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    void showOne()
    {
        openTemplate(QStringLiteral("Injection, pump on the frame rail, return loop"));
    }
    void leave()
    {
        key(Qt::Key_Escape);
        QTRY_VERIFY(!editor().isOpen() && item("templateText") == nullptr);
    }
    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void TemplatesAreForEveryone::listsAreSound()
{
    for (QAbstractItemModel *model : std::initializer_list<QAbstractItemModel *>{
             templates().choices(), editor().faults(), editor().stillOpen(),
             editor().map()->plates(), editor().map()->runs(), editor().map()->marks()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            model, QAbstractItemModelTester::FailureReportingMode::QtTest));
}

void TemplatesAreForEveryone::eachIsDrawnAsItStands()
{
    key(Qt::Key_T, Qt::ControlModifier);
    QTRY_VERIFY(templates().choices()->count() > 10);
    QStringList all;
    for (int row = 0; row < templates().choices()->count(); ++row)
        all.append(templates().choices()->cell(row, QStringLiteral("key")).toString());
    key(Qt::Key_Escape);
    for (const QString &one : all) {
        templates().begin(one);
        awaitDrawn();
        QVERIFY2(stations() > 0 && editor().mapStale().isEmpty(), qPrintable(one));
        QCOMPARE(editor().faults()->count(), 0);
        QVERIFY(!editor().isChanged());
        leave();
    }
    QCOMPARE(templates().choices()->count(), all.size()); // Nothing waits that nobody typed.
}

void TemplatesAreForEveryone::tabComesRound_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

/// From the list of paragraphs, through the fields and the text, back to it.
void TemplatesAreForEveryone::tabComesRound()
{
    QFETCH(Qt::Key, tab);
    showOne();
    editor().form()->choose(QStringLiteral("station/1"));
    QStringList passed;
    for (int at = 0; at < 60; ++at) {
        key(tab, tab == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier);
        passed.append(focusName(*m_window));
        if (passed.last() == QStringLiteral("paragraph"))
            break;
    }
    QCOMPARE(passed.last(), QStringLiteral("paragraph"));
    for (const char *part :
         {"addStation", "addExtra", "moveUp", "moveDown", "removeParagraph", "field-station/1/id",
          "choice-station/1/kind", "templateText", "writeTemplate", "leaveTemplate", "lineMap"})
        QVERIFY2(passed.contains(QLatin1String(part)),
                 qPrintable(QLatin1String(part) + u' ' + passed.join(u' ')));
    leave();
}

/// The longest template of the shop; the map is worked out away from the window.
void TemplatesAreForEveryone::aLetterKeepsNobodyWaiting()
{
#ifdef QT_NO_DEBUG
    constexpr double MsMost = 8; // Half a frame of 16 ms, so that the window has the other half.
#else
    constexpr double MsMost = 80; // A debug build takes far longer on a busy machine.
#endif
    openTemplate(QStringLiteral("Injection, lift pump and surge tank"));
    editor().form()->choose(QStringLiteral("station/1"));
    QTextCursor cursor(&editor().document());
    cursor.movePosition(QTextCursor::End);
    double best = 1e9; // Of a few: others work on this machine, too.
    for (int round = 0; round < 9; ++round) {
        QElapsedTimer since;
        since.start();
        cursor.insertText(QStringLiteral("#"));
        best = std::min(best, static_cast<double>(since.nsecsElapsed()) / 1e6);
    }
    QVERIFY(editor().isChanged());
    qInfo("a letter takes %.2f ms", best);
    QVERIFY2(best < MsMost, qPrintable(QString::number(best)));
    for (int round = 0; round < 9; ++round)
        cursor.deletePreviousChar();
    leave();
}

void TemplatesAreForEveryone::everyControlHasAName()
{
    key(Qt::Key_T, Qt::ControlModifier);
    QTRY_VERIFY(item("templateList") != nullptr);
    QCOMPARE(namelessControls(*m_window, 20), QString());
    key(Qt::Key_Escape);
    showOne();
    QCOMPARE(namelessControls(*m_window, 20), QString());
    leave();
}

void TemplatesAreForEveryone::cutsNoWordsShort_data()
{
    addScreenSizes();
}

void TemplatesAreForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    m_look->setDark(size.width() == 1024);
    showOne();
    pictureOfTemplates(size.width() == 1024   ? "dark-small"
                       : size.width() == 1280 ? "middling"
                                              : "frame-rail",
                       size);
    seenWords.look(*m_window, {"cardTab", "paragraph"});
    if (size.width() < 1200) { // One of the two, and the other by a key.
        QVERIFY(item("turnTemplate") != nullptr && item("templateText") == nullptr);
        key(Qt::Key_F6);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("templateText"));
        pictureOfTemplates("text-dark-small", size);
        QVERIFY(item("paragraphList") == nullptr);
        key(Qt::Key_F6);
        QTRY_VERIFY(item("paragraphList") != nullptr);
    }
    leave();
    m_look->setDark(false);
    QCOMPARE(seenWords.cut(30), QString());
}

void TemplatesAreForEveryone::targetsAreBigEnoughForGloves()
{
    showOne();
    const QString small = tooSmallForGloves(*m_window, {"writeTemplate", "leaveTemplate"});
    QVERIFY2(small.isEmpty(), qPrintable(small));
    leave();
}

void TemplatesAreForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TemplatesAreForEveryone)
#include "tst_templates_are_for_everyone.moc"
