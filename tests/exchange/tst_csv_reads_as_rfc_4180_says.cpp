// SPDX-License-Identifier: MIT
//
// CSV as RFC 4180 writes it, clause by clause (section 2, rules 1 to 7), what the reader refuses,
// and a generated corpus against Python's csv module in strict mode.

#include "model/exchange/csv.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <cstdlib>
#include <fstream>
#include <random>

using namespace flarestock;
using Rows = std::vector<std::vector<std::string>>;

class CsvReadingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWhatTheStandardDescribes_data();
    void readsWhatTheStandardDescribes();
    void refusesWhatIsBroken_data();
    void refusesWhatIsBroken();
    void refusesAMillionAndOneFields();
    void findsColumnsWhateverTheirCase();
    void pointsIntoACell();
    void agreesWithPython();
};

static Rows rowsOf(const CsvTable &table)
{
    Rows rows(1);
    for (const CsvField &field : table.header())
        rows[0].emplace_back(field.text);
    for (std::size_t i = 0; i < table.recordCount(); ++i) {
        rows.emplace_back();
        for (const CsvField &field : table.record(i))
            rows.back().emplace_back(field.text);
    }
    return rows;
}

Q_DECLARE_METATYPE(Rows)

void CsvReadingTest::readsWhatTheStandardDescribes_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<Rows>("rows");
    const auto row = [](const char *clause, const char *text, const Rows &rows) {
        QTest::newRow(clause) << QByteArray(text) << rows;
    };
    row("rule 1: each record on a line, ended by CRLF", "a,b,c\r\nd,e,f\r\n",
        {{"a", "b", "c"}, {"d", "e", "f"}});
    row("rule 2: the last record may lack a line end", "a,b,c\r\nd,e,f",
        {{"a", "b", "c"}, {"d", "e", "f"}});
    row("rule 3: a header of the same form", "h1,h2\r\n1,2\r\n", {{"h1", "h2"}, {"1", "2"}});
    row("rule 4: blanks are part of a field", "a,b\r\n 1 , 2\r\n", {{"a", "b"}, {" 1 ", " 2"}});
    row("rule 4: empty fields", "a,b,c\r\n,,\r\n", {{"a", "b", "c"}, {"", "", ""}});
    row("rule 5: quotes around a field or not", "a,b\r\n\"1\",2\r\n", {{"a", "b"}, {"1", "2"}});
    row("rule 5: an empty field in quotes", "a,b\r\n\"\",2\r\n", {{"a", "b"}, {"", "2"}});
    row("rule 6: a comma in quotes", "a,b\r\n\"1,5\",2\r\n", {{"a", "b"}, {"1,5", "2"}});
    row("rule 6: a line end in quotes", "a,b\r\n\"1\r\n5\",2\r\n", {{"a", "b"}, {"1\r\n5", "2"}});
    row("rule 6: a lone CR in quotes", "a,b\n\"1\r5\",2\n", {{"a", "b"}, {"1\r5", "2"}});
    row("rule 7: a quote written twice", "a,b\r\n\"3/8\"\" hose\",2\r\n",
        {{"a", "b"}, {"3/8\" hose", "2"}});
    row("rule 7: nothing but quotes", "a,b\r\n\"\"\"\"\"\",2\r\n", {{"a", "b"}, {"\"\"", "2"}});
    row("LF as spreadsheets on Unix write it", "a,b\n1,2\n", {{"a", "b"}, {"1", "2"}});
    row("CRLF and LF mixed", "a,b\r\n1,2\n3,4\r\n", {{"a", "b"}, {"1", "2"}, {"3", "4"}});
    row("a byte-order mark",
        "\xEF\xBB\xBF"
        "a,b\r\n1,2\r\n",
        {{"a", "b"}, {"1", "2"}});
    row("a byte-order mark before a quote", "\xEF\xBB\xBF\"a\",b\r\n1,2\r\n",
        {{"a", "b"}, {"1", "2"}});
    row("empty lines", "\r\na,b\n\n\r\n1,2\n\n", {{"a", "b"}, {"1", "2"}});
    row("UTF-8", "a,b\r\n10 µm,90°\r\n", {{"a", "b"}, {"10 µm", "90°"}});
    row("one column", "a\r\n1\r\n\"\"\r\n", {{"a"}, {"1"}, {""}});
    row("a comma at the very end", "a,b\r\n1,", {{"a", "b"}, {"1", ""}});
    row("a quote closed at the very end", "a,b\r\n1,\"2\"", {{"a", "b"}, {"1", "2"}});
    row("JSON in a cell", "k,v\n1,\"{\"\"type\"\": \"\"Point\"\"}\"\n",
        {{"k", "v"}, {"1", "{\"type\": \"Point\"}"}});
}

