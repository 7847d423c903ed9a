// SPDX-License-Identifier: MIT
//
// A supplier's list with ten rows that are not clear, by keyboard in the real window: ten questions
// with two answers each; what it changes is seen and can be left out; before the last button
// nothing is in the shop; the rest is taken in as one step, which is taken back as one.

#include "parts_on_screen.h"

#include <QFile>

using namespace flarestock;

namespace {

struct Asked {
    const char *row;
    const char *meant;      ///< What it is understood as; empty: nobody can tell.
    bool isDropped = false; ///< Something of it is left out so, and Enter alone does not do that.
};

/// Ten ways in which lists are wrong, as they come from suppliers.
const std::vector<Asked> TenRows = {
    {"Z-01,adaptor,one letter off,a: ORB -6 male; b: AN -6 male,,,", "adapter"},
    {"Z-02,adapter,shorthand,a: ORB 6 m; b: JIC 8 fem swvl,,,", "JIC -8 female swivel"},
    {"Z-03,adapter,no such seal,a: ORB -6 male; b: AN -6 male,FKMM,,", "FKM"},
    {"Z-04,adapter,comma for a point,a: ORB -6 male; b: AN -6 male,,\"34,5 bar\",", "34.5 bar"},
    {"Z-05,adapter,no such unit,a: ORB -6 male; b: AN -6 male,,500 psy,", "without rated", true},
    {"Z-06,adapter,unknown part in its box,a: ORB -6 male; b: AN -6 male,,,NO-SUCH-1",
     "without box", true},
    {"Z-07,adapter,,a: ORB -6 male; b: AN -6 male,,,", "description"},
    {",adapter,no number,a: ORB -6 male; b: AN -6 male,,,", ""},
    {"Z-09,widget of sorts,no kind at all,,,,", ""},
    {"Z-00,adapter,stands twice,a: ORB -8 male; b: AN -8 male,,,", "in place of"},
};

} // namespace

class PartsListIsImported : public QObject, protected PartsOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showParts();
    }
    void asksAboutEachRowThatIsNotClear();
    void asksWhatIsSeldomMeant();
    void aLineThatIsNoRowIsAskedAbout();
    void whatItComesToIsSaid();
    void whatChangesIsSeenAndLeftOut();
    void answersWaitWhileTheSheetIsAway();
    void aListOfTheShopItselfChangesNothing();
    void aLongListIsStopped();
    void aFileThatIsNoListSaysWhy();
    void nothingIsWarnedAbout();

private:
    QString fileOf(const char *name, const QByteArray &text)
    {
        QString path = m_folder.filePath(QString::fromLatin1(name));
        QFile file(path);
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        return path;
    }
    void openSheet()
    {
        press("importList");
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("chooseList"));
    }
    void read(const QString &path) { list().read(QUrl::fromLocalFile(path)); }
    ListImport &list() { return *parts().importing(); }
    std::size_t cards() const { return inFile()->catalogue.parts().size(); }
};

void PartsListIsImported::asksAboutEachRowThatIsNotClear()
{
    QByteArray text = "part,kind,description,ports,seal,rated,box\n"
                      "Z-00,adapter,first,a: ORB -6 male; b: AN -6 male,,,\n"
                      "Z-10,adapter,whole,a: ORB -6 male; b: AN -6 male,FKM,500 psi,\n"
                      "Z-11,plug,whole too,a: ORB -6 male,,,\n";
    for (const Asked &asked : TenRows)
        text += QByteArray(asked.row) + '\n';
    const std::size_t before = cards();
    openSheet();
    read(fileOf("autumn.csv", text));
    QTRY_COMPARE(list().questions(), 10);
    for (std::size_t at = 0; at < TenRows.size(); ++at) {
        QTRY_COMPARE(list().question(), static_cast<int>(at) + 1);
        const QString meant = words("rowMeant");
        const bool canBeTaken = *TenRows[at].meant != 0;
        QVERIFY2(!words("rowWrong").isEmpty(), TenRows[at].row);
        QVERIFY2(!canBeTaken || meant.contains(QString::fromLatin1(TenRows[at].meant)),
                 qPrintable(meant));
        QCOMPARE(list().canTake(), canBeTaken);
        QTRY_COMPARE(focusName(*m_window), canBeTaken && !TenRows[at].isDropped
                                               ? QStringLiteral("takeRow")
                                               : QStringLiteral("leaveRow"));
        if (at == 1)
            pictureOfParts("question");
        if (at == 5) // The one before is left out although it could be taken; this one not.
            key(Qt::Key_Backtab);
        key(Qt::Key_Return);
    }
    QCOMPARE(cards(), before);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeIn"));
    QCOMPARE(words("takeIn"), QStringLiteral("Take in 10 rows"));
    pictureOfParts("take-in");
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY2(item("takeIn") == nullptr, qPrintable(words("sheetProblem")));
    QCOMPARE(cards(), before + 9); // Of the two rows of Z-00 the later one counts.
    const auto shop = inFile();
    QCOMPARE(shop->catalogue.find("Z-00")->description, std::string("stands twice"));
    QCOMPARE(shop->catalogue.find("Z-02")->ports.at(1).port.text(),
             std::string("JIC -8 female swivel"));
    QVERIFY(shop->catalogue.find("Z-05") == nullptr);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_COMPARE(cards(), before);
}

