// SPDX-License-Identifier: MIT
//
// A journey at the trailer, by keyboard alone, in the real window on the demo shop: it is packed by
// the load list, its copy goes along, three elements are used in it, it comes back, and the stock
// says so.

#include "trailer_on_screen.h"

#include <QProcess>
#include <QSignalSpy>

using namespace flarestock;

class TrailerByKeyboard : public QObject, protected TrailerOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { openTrailer(); }
    void arrowsPullDrawersOut();
    void theLoadListIsWrittenToAFile();
    void theLoadListIsTickedAndBrought();
    void aDrawerIsFilledAtOnceAndTakenBack();
    void howManyToCarryBecomesALevel();
    void theCopyGoesAlong();
    void whatItHasIsNotTouchedHere();
    void threeElementsComeBackUsed();
    void anotherTimeItIsSaidThatNothingIsNew();
    void nothingIsWarnedAbout();

private:
    void whatHasTheFocusIsSeen();
    void eventsAreSaidToTheirDates();

    QString m_copy;
};

void TrailerByKeyboard::arrowsPullDrawersOut()
{
    QCOMPARE(trailer().drawer(), QStringLiteral("trailer-1")); // The first that lacks something.
    QCOMPARE(trailer().drawers()->cell(0, QStringLiteral("lack")).toInt(), 3);
    key(Qt::Key_Right);
    QCOMPARE(trailer().drawer(), QStringLiteral("trailer-2"));
    QTRY_VERIFY(!item("loadDrawer")->isEnabled()); // It lacks nothing.
    key(Qt::Key_Down);
    QCOMPARE(trailer().drawer(), QStringLiteral("trailer-4"));
    QTRY_VERIFY(words("drawerTitle").startsWith(QStringLiteral("Pulled out: trailer-4")));
    key(Qt::Key_Up);
    key(Qt::Key_Left);
    QCOMPARE(trailer().drawer(), QStringLiteral("trailer-1"));
    key(Qt::Key_Return);
    QCOMPARE(focusName(*m_window), QStringLiteral("inDrawerLine"));
    key(Qt::Key_Escape);
    QCOMPARE(focusName(*m_window), QStringLiteral("drawerCell"));
    trailerPicture("light");
}

/// Another program (poppler's) reads what stands on it.
void TrailerByKeyboard::theLoadListIsWrittenToAFile()
{
    LoadList &load = *m_desk->trailer()->load();
    const QString file = m_folder.filePath(load.fileName());
    QSignalSpy told(&load, &LoadList::told);
    load.writeTo(QUrl::fromLocalFile(file));
    QTRY_COMPARE_WITH_TIMEOUT(told.count(), 1, 20000);
    QVERIFY2(words("lastStep").contains(file), qPrintable(words("lastStep")));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), file, QStringLiteral("-")});
    QVERIFY(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    QVERIFY(load.rows()->count() > 0);
    for (int row = 0; row < load.rows()->count(); ++row) {
        const QString part = load.rows()->cell(row, QStringLiteral("part")).toString();
        QVERIFY2(!part.isEmpty() && text.contains(part), qPrintable(part));
    }
    load.writeTo(QUrl::fromLocalFile(QStringLiteral("/nowhere/load.pdf")));
    QTRY_COMPARE_WITH_TIMEOUT(told.count(), 2, 20000);
    QVERIFY(words("lastStep").contains(QStringLiteral("/nowhere/")));
}

void TrailerByKeyboard::theLoadListIsTickedAndBrought()
{
    press("workIn");
    item("loadList")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Space); // The first line: an element out of its bin.
    QCOMPARE(trailer().load()->tickedCount(), 1);
    key(Qt::Key_Space);
    QCOMPARE(trailer().load()->tickedCount(), 0);
    type("EG-10-S"); // As one would type or scan it.
    key(Qt::Key_Return);
    QCOMPARE(trailer().load()->tickedCount(), 1);
    trailerPicture("bring-in");
    const auto before = all("EG-10-S", "trailer-1");
    press("loadTicked");
    awaitShown();
    QCOMPARE(all("EG-10-S", "trailer-1"), before + 1);
    QTRY_COMPARE(trailer().load()->tickedCount(), 0);
    QVERIFY2(m_desk->build()->lastStep().contains(QStringLiteral("1 of EG-10-S")),
             qPrintable(m_desk->build()->lastStep()));
}

