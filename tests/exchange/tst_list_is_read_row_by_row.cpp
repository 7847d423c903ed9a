// SPDX-License-Identifier: MIT
//
// A supplier's list beside the shop's: a line that is no row is asked about like any other that is
// not clear, and the others are read; what is no list says so. What a record and its quotes are is
// RFC 4180's.

#include "model/exchange/typed/list_reading.h"
#include "text_files.h"

#include <QTest>

using namespace flarestock;

class ListIsReadTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLineThatIsNoRowIsAskedAbout_data();
    void aLineThatIsNoRowIsAskedAbout();
    void aQuoteThatTookLinesAlongIsRefused();
    void whatIsNoListSaysSo_data();
    void whatIsNoListSaysSo();
    void enterDropsNothing_data();
    void enterDropsNothing();

private:
    Result<ListReading> readAll(const std::string &text) const
    {
        auto list = ListReading::begin({text, "autumn.csv"}, m_demo, m_catalogue);
        for (Result<bool> goesOn = true; list && *goesOn;) {
            goesOn = list->readOn(2);
            if (!goesOn)
                return tl::unexpected(goesOn.error());
        }
        return list;
    }

    const TextFiles m_demo = demoFiles();
    const Catalogue m_catalogue = readCatalogue(m_demo).value();
};

void ListIsReadTest::aLineThatIsNoRowIsAskedAbout_data()
{
    QTest::addColumn<QString>("line");
    QTest::addColumn<QString>("wrong");
    QTest::newRow("a cell too few") << "Z-2,plug"
                                    << "the record has 2 fields, the header 3 fields";
    QTest::newRow("a cell too many") << "Z-2,plug,\"x\",red"
                                     << "the record has 4 fields, the header 3 fields";
    QTest::newRow("an inch sign") << "Z-2,plug,3/8\" plug"
                                  << "there is a quote inside a field that has none around it";
    QTest::newRow("a word behind its quotes") << "Z-2,plug,\"one\" two"
                                              << "there is text after the closing quote";
}

void ListIsReadTest::aLineThatIsNoRowIsAskedAbout()
{
    QFETCH(QString, line);
    QFETCH(QString, wrong);
    const std::string broken = line.toStdString();
    for (const char *end : {"\n", "\r\n"}) {
        const std::string text = std::string("part,kind,description") + end + "Z-1,plug,one" + end +
                                 broken + end + "Z-3,plug,three" + end + "Z-4,plugg,four" + end +
                                 broken;
        const auto list = readAll(text);
        QVERIFY2(list, list ? "" : list.error().sentence().c_str());
        QCOMPARE(list->rowCount(), std::size_t(5));
        QCOMPARE(list->readCount(), std::size_t(5));
        QCOMPARE(list->clear().size(), std::size_t(2));
        QCOMPARE(list->asking().size(), std::size_t(3)); // In the order of the file.
        const AskedRow &first = list->asking().front();
        QCOMPARE(first.row.line, std::size_t(3));
        QCOMPARE(first.line, broken);
        QCOMPARE(first.faults.front().wrong, wrong.toStdString());
        QVERIFY(!first.meant);
        QCOMPARE(list->asking().at(1).row.line, std::size_t(5));
        QCOMPARE(list->asking().at(2).row.line, std::size_t(6));
        QVERIFY2(!readCsv(text, "autumn.csv"), "a file of the shop is whole or is refused");
    }
}

/// Which of the lines it was meant for, nobody knows.
void ListIsReadTest::aQuoteThatTookLinesAlongIsRefused()
{
    for (const char *rest : {"", "Z-4,plug,\"four\"\n"}) {
        const auto list = readAll("part,kind,description\nZ-1,plug,one\nZ-2,plug,\"two\n"
                                  "Z-3,plug,three\n" +
                                  std::string(rest));
        QVERIFY(!list);
        QVERIFY2(list.error().line > 0, list.error().sentence().c_str());
    }
}

void ListIsReadTest::whatIsNoListSaysSo_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QString>("wrong");
    QTest::newRow("a letter") << QByteArray("Dear customer,\n\nour \"new\" prices, as promised.\n")
                              << "is no list of parts, suppliers or offers";
    QTest::newRow("a letter without a comma") << QByteArray("Dear customer\nprices, as promised\n")
                                              << "is no list of parts, suppliers or offers";
    QTest::newRow("semicolons") << QByteArray("\xEF\xBB\xBF\"part\";\"kind\"\nZ-1;plug\n")
                                << "has no comma between its cells";
    QTest::newRow("only its columns")
        << QByteArray("part,kind,description\n") << "has no row below the names of its columns";
    QTest::newRow("another column") << QByteArray("part,colour\nZ-1,red\n")
                                    << "has a column \"colour\", which no list here has";
    QTest::newRow("nothing") << QByteArray("\n") << "the file is empty";
    QTest::newRow("UTF-16") << QByteArray("\xFF\xFEp") << "the text is UTF-16";
}

void ListIsReadTest::whatIsNoListSaysSo()
{
    QFETCH(QByteArray, text);
    QFETCH(QString, wrong);
    const auto list = readAll(text.toStdString());
    QVERIFY(!list);
    QCOMPARE(QString::fromStdString(list.error().wrong), wrong);
}

void ListIsReadTest::enterDropsNothing_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("drops");
    const auto row = [](const char *name, const char *text, bool drops) {
        QTest::newRow(name) << text << drops;
    };
    row("a currency that is none", "supplier,name,currency\nQQQ,one,ZZZ\n", true);
    row("a pack in words", "part,supplier,currency,pack,prices\nAD-6-8,NHT,USD,dozen,1: 5.00\n",
        true);
    row("an unknown thread", "part,kind,description,ports\nZ-1,adapter,x,a: XYZ 6 male\n", true);
    row("one thing less in the box", "part,kind,description,box\nZ-1,adapter,x,AD-6-8; NO-SUCH-1\n",
        true);
    row("a letter off", "part,kind,description\nZ-1,adaptor,x\n", false);
    row("a comma for a point", "part,kind,description,rated\nZ-1,adapter,x,\"34,5 bar\"\n", false);
}

/// What is left out of a row is told apart from what is read otherwise.
void ListIsReadTest::enterDropsNothing()
{
    QFETCH(QString, text);
    QFETCH(bool, drops);
    const auto list = readAll(text.toStdString());
    QVERIFY2(list, list ? "" : list.error().sentence().c_str());
    QCOMPARE(list->asking().size(), std::size_t(1));
    QVERIFY(list->asking().front().meant);
    QCOMPARE(list->asking().front().meant->leavesOut(), drops);
}

QTEST_APPLESS_MAIN(ListIsReadTest)
#include "tst_list_is_read_row_by_row.moc"