/// A price that rises and another currency can stand, but somebody is asked.
void PartsListIsImported::asksWhatIsSeldomMeant()
{
    openSheet();
    read(fileOf("prices.csv", "part,supplier,supplier part,currency,pack,minimum,multiple,prices\n"
                              "AD-6-8,NHT,T-1,USD,1,1,1,1: 10.00; 20: 9.00\n"
                              "AD-6-8,NHT,T-2,USD,1,5,1,5: 10.00; 20: 12.00\n"
                              "AD-6-8,NHT,T-3,EUR,1,1,1,1: 10.00\n"
                              "AD-6-8,HAL,T-4,EUR,1,1,1,1: 10.00\n"));
    QTRY_COMPARE(list().questions(), 2);
    QVERIFY2(words("rowWrong").contains(QStringLiteral("rise")), qPrintable(words("rowWrong")));
    QVERIFY(list().canTake());
    QCOMPARE(list().meant(), QStringLiteral("taken as it stands"));
    list().answer(false);
    QTRY_VERIFY2(words("rowWrong").contains(QStringLiteral("currency")),
                 qPrintable(words("rowWrong")));
    list().answer(true);
    QTRY_VERIFY(!list().isAsking());
    QTRY_COMPARE(words("answeredWords"),
                 QStringLiteral("Of the rows asked about: taken in 1, left out 1."));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("takeIn") == nullptr);
    list().forget(); // It would wait with its answers.
}

/// A comma too many costs a question, not the list.
void PartsListIsImported::aLineThatIsNoRowIsAskedAbout()
{
    openSheet();
    read(fileOf("cells.csv", "part,kind,description\nZ-20,plug,one\nZ-21,plug,two, and more\n"
                             "Z-22,plug,3/8\" plug\n"));
    QTRY_COMPARE(list().questions(), 2);
    QVERIFY2(words("questionCount").contains(QStringLiteral("line 3")),
             qPrintable(words("questionCount")));
    QVERIFY2(words("rowWrong").contains(QStringLiteral("4 fields")), qPrintable(words("rowWrong")));
    QCOMPARE(list().cells()->cell(0, QStringLiteral("value")).toString(),
             QStringLiteral("Z-21,plug,two, and more"));
    pictureOfParts("no-row");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("leaveRow"));
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    QTRY_COMPARE(words("takeIn"), QStringLiteral("Take in 1 row"));
    QVERIFY2(list().about().startsWith(QStringLiteral("3 rows:")), qPrintable(list().about()));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("takeIn") == nullptr);
    list().forget();
}

/// Each with one row, whose heading is said once.
void PartsListIsImported::whatItComesToIsSaid()
{
    openSheet();
    read(fileOf("money.csv", "supplier,name,currency\nQQQ,one,ZZZ\n"));
    QTRY_COMPARE(list().questions(), 1);
    QVERIFY2(list().about().startsWith(QStringLiteral("1 row:")), qPrintable(list().about()));
    QCOMPARE(list().wrong().count(QStringLiteral("currency:")), 1);
    QVERIFY2(list().meant().contains(QStringLiteral("the shop's own")), qPrintable(list().meant()));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("leaveRow"));
    read(fileOf("rated.csv", "part,kind,description,rated\nZ-30,plug,one,500 psy\n"));
    QTRY_VERIFY2(list().wrong().startsWith(QStringLiteral("rated:")), qPrintable(list().wrong()));
    QCOMPARE(list().wrong().count(QStringLiteral("rated:")), 1);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("takeRow") == nullptr);
}