void CsvReadingTest::readsWhatTheStandardDescribes()
{
    QFETCH(QByteArray, text);
    QFETCH(Rows, rows);
    const std::string whole = text.toStdString();
    const auto table = readCsv(whole, "a.csv");
    QVERIFY2(table.has_value(), table ? "" : table.error().text().c_str());
    QCOMPARE(rowsOf(*table), rows);
}

void CsvReadingTest::refusesWhatIsBroken_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<unsigned>("line");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *name, const QByteArray &text, std::pair<unsigned, unsigned> at,
                        const char *words) {
        QTest::newRow(name) << text << at.first << at.second << words;
    };
    row("nothing", "", {1, 1}, "the file is empty");
    row("blanks only", "  ", {1, 1}, "the file is empty");
    row("empty lines only", "\r\n\n", {1, 1}, "the file is empty");
    row("a mark only", "\xEF\xBB\xBF", {1, 1}, "the file is empty");
    row("an endless quote", "a,b\n1,\"2\n3,4\n", {2, 3}, "does not end");
    row("an endless quote at the end", "a,b\n1,\"", {2, 3}, "does not end");
    row("text after a closing quote", "a,b\n\"1\"x,2\n", {2, 4}, "text after the closing quote");
    row("a blank after a closing quote", "a,b\n\"1\" ,2\n", {2, 4}, "text after the closing quote");
    row("a quote inside a plain field", "a,b\n3/8\" hose,2\n", {2, 4}, "a quote inside a field");
    row("a blank before a quote", "a,b\n1, \"2\"\n", {2, 4}, "a quote inside a field");
    row("a carriage return alone", "a,b\n1\r2,3\n", {2, 2}, "a carriage return ends no line");
    row("lines ended by CR only", "a,b\r1,2\r", {1, 4}, "a carriage return ends no line");
    row("too few fields", "a,b,c\n1,2\n", {2, 1}, "2 fields, the header 3");
    row("too many fields", "a,b\n1,2,3,4\n", {2, 5}, "4 fields, the header 2");
    row("too many after a cell of two lines", "a,b\n\"1\nx\",2,3\n", {3, 6}, "3 fields");
    row("a heading twice", "part,kind,Part\n1,2,3\n", {1, 11}, "stands twice");
    row("NUL", QByteArray("a,b\n1,\0\n", 8), {2, 3}, "NUL");
    row("Latin-1", "a,b\n10 \xB5m,2\n", {2, 4}, "not UTF-8");
    row("a cut sequence", "a,b\n1,\xE2\x82", {2, 3}, "not UTF-8");
    row("an overlong slash", "a,b\n\xC0\xAF,2\n", {2, 1}, "not UTF-8");
    row("a surrogate", "a,b\n\xED\xA0\x80,2\n", {2, 1}, "not UTF-8");
    row("beyond U+10FFFF", "a,b\n\xF4\x90\x80\x80,2\n", {2, 1}, "not UTF-8");
    row("UTF-16, little end first",
        QByteArray("\xFF\xFE"
                   "a\0,\0",
                   6),
        {1, 1}, "UTF-16");
    row("UTF-16, big end first", QByteArray("\xFE\xFF\0a\0,", 6), {1, 1}, "UTF-16");
    row("a column counted in characters", "a,b\nµµ,\"2\"x\n", {2, 7}, "text after");
}

void CsvReadingTest::refusesWhatIsBroken()
{
    QFETCH(QByteArray, text);
    QFETCH(unsigned, line);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const std::string whole = text.toStdString();
    const auto table = readCsv(whole, "a.csv");
    QVERIFY(!table.has_value());
    const Problem &said = table.error();
    QVERIFY2(said.wrong.find(words.toStdString()) != std::string::npos, said.sentence().c_str());
    QCOMPARE(std::pair(said.line, said.column), std::pair(line, column));
    QCOMPARE(said.thing, std::string("a.csv"));
    QVERIFY(!said.remedy.empty());
}

