// SPDX-License-Identifier: MIT
//
// A row of the catalogue that is typed is judged as the file would be, and put into its file
// without a byte of the others changing. Quoting is RFC 4180's.

#include "model/exchange/typed/catalogue_rows.h"
#include "model/exchange/typed/understood.h"
#include "text_files.h"

#include <QTest>

using namespace flarestock;

class RowsArePutInTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void leavesAllElseToTheByte();
    void addsAColumnWhereOneIsNeeded();
    void aNewPartStandsWithOthersOfItsKind();
    void isJudgedAsTheFileIs_data();
    void isJudgedAsTheFileIs();
    void shorthandIsUnderstood_data();
    void shorthandIsUnderstood();

private:
    const TextFiles m_demo = demoFiles();
};

void RowsArePutInTest::leavesAllElseToTheByte()
{
    int tables = 0;
    for (const auto &[name, text] : m_demo) {
        if (sheetKind(name) == SheetKind::Other)
            continue;
        ++tables;
        auto table = EditedTable::read(text, name).value();
        QVERIFY2(table.text() == text, name.c_str());
        RowCells row = table.row(3);
        table.put(row);
        const auto again = EditedTable::read(table.text(), name).value();
        QCOMPARE(again.rowCount(), table.rowCount());
        for (std::size_t at = 0; at < again.rowCount(); ++at)
            QVERIFY(again.row(at) == table.row(at));
    }
    QVERIFY(tables > 10);
    const std::string mixed = "part,kind,description\r\nA,plug,\"one, two\"\r\nB,plug,x";
    auto table = EditedTable::read(mixed, "parts/a.csv").value();
    table.put({{"part", "C"}, {"kind", "plug"}, {"description", "with \"quotes\""}});
    QCOMPARE(table.text(), mixed + "\r\nC,plug,\"with \"\"quotes\"\"\"\r\n");
}

void RowsArePutInTest::addsAColumnWhereOneIsNeeded()
{
    auto table = EditedTable::read("part,kind,description\nA,plug,x\n", "parts/a.csv").value();
    table.put({{"part", "a"}, {"kind", "plug"}, {"description", "y"}, {"seal", "FKM"}});
    table.put({{"part", "B"}, {"kind", "plug"}, {"description", "z"}});
    QCOMPARE(table.text(), std::string("part,kind,description,seal\na,plug,y,FKM\nB,plug,z,\n"));
}

void RowsArePutInTest::aNewPartStandsWithOthersOfItsKind()
{
    auto rows = CatalogueRows::read(m_demo, SheetKind::Parts).value();
    const auto changed =
        rows.with({{{"part", "Z-1"}, {"kind", "regulator"}, {"description", "one more"}}});
    QVERIFY(changed && changed->size() == 1 && changed->contains("parts/regulators.csv"));
    TextFiles all = *changed;
    all.insert(m_demo.begin(), m_demo.end());
    QVERIFY(readCatalogue(all)->find("z-1") != nullptr);
}

void RowsArePutInTest::isJudgedAsTheFileIs_data()
{
    QTest::addColumn<QString>("heading");
    QTest::addColumn<QString>("typed");
    QTest::newRow("kind") << "kind"
                          << "adaptor";
    QTest::newRow("port") << "ports"
                          << "a: ORB -6 male; b: AN -6";
    QTest::newRow("seal") << "seal"
                          << "FKMM";
    QTest::newRow("pressure") << "rated"
                              << "500 psy";
    QTest::newRow("of another kind") << "micron"
                                     << "10";
    QTest::newRow("itself") << "substitutes"
                            << "Z-1";
    QTest::newRow("no such part") << "box"
                                  << "2 x NO-SUCH";
}

/// The one mistake is said in the same words at its cell as by the reader of the whole file.
void RowsArePutInTest::isJudgedAsTheFileIs()
{
    QFETCH(QString, heading);
    QFETCH(QString, typed);
    RowCells row{{"part", "Z-1"},
                 {"kind", "adapter"},
                 {"description", "x"},
                 {"ports", "a: ORB -6 male; b: AN -6 male"}};
    const RowKnows knows{[](std::string_view number) -> std::optional<Kind> {
                             return number == "Z-1" ? std::optional(Kind::Adapter) : std::nullopt;
                         },
                         {}};
    QVERIFY(faultsOf(SheetKind::Parts, row, knows).empty());
    row[heading.toStdString()] = typed.toStdString();
    const auto faults = faultsOf(SheetKind::Parts, row, knows);
    QVERIFY(!faults.empty());
    QCOMPARE(faults.front().heading, heading.toStdString());
    auto table = EditedTable::fresh(SheetKind::Parts);
    table.put(row);
    const auto read = readCatalogue({{"parts/a.csv", table.text()}});
    QVERIFY(!read);
    QCOMPARE(faults.front().wrong, read.error().wrong);
    QCOMPARE(faults.front().remedy, read.error().remedy);
}

void RowsArePutInTest::shorthandIsUnderstood_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("meant");
    QTest::newRow("abbreviated") << "JIC 8 fem swvl"
                                 << "JIC -8 female swivel";
    QTest::newRow("without its dash") << "orb 6 m"
                                      << "ORB -6 male";
    QTest::newRow("a pipe thread") << "npt 1/8 f"
                                   << "NPT 1/8 female";
    QTest::newRow("no such size") << "ORB 7 male"
                                  << "";
    QTest::newRow("nothing") << ""
                             << "";
}

void RowsArePutInTest::shorthandIsUnderstood()
{
    QFETCH(QString, typed);
    QFETCH(QString, meant);
    QCOMPARE(QString::fromStdString(understoodPort(typed.toStdString())), meant);
}

QTEST_APPLESS_MAIN(RowsArePutInTest)
#include "tst_rows_are_put_in_one_by_one.moc"