/// Another supplier's name, and a card that another word makes worse, are seen before they stand.
void PartsListIsImported::whatChangesIsSeenAndLeftOut()
{
    const auto shop = inFile();
    const std::string was = shop->catalogue.find("AD-6-8")->description;
    openSheet();
    read(fileOf("two.csv", "part,kind,description\nAD-6-8,,another name\nZ-40,plug,new\n"));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeIn"));
    QCOMPARE(words("takeIn"), QStringLiteral("Take in 2 rows"));
    ListChanges &changes = *list().changes();
    QCOMPARE(changes.count(), 1);
    const int says = changes.roleNames().key("says");
    QCOMPARE(changes.data(changes.index(0), says).toString(),
             QStringLiteral("description: %1 → another name").arg(QString::fromStdString(was)));
    key(Qt::Key_Backtab);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("changedLine"));
    key(Qt::Key_Space);
    QTRY_COMPARE(words("takeIn"), QStringLiteral("Take in 1 row"));
    pictureOfParts("what-changes");
    key(Qt::Key_Tab);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeIn"));
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY2(item("takeIn") == nullptr, qPrintable(words("sheetProblem")));
    QCOMPARE(inFile()->catalogue.find("AD-6-8")->description, was);
    QVERIFY(inFile()->catalogue.find("Z-40") != nullptr);
    QVERIFY(!list().isLoaded());
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_VERIFY(inFile()->catalogue.find("Z-40") == nullptr);
}

/// Escape in the middle of the questions costs none of the answers.
void PartsListIsImported::answersWaitWhileTheSheetIsAway()
{
    const QString path = fileOf("wait.csv", "part,kind,description\nZ-50,adaptor,one\n"
                                            "Z-51,adaptor,two\n");
    openSheet();
    read(path);
    QTRY_COMPARE(list().questions(), 2);
    key(Qt::Key_Escape); // Nothing was answered, and nothing waits.
    QTRY_VERIFY(item("takeRow") == nullptr);
    QVERIFY(!list().isLoaded());
    openSheet();
    read(path);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeRow"));
    key(Qt::Key_Return);
    QTRY_COMPARE(list().question(), 2);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("takeRow") == nullptr);
    press("importList");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeRow"));
    QCOMPARE(list().question(), 2);
    QVERIFY(item("otherList") != nullptr);
    read(fileOf("other.csv", "part,kind,description\nZ-52,plug,two\n"));
    QTRY_COMPARE(list().file(), QStringLiteral("other.csv"));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("takeIn"));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("takeIn") == nullptr);
}

void PartsListIsImported::aListOfTheShopItselfChangesNothing()
{
    const TextFiles texts =
        ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly)->documents().value();
    for (const char *name : {"parts/filters.csv", "offers.csv", "suppliers.csv"}) {
        openSheet();
        read(fileOf("own.csv", QByteArray::fromStdString(texts.at(name))));
        QTRY_VERIFY2(list().isLoaded(), qPrintable(list().problem()));
        QCOMPARE(list().questions(), 0);
        QVERIFY2(list().about().contains(QStringLiteral("0 new, 0 changed")),
                 qPrintable(list().about()));
        key(Qt::Key_Escape);
        QTRY_VERIFY(item("takeIn") == nullptr);
    }
}

void PartsListIsImported::aLongListIsStopped()
{
    QByteArray text = "part,kind,description,ports\n";
    for (int at = 0; at < 100'000; ++at)
        text +=
            "Y-" + QByteArray::number(at) + ",adapter,one of many,a: ORB -6 male; b: AN -6 male\n";
    const std::size_t before = cards();
    openSheet();
    read(fileOf("long.csv", text));
    QTRY_VERIFY(item("stopReading") != nullptr);
    QTRY_VERIFY_WITH_TIMEOUT(list().progress() > 0, 30000);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("stopReading"));
    pictureOfParts("reading");
    key(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(!list().isReading(), 10000);
    QVERIFY(list().progress() < 1);
    QVERIFY(words("sheetProblem").contains(QStringLiteral("Stopped")));
    QVERIFY(!list().isLoaded());
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("chooseList") == nullptr);
    QCOMPARE(cards(), before);
}

void PartsListIsImported::aFileThatIsNoListSaysWhy()
{
    openSheet();
    read(fileOf("other.csv", "name,colour\nx,red\n"));
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("column")));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("chooseList") == nullptr);
}

void PartsListIsImported::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(PartsListIsImported)
#include "tst_parts_list_is_imported.moc"