void CsvReadingTest::refusesAMillionAndOneFields()
{
    const std::string million(999'999, ',');
    QVERIFY(readCsv("a\n", "a.csv").has_value());
    const auto table = readCsv(million + ",\n", "a.csv");
    QVERIFY(!table.has_value());
    QVERIFY(table.error().wrong.find("1,000,000 fields") != std::string::npos);
}

void CsvReadingTest::findsColumnsWhateverTheirCase()
{
    const std::string text = "Part, Lead Days \nA,1\n";
    const auto table = readCsv(text, "a.csv");
    QVERIFY(table.has_value());
    QCOMPARE(table->column("part"), std::optional<std::size_t>(0));
    QCOMPARE(table->column("lead days"), std::optional<std::size_t>(1));
    QCOMPARE(table->column("kind"), std::optional<std::size_t>());
}

void CsvReadingTest::pointsIntoACell()
{
    const std::string text = "part,ports\nA,\"in: \"\"x\"\"; out\nmore\"\n";
    const auto table = readCsv(text, "a.csv");
    QVERIFY(table.has_value());
    const CsvField &field = table->record(0)[1];
    QCOMPARE(std::string(field.text), std::string("in: \"x\"; out\nmore"));
    const Problem out = table->at(field, {"w", ""}, field.text.find("out"));
    QCOMPARE(std::pair(out.line, out.column), std::pair(2U, 15U));
    QCOMPARE(out.excerpt, std::string("A,\"in: \"\"x\"\"; out"));
    const Problem more = table->at(field, {"w", ""}, field.text.find("more"));
    QCOMPARE(std::pair(more.line, more.column), std::pair(3U, 1U));
}

/// Files of one to eight records that RFC 4180 allows, out of the pieces that make CSV hard.
static std::vector<std::string> randomTexts(std::mt19937_64 &random, int count)
{
    const auto below = [&random](std::size_t limit) { return random() % limit; };
    const std::vector<std::string> pieces = {"a", "1.5", " ",  ",",   "\"\"", "\n", "\r\n",    "µ",
                                             ";", "'",   "\t", "x y", ":",    "-8", "\"\"\"\""};
    std::vector<std::string> texts;
    for (int file = 0; file < count; ++file) {
        const std::size_t width = 1 + below(6);
        std::string text;
        for (std::size_t record = 0, records = 2 + below(8); record < records; ++record) {
            for (std::size_t at = 0; at < width; ++at) {
                std::string field = record == 0 ? "h" + std::to_string(at) : "";
                for (std::size_t piece = below(5); piece > 0; --piece)
                    field += pieces[below(pieces.size())];
                const bool quote = field.find_first_of(",\"\r\n") != std::string::npos ||
                                   (field.empty() && width == 1) || below(3) == 0;
                text += (at > 0 ? "," : "") + (quote ? '"' + field + '"' : field);
            }
            text += below(2) == 0 ? "\n" : "\r\n";
        }
        texts.push_back(text);
    }
    return texts;
}

/// What Python's csv.reader(strict=True) reads: for each file the number of fields, then each in
/// hexadecimal ("-" where empty), a line each. Empty lines are skipped as ours are.
static QList<QByteArray> readByPython(const std::vector<std::string> &texts)
{
    const QTemporaryDir folder;
    const QString python = QStringLiteral(
        "import csv, io, sys\n"
        "for n in range(int(sys.argv[2])):\n"
        "    text = open(f'{sys.argv[1]}/{n}.csv', encoding='utf-8', newline='').read()\n"
        "    rows = [r for r in csv.reader(io.StringIO(text, newline=''), strict=True) if r]\n"
        "    print(sum(map(len, rows)))\n"
        "    for r in rows:\n"
        "        for c in r: print(c.encode().hex() or '-')\n");
    for (std::size_t n = 0; n < texts.size(); ++n)
        std::ofstream(folder.filePath(QStringLiteral("%1.csv").arg(n)).toStdString(),
                      std::ios::binary)
            << texts[n];
    QProcess run;
    run.start(QStringLiteral("/usr/bin/python3"),
              {QStringLiteral("-c"), python, folder.path(), QString::number(texts.size())});
    if (!run.waitForFinished(60'000) || run.exitCode() != 0)
        return {};
    return run.readAllStandardOutput().split('\n');
}

/// Outside: Python 3.11's csv module.
void CsvReadingTest::agreesWithPython()
{
    const char *given = std::getenv("FLARESTOCK_SEED");
    const auto seed = given ? std::strtoul(given, nullptr, 10) : std::random_device{}();
    qDebug("FLARESTOCK_SEED=%lu", static_cast<unsigned long>(seed));
    std::mt19937_64 random(seed);
    const auto texts = randomTexts(random, 500);
    const QList<QByteArray> said = readByPython(texts);
    qsizetype at = 0;
    for (const std::string &text : texts) {
        const auto table = readCsv(text, "a.csv");
        QVERIFY2(table.has_value(), (table ? text : table.error().text() + "\n" + text).c_str());
        std::vector<std::string> cells;
        for (const auto &row : rowsOf(*table))
            cells.insert(cells.end(), row.begin(), row.end());
        QVERIFY(at + static_cast<qsizetype>(cells.size()) < said.size());
        QCOMPARE(cells.size(), static_cast<std::size_t>(said[at++].toULongLong()));
        for (const std::string &cell : cells) {
            const QByteArray &theirs = said[at++];
            QCOMPARE(QByteArray::fromStdString(cell),
                     theirs == "-" ? QByteArray() : QByteArray::fromHex(theirs));
        }
    }
    QVERIFY2(at > 3000, std::to_string(at).c_str());
}

QTEST_APPLESS_MAIN(CsvReadingTest)
#include "tst_csv_reads_as_rfc_4180_says.moc"
