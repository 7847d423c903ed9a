// SPDX-License-Identifier: MIT
//
// A supplier's list with ten rows that are not clear, by keyboard in the real window: ten questions
// with two answers each; before the last button nothing is in the shop; the rest is taken in as one
// step, which is taken back as one.

#include "parts_on_screen.h"

#include <QFile>

using namespace flarestock;

namespace {

struct Asked {
    const char *row;
    const char *meant; ///< What it is understood as; empty: nobody can tell.
};

/// Ten ways in which lists are wrong, as they come from suppliers.
const std::vector<Asked> TenRows = {
    {"Z-01,adaptor,one letter off,a: ORB -6 male; b: AN -6 male,,,", "adapter"},
    {"Z-02,adapter,shorthand,a: ORB 6 m; b: JIC 8 fem swvl,,,", "JIC -8 female swivel"},
    {"Z-03,adapter,no such seal,a: ORB -6 male; b: AN -6 male,FKMM,,", "FKM"},
    {"Z-04,adapter,comma for a point,a: ORB -6 male; b: AN -6 male,,\"34,5 bar\",", "34.5 bar"},
    {"Z-05,adapter,no such unit,a: ORB -6 male; b: AN -6 male,,500 psy,", "without rated"},
    {"Z-06,adapter,unknown part in its box,a: ORB -6 male; b: AN -6 male,,,NO-SUCH-1",
     "without box"},
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
    void aListOfTheShopItselfChangesNothing();
    void aLongListIsStopped();
    void aFileThatIsNoListSaysWhy();
    void nothingIsWarnedAbout();

private:
    QString fileOf(const char *name, const QByteArray &text)
    {
        const QString path = m_folder.filePath(QString::fromLatin1(name));
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
        QTRY_COMPARE(focusName(*m_window),
                     canBeTaken ? QStringLiteral("takeRow") : QStringLiteral("leaveRow"));
        if (at == 1)
            pictureOfParts("question");
        if (at == 4) // This one is left out although it could be taken.
            key(Qt::Key_Tab);
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
    list().answer(false);
    QTRY_VERIFY(!list().isAsking());
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
