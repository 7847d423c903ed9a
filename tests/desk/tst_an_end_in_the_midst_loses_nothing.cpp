// SPDX-License-Identifier: MIT
//
// The sheets that are no form are filled in again as well where the desk ended in the midst of
// them: the leak test that ends a build, the copy that is to go along, the answers to a list that
// is taken in. What was written, or put away by its person, is not.

#include "desk_that_ends.h"

#include <QFile>

namespace flarestock {

class AnEndLosesNothing : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLeakTestIsFilledInAgain();
    void aLeakTestThatWasPutAwayIsNot();
    void aDepartureIsFilledInAgain();
    void aListIsAnsweredOn();
    void ofAnotherTextNothingIsAnswered();
    void whereAnotherQuestionIsAskedItIsAsked();

private:
    static void openTest(DeskThatEnds &desk)
    {
        desk.key(Qt::Key_1, Qt::AltModifier);
        desk.press("step-done");
        QTRY_VERIFY(desk.item("testMedium") != nullptr);
        QTRY_VERIFY(desk.item("testMedium")->hasActiveFocus());
    }
    static void openDeparture(DeskThatEnds &desk)
    {
        desk.key(Qt::Key_4, Qt::AltModifier);
        QTRY_VERIFY_WITH_TIMEOUT(!desk.desk().trailer()->isLoading(), 30000);
        desk.press("workCopies");
        desk.press("takeCopy");
        QTRY_VERIFY(desk.item("copyWith") != nullptr && desk.item("copyWith")->hasActiveFocus());
    }
    /// A list with three rows that are not clear, and one that changes what the shop has.
    static QByteArray list(const char *last = "Z-07,adapter,,a: ORB -6 male; b: AN -6 male\n")
    {
        return QByteArray("part,kind,description,ports\n"
                          "AD-8-8,,another one,\n"
                          "Z-01,adaptor,one letter off,a: ORB -6 male; b: AN -6 male\n"
                          "Z-02,adapter,shorthand,a: ORB 6 m; b: JIC 8 fem swvl\n") +
               last;
    }
    /// Reads it in an open sheet.
    static void readList(DeskThatEnds &desk, const QByteArray &text)
    {
        const QString path = desk.m_folder.filePath(QStringLiteral("autumn.csv"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        desk.key(Qt::Key_6, Qt::AltModifier);
        QTRY_VERIFY_WITH_TIMEOUT(!desk.desk().parts()->isLoading(), 30000);
        desk.press("importList");
        importing(desk).read(QUrl::fromLocalFile(path));
        QTRY_VERIFY(importing(desk).isLoaded());
        QCOMPARE(importing(desk).questions(), 3);
    }
    static ListImport &importing(const DeskThatEnds &desk)
    {
        return *desk.desk().parts()->importing();
    }
    /// What a desk leaves behind that ended after two answers: taken, left out.
    static QString answeredTwice()
    {
        DeskThatEnds desk;
        desk.start({});
        readList(desk, list());
        if (!desk.left().isEmpty()) // Nobody has answered anything.
            return {};
        importing(desk).answer(true);
        importing(desk).answer(false);
        return desk.left();
    }
};

void AnEndLosesNothing::aLeakTestIsFilledInAgain()
{
    QString left;
    {
        DeskThatEnds desk;
        desk.start({});
        openTest(desk);
        QVERIFY(desk.item("ofBefore") == nullptr);
        QVERIFY(desk.left().isEmpty()); // Nobody has typed anything.
        desk.write("testMedium", "air");
        desk.write("testPressure", "60 psi");
        desk.press("testFailed");
        desk.write("testNote", "at the rail");
        left = desk.left();
    }
    QVERIFY(!left.isEmpty());
    DeskThatEnds desk;
    desk.start(left);
    QVERIFY2(desk.words("lastStep").contains(QStringLiteral("Leak test of ")),
             qPrintable(desk.words("lastStep")));
    openTest(desk);
    QCOMPARE(desk.words("testMedium"), QStringLiteral("air"));
    QCOMPARE(desk.words("testPressure"), QStringLiteral("60 psi"));
    QCOMPARE(desk.words("testHeld"), QString());
    QCOMPARE(desk.words("testNote"), QStringLiteral("at the rail"));
    QVERIFY(desk.item("testFailed")->property("checked").toBool());
    QVERIFY(desk.item("ofBefore") != nullptr);
    QCOMPARE(desk.left(), left); // Were it to end again.
    desk.write("testHeld", "10 min");
    desk.press("writeTest");
    desk.awaitWritten();
    QTRY_VERIFY2(desk.item("testMedium") == nullptr, qPrintable(desk.words("sheetProblem")));
    QVERIFY(desk.left().isEmpty());
}

void AnEndLosesNothing::aLeakTestThatWasPutAwayIsNot()
{
    DeskThatEnds desk;
    desk.start({});
    openTest(desk);
    desk.write("testMedium", "water");
    QVERIFY(!desk.left().isEmpty());
    desk.key(Qt::Key_Escape);
    QTRY_VERIFY(desk.item("testMedium") == nullptr);
    QVERIFY(desk.left().isEmpty());
    desk.press("step-done"); // What was said of one test is none of the next.
    QTRY_VERIFY(desk.item("testMedium") != nullptr);
    QTRY_VERIFY(desk.words("testMedium").isEmpty());
}

void AnEndLosesNothing::aDepartureIsFilledInAgain()
{
    QString left;
    {
        DeskThatEnds desk;
        desk.start({});
        openDeparture(desk);
        QVERIFY(desk.left().isEmpty());
        desk.write("copyWith", "the pit crew");
        desk.write("copyName", "lakeside");
        desk.press("goes-trailer-3");
        left = desk.left();
    }
    QVERIFY(!left.isEmpty());
    DeskThatEnds desk;
    desk.start(left);
    openDeparture(desk);
    QTRY_COMPARE(desk.words("copyWith"), QStringLiteral("the pit crew"));
    QCOMPARE(desk.words("copyName"), QStringLiteral("lakeside"));
    QCOMPARE(desk.words("copyFile"), desk.desk().trailer()->copies()->suggested());
    QVERIFY(!desk.item("goes-trailer-3")->property("goes").toBool());
    QVERIFY(desk.item("goes-trailer-2")->property("goes").toBool());
    QVERIFY(desk.item("ofBefore") != nullptr);
    QCOMPARE(desk.left(), left);
    desk.key(Qt::Key_Escape);
    QTRY_VERIFY(desk.item("copyWith") == nullptr);
    QVERIFY(desk.left().isEmpty());
}

void AnEndLosesNothing::aListIsAnsweredOn()
{
    QString left = answeredTwice();
    QVERIFY(!left.isEmpty());
    {
        DeskThatEnds desk;
        desk.start(left);
        QVERIFY2(desk.words("lastStep").contains(QStringLiteral("autumn.csv")),
                 qPrintable(desk.words("lastStep")));
        readList(desk, list());
        QCOMPARE(importing(desk).question(), 3);
        QVERIFY(desk.item("ofBefore") != nullptr);
        QCOMPARE(desk.left(), left);
        importing(desk).answer(false);
        QCOMPARE(importing(desk).changes()->count(), 1);
        importing(desk).changes()->toggle(0); // What changes is left out.
        left = desk.left();
    }
    DeskThatEnds desk;
    desk.start(left);
    readList(desk, list());
    QVERIFY(!importing(desk).isAsking());
    QCOMPARE(importing(desk).takeWords(), QStringLiteral("Take in 1 row")); // The first answer.
    importing(desk).finish();
    desk.awaitWritten();
    QTRY_VERIFY(!importing(desk).isLoaded());
    QVERIFY(desk.left().isEmpty());
}

void AnEndLosesNothing::ofAnotherTextNothingIsAnswered()
{
    const QString left = answeredTwice();
    DeskThatEnds desk;
    desk.start(left);
    readList(desk, list("Z-08,adapter,,a: ORB -6 male; b: AN -6 male\n"));
    QCOMPARE(importing(desk).question(), 1);
    QVERIFY(desk.item("ofBefore") == nullptr);
    QCOMPARE(desk.left(), left); // The other one waits for its own file.
}

/// The same file, of which the shop makes something else by now.
void AnEndLosesNothing::whereAnotherQuestionIsAskedItIsAsked()
{
    QString left = answeredTwice();
    const auto at = left.indexOf(QStringLiteral("\"answers\":[[\"")) + 13;
    QVERIFY(at > 13);
    left.replace(at, 4, QStringLiteral("none"));
    DeskThatEnds desk;
    desk.start(left);
    readList(desk, list());
    QCOMPARE(importing(desk).question(), 1);
    QVERIFY(desk.left().isEmpty());
}

} // namespace flarestock

QTEST_MAIN(flarestock::AnEndLosesNothing)
#include "tst_an_end_in_the_midst_loses_nothing.moc"