void TrailerByKeyboard::aDrawerIsFilledAtOnceAndTakenBack()
{
    item("drawerWall")->forceActiveFocus(Qt::TabFocusReason);
    QCOMPARE(trailer().drawer(), QStringLiteral("trailer-1"));
    press("loadDrawer");
    awaitShown();
    QCOMPARE(all("EM-40-S", "trailer-1"), 1);
    QTRY_COMPARE(trailer().drawers()->cell(0, QStringLiteral("lack")).toInt(), 0);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitShown();
    QCOMPARE(all("EM-40-S", "trailer-1"), 0);
    press("loadDrawer");
    awaitShown();
    QCOMPARE(all("EM-40-S", "trailer-1"), 1);
}

void TrailerByKeyboard::howManyToCarryBecomesALevel()
{
    press("workCarry");
    QTRY_VERIFY_WITH_TIMEOUT(carry().rows()->count() > 3, 20000);
    item("carryList")->forceActiveFocus(Qt::TabFocusReason);
    carry().select(QStringLiteral("EG-10-S"));
    const int row = carry().rows()->rowOf(QStringLiteral("EG-10-S"));
    const QString wanted = carry().rows()->cell(row, QStringLiteral("carry")).toString();
    QVERIFY(carry().bars()->count() > 2);
    QTRY_COMPARE(item("carryList")->property("currentIndex").toInt(), row);
    key(Qt::Key_Down);
    QVERIFY(carry().selected() != QStringLiteral("EG-10-S"));
    key(Qt::Key_Up);
    QCOMPARE(carry().selected(), QStringLiteral("EG-10-S"));
    trailerPicture("carry");
    whatHasTheFocusIsSeen();
    eventsAreSaidToTheirDates();
    press("keepOne");
    awaitShown();
    auto keepings = Workshop::open(m_file.toStdString()).value()->notes.keepings;
    QCOMPARE(keepings.at({"EG-10-S", "trailer-1"}).most, wanted.toLongLong());
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitShown();
    keepings = Workshop::open(m_file.toStdString()).value()->notes.keepings;
    QCOMPARE(keepings.at({"EG-10-S", "trailer-1"}).most, 2);
}

