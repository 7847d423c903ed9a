// SPDX-License-Identifier: MIT
//
// `flarestock stock`, as a shell runs it on the demo shop: the shape of its document is a contract,
// and Python's csv module compares it with the opening stock that the shop was made of.

#include "tests/command/demo_copy.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

/// Reads the document from stdin and the opening stock from the file that is named. Prints what
/// differs, then how many lines there are and how many pieces are not free.
constexpr const char *PythonCompares = R"(
import csv, json, sys
from collections import defaultdict
from decimal import Decimal
opening = defaultdict(Decimal)
with open(sys.argv[1], encoding='utf-8', newline='') as file:
    for row in csv.DictReader(file):
        key = row['part'], row['place'], row['lot'], row['condition'] or 'new'
        opening[key] += Decimal(row['quantity'])
lines = json.load(sys.stdin)['stock']
kept = Decimal(0)
for line in lines:
    key = line['part'], line['place'], line['lot'] or '', line['condition']
    free = line['onHand'] if line['condition'] in ('new', 'used and good') else '0'
    if opening.pop(key, None) != Decimal(line['onHand']):
        print(key, line['onHand'])
    if Decimal(line['free']) + Decimal(line['promised']) != Decimal(free):
        print(key, line['free'], line['promised'], 'of', line['onHand'])
    kept += Decimal(line['onHand']) - Decimal(line['free'])
for key in opening:
    print('missing:', key)
print(len(lines), kept)
)";

} // namespace

class StockCommand : public QObject {
    Q_OBJECT

private:
    DemoCopy m_demo;
    [[nodiscard]] Ran stock(Words words)
    {
        words.insert(words.begin(), {"stock", "--shop", m_demo.made()});
        return runFlarestock(words);
    }

private Q_SLOTS:
    void hasTheShapeOfTheContract();
    void isTheOpeningStockByPython();
    void findsEveryWordInEitherCase_data();
    void findsEveryWordInEitherCase();
    void isReadByAPerson();
    void leavesTheFileAsItIs();
    void refusesInOneLine();
};

void StockCommand::hasTheShapeOfTheContract()
{
    const Ran ran = stock({"--json"});
    QCOMPARE(ran.status, 0);
    QCOMPARE(ran.err, std::string());
    QCOMPARE(std::count(ran.out.begin(), ran.out.end(), '\n'), 1);
    QCOMPARE(keysOf(ran.json()).join(QLatin1Char(' ')), QStringLiteral("levels stock"));
    const QJsonArray lines = ran.json().value(QStringLiteral("stock")).toArray();
    QVERIFY(lines.size() > 400);
    bool withLot = false;
    for (const QJsonValue &one : lines) {
        const QJsonObject line = one.toObject();
        QCOMPARE(
            keysOf(line).join(QLatin1Char(' ')),
            QStringLiteral("condition forCar free lot notFree onHand part place promised unit"));
        for (const char *text :
             {"condition", "free", "onHand", "part", "place", "promised", "unit"})
            QVERIFY(line.value(QString::fromUtf8(text)).isString());
        const QJsonValue lot = line.value(QStringLiteral("lot"));
        QVERIFY(lot.isNull() || !lot.toString().isEmpty());
        withLot = withLot || !lot.isNull();
    }
    QVERIFY(withLot);
}

void StockCommand::isTheOpeningStockByPython()
{
    const std::string document = stock({"--json"}).out;
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromUtf8(PythonCompares),
                  QStringLiteral(FLARESTOCK_SOURCE_DIR "/demo-data/stock.csv")});
    QVERIFY(python.waitForStarted());
    python.write(document.data(), static_cast<qint64>(document.size()));
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(60'000));
    QByteArray said = python.readAllStandardOutput();
    said += python.readAllStandardError();
    said = said.trimmed();
    const auto counts = said.split(' ');
    QVERIFY2(counts.size() == 2, said.constData()); // Only the counts: nothing differs.
    QVERIFY(counts[0].toInt() > 400);
    QVERIFY(counts[1].toInt() > 5); // Some is to be checked, or not to be used.
}

void StockCommand::findsEveryWordInEitherCase_data()
{
    QTest::addColumn<std::string>("find");
    QTest::addColumn<bool>("some");
    QTest::newRow("a part number") << std::string("AD-8-10") << true;
    QTest::newRow("small letters") << std::string("ad-8-10") << true;
    QTest::newRow("a place") << std::string("trailer-2") << true;
    QTest::newRow("a port") << std::string("orb -8") << true;
    QTest::newRow("words in any order") << std::string("  -8   HOSE ") << true;
    QTest::newRow("a lot") << std::string("PT-8-A") << true;
    QTest::newRow("nothing like it") << std::string("orb velvet") << false;
}

void StockCommand::findsEveryWordInEitherCase()
{
    QFETCH(std::string, find);
    QFETCH(bool, some);
    const auto all = stock({"--json"}).json().value(QStringLiteral("stock")).toArray();
    const Ran ran = stock({"--find", find, "--json"});
    QCOMPARE(ran.status, 0); // Nothing found is an answer.
    const auto found = ran.json().value(QStringLiteral("stock")).toArray();
    QCOMPARE(!found.isEmpty(), some);
    QVERIFY(found.size() < all.size());
    for (const QJsonValue &line : found)
        QVERIFY(all.contains(line));
    if (find == "AD-8-10" || find == "ad-8-10")
        for (const QJsonValue &line : found)
            QCOMPARE(line.toObject().value(QStringLiteral("part")).toString(),
                     QStringLiteral("AD-8-10"));
}

void StockCommand::isReadByAPerson()
{
    const Ran ran = stock({"--find", "HE-8-90 E4"});
    QCOMPARE(ran.status, 0);
    for (const char *says :
         {"part", "place", "on hand", "free", "condition", "used and good", "2 lines\n"})
        QVERIFY2(ran.out.find(says) != std::string::npos, ran.out.c_str());
    const Ran kept = stock({"--find", "UN-10 B1"});
    QVERIFY2(kept.out.find("not to be used") != std::string::npos, kept.out.c_str());
    QCOMPARE(stock({"--find", "velvet"}).out, std::string("0 lines\n"));
}

void StockCommand::leavesTheFileAsItIs()
{
    const QByteArray before = bytesOf(m_demo.made());
    QCOMPARE(stock({}).status, 0);
    QVERIFY(bytesOf(m_demo.made()) == before);
}

void StockCommand::refusesInOneLine()
{
    const std::string none = m_demo.file("none.shop");
    const std::string letter = m_demo.file("letter");
    writeBytes(letter, QByteArray(4096, 'x'));
    const std::vector<std::pair<Words, std::string>> asked = {
        {{"stock", "--shop", none, "--json"}, none + ": is not there. "},
        {{"stock", "--shop", letter, "--json"}, letter + ": is not a shop file. "},
        {{"stock", "--shop", "postgresql://shop"}, "postgresql://shop: names no role"},
        {{"stock"}, "--shop"},
        {{"stock", "--shop", m_demo.made(), "AD-8-10"}, "AD-8-10"}};
    for (const auto &[words, says] : asked) {
        const Ran ran = runFlarestock(words);
        QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
        QVERIFY2(ran.err.find(says) != std::string::npos, ran.err.c_str());
    }
}

QTEST_APPLESS_MAIN(StockCommand)
#include "tst_stock_list_agrees_with_the_opening.moc"