/// In a small window the sum behind it is longer than its place.
void TrailerByKeyboard::whatHasTheFocusIsSeen()
{
    (void)pictureOf(*m_window, QSize(1024, 640));
    const QQuickItem *sum = item("sumBehind")->parentItem();
    QVERIFY(sum->y() + sum->height() <= sum->parentItem()->height()); // Not out of its pane.
    for (const char *name : {"keepDrawer", "keepOne", "keepAll"}) {
        const QQuickItem *pane = item("sumBehind");
        const QQuickItem *field = item(name);
        QVERIFY2(field != nullptr, name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        const QRectF at = field->mapRectToItem(pane, QRectF(0, 0, field->width(), field->height()));
        QVERIFY2(at.top() >= 0 && at.bottom() <= pane->height(), name);
    }
    trailerPicture("carry-last", QSize(1024, 640));
    (void)pictureOf(*m_window, QSize(1440, 900));
    item("carryList")->forceActiveFocus(Qt::TabFocusReason);
}

/// In the list of what one may carry for.
void TrailerByKeyboard::eventsAreSaidToTheirDates()
{
    QQuickItem *tag = item("carryFor");
    QVERIFY(tag != nullptr);
    tag->findChild<QQuickItem *>(QStringLiteral("choice"))->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    const auto count = [this] {
        int events = 0;
        for (const QQuickItem *one : allSeen(*m_window)) {
            if (!one->property("text").toString().startsWith(QStringLiteral("the next ")))
                continue;
            ++events;
            if (one->property("contentWidth").toReal() > one->width() + 1)
                return -1;
        }
        return events;
    };
    QTRY_VERIFY(count() > 3);
    trailerPicture("carry-for");
    key(Qt::Key_Escape);
    item("carryList")->forceActiveFocus(Qt::TabFocusReason);
}

void TrailerByKeyboard::theCopyGoesAlong()
{
    m_copy = m_folder.filePath(QStringLiteral("lakeside.flarestock"));
    press("workCopies");
    press("takeCopy");
    write("copyFile", qPrintable(m_copy));
    write("copyWith", "the pit crew");
    trailerPicture("take-a-copy");
    press("takeIt");
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
    QVERIFY2(copies().problem().isEmpty(), qPrintable(copies().problem()));
    QTRY_VERIFY(item("copyFile") == nullptr);
    QVERIFY(ShopFile::verify(m_copy.toStdString()).value().whole);
    QTRY_VERIFY(!trailer().drawers()->cell(0, QStringLiteral("away")).toString().isEmpty());
    QTRY_VERIFY(item("drawerAway") != nullptr); // And what is in it is said still.
    trailerPicture("away");
}

void TrailerByKeyboard::whatItHasIsNotTouchedHere()
{
    const auto before = all("CL-38", "trailer-6");
    press("workIn");
    press("tickAllIn");
    if (trailer().load()->tickedCount() == 0)
        QSKIP("no bin of the demo shop has what lacks");
    press("loadTicked");
    awaitShown();
    QCOMPARE(all("CL-38", "trailer-6"), before);
    QVERIFY(m_desk->pen()->problem().contains(QStringLiteral("lakeside")));
}

void TrailerByKeyboard::threeElementsComeBackUsed()
{
    moveIn(m_copy, {"EG-10-S", "1", "trailer-1", "car-1", "batch 0926", "", "", ""});
    moveIn(m_copy, {"EM-40-S", "1", "trailer-1", "car-2", "", "", "", ""});
    moveIn(m_copy, {"EC-100-S", "1", "trailer-1", "car-1", "", "", "", ""});
    const auto elements = [this] {
        return all("EG-10-S", "trailer-1") + all("EM-40-S", "trailer-1") +
               all("EC-100-S", "trailer-1");
    };
    const auto before = elements();
    press("workCopies");
    press("lookCopy");
    write("lookFile", qPrintable(m_copy));
    key(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(copies().hasLooked(), 30000);
    QCOMPARE(copies().came()->count(), 3);
    QCOMPARE(elements(), before); // It was only looked at.
    trailerPicture("looked-at");
    press("bringCopy");
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 20000);
    QCOMPARE(elements(), before - 3);
    QTRY_COMPARE(trailer().drawers()->cell(0, QStringLiteral("lack")).toInt(), 3);
    QVERIFY(words("lookedAbout").startsWith(QStringLiteral("Brought: 3 movements")));
    QVERIFY(item("bringCopy") == nullptr);
    trailerPicture("back");
    QVERIFY(ShopFile::verify(m_file.toStdString()).value().whole);
}

void TrailerByKeyboard::anotherTimeItIsSaidThatNothingIsNew()
{
    const auto before = all("EG-10-S", "trailer-1");
    press("lookCopy");
    write("lookFile", qPrintable(m_copy));
    key(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(copies().hasLooked(), 30000);
    QTRY_VERIFY(words("lookedAbout").startsWith(QStringLiteral("It was brought already")));
    QCOMPARE(all("EG-10-S", "trailer-1"), before);
    press("putCopyAway");
    QTRY_VERIFY(item("lookedAbout") == nullptr);
}

void TrailerByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TrailerByKeyboard)
#include "tst_trailer_by_keyboard.moc"
