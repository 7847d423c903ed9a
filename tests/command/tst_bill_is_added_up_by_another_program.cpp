// SPDX-License-Identifier: MIT
//
// `flarestock bill`, as a shell runs it on the demo shop: the shape of its document is a contract,
// and another program adds it up.

#include "tests/command/run_flarestock.h"

#include <QJsonArray>
#include <QTemporaryDir>
#include <QTest>

#include <set>

using namespace flarestock::tests;

namespace {

/// Reads one document a line. Every line's unit cost × need must be its cost to the cent (half to
/// even), the costs must add up to the total, and need be free + short, and what is free lie
/// somewhere. Prints what is not so.
constexpr const char *PythonAdds = R"(
import json, sys
from decimal import Decimal, ROUND_HALF_EVEN
documents = lines = 0
for text in sys.stdin:
    bill = json.loads(text)
    documents += 1
    total = Decimal(0)
    short = False
    for line in bill['lines']:
        lines += 1
        need, free, lacking = (Decimal(line[key]) for key in ('need', 'free', 'short'))
        if need != free + lacking or need <= 0 or free < 0 or lacking < 0:
            print(line['part'], need, free, lacking)
        lying = [Decimal(line[key]) for key in ('got', 'here', 'inTrailer')]
        if sum(lying) != free or min(lying) < 0 or not 0 <= Decimal(line['onTheWay']) <= lacking:
            print(line['part'], free, 'lies', lying, 'and on the way', line['onTheWay'])
        short = short or lacking > 0
        if line['cost'] is None:
            if line['part'] not in bill['unpriced'] or line['unitCost'] is not None:
                print(line['part'], 'has no cost and is not named')
            continue
        cost = (Decimal(line['unitCost']) * need).quantize(Decimal('0.01'), ROUND_HALF_EVEN)
        if abs(cost - Decimal(line['cost'])) > (0 if '.' in line['unitCost']
                and len(line['unitCost'].split('.')[1]) < 10 else Decimal('0.01')):
            print(line['part'], line['unitCost'], need, line['cost'])
        total += Decimal(line['cost'])
    if total != Decimal(bill['total']):
        print(bill['template'], total, bill['total'])
    if bill['complete'] == short:
        print(bill['template'], 'complete', bill['complete'])
    if bill['stops'] != sum(1 for one in bill['findings'] if one['severity'] == 'stop'):
        print(bill['template'], 'stops', bill['stops'])
print(documents, lines)
)";

std::set<QString> keysOf(const QJsonObject &object)
{
    const QStringList keys = object.keys();
    return {keys.begin(), keys.end()};
}

std::set<QString> keys(std::initializer_list<const char *> names)
{
    std::set<QString> all;
    for (const char *name : names)
        all.insert(QString::fromUtf8(name));
    return all;
}

} // namespace

class BillCommand : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::string m_shop;
    std::vector<std::string> m_templates;

    [[nodiscard]] Ran bill(Words words) const
    {
        words.insert(words.begin(), "bill");
        words.insert(words.end(), {"--shop", m_shop});
        return runFlarestock(words);
    }

private Q_SLOTS:
    void initTestCase();
    void hasTheShapeOfTheContract();
    void isAddedUpAlikeByPython();
    void answersAndPicksAsAsked();
    void allotsNoMoreThanTheShelfHas();
    void endsWithOneWhereItIsStrict();
    void isReadByAPerson();
    void refusesWhatIsWrongInOneLine_data();
    void refusesWhatIsWrongInOneLine();
};

void BillCommand::initTestCase()
{
    m_shop = m_folder.filePath(QStringLiteral("demo.shop")).toStdString();
    QCOMPARE(runFlarestock({"demo", "--to", m_shop}).status, 0);
    const QJsonArray listed =
        bill({"--list", "--json"}).json().value(QStringLiteral("templates")).toArray();
    for (const QJsonValue &one : listed) {
        QCOMPARE(keysOf(one.toObject()), keys({"id", "title"}));
        m_templates.push_back(one.toObject().value(QStringLiteral("id")).toString().toStdString());
    }
    QVERIFY(m_templates.size() >= 12);
}

void BillCommand::hasTheShapeOfTheContract()
{
    const QJsonObject document = bill({"injection-frame-rail", "--json"}).json();
    QCOMPARE(keysOf(document),
             keys({"template", "answers", "lines", "joints", "sizes", "together", "findings",
                   "total", "currency", "complete", "stops", "unpriced"}));
    const auto each = [&](const char *list, const std::set<QString> &wanted) {
        const QJsonArray array = document.value(QString::fromUtf8(list)).toArray();
        for (const QJsonValue &one : array)
            if (keysOf(one.toObject()) != wanted)
                return false;
        return !array.isEmpty();
    };
    QVERIFY(
        each("lines", keys({"part", "description", "kind", "need", "unit", "free", "got", "here",
                            "inTrailer", "onTheWay", "short", "unitCost", "cost", "why"})));
    QVERIFY(each("joints", keys({"at", "from", "to", "through", "verdict", "short"})));
    QVERIFY(each("findings", keys({"severity", "about", "where", "text", "source", "remedy"})));
    const QJsonObject line = document.value(QStringLiteral("lines")).toArray().at(0).toObject();
    for (const char *text : {"part", "need", "free", "got", "here", "inTrailer", "onTheWay",
                             "short", "unitCost", "cost"})
        QVERIFY(line.value(QString::fromUtf8(text)).isString());
    QVERIFY(!line.value(QStringLiteral("why")).toArray().isEmpty());
    QVERIFY(document.value(QStringLiteral("total")).isString());
    QVERIFY(document.value(QStringLiteral("complete")).isBool());
    QVERIFY(document.value(QStringLiteral("stops")).isDouble());
    for (const QJsonValue &finding : document.value(QStringLiteral("findings")).toArray())
        QVERIFY(!finding.toObject().value(QStringLiteral("source")).toString().isEmpty());
}

void BillCommand::isAddedUpAlikeByPython()
{
    std::string documents;
    for (const std::string &id : m_templates)
        for (const char *preference : {"shelf", "joints", "money"})
            documents += bill({id, "--prefer", preference, "--json"}).out;
    for (const char *build : {"coupe-fuel", "single-seater-fuel", "coupe-brakes"})
        documents += bill({"--build", build, "--json"}).out;
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromUtf8(PythonAdds)});
    QVERIFY(python.waitForStarted());
    python.write(documents.data(), static_cast<qint64>(documents.size()));
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(60000));
    const QString said = QString::fromUtf8(python.readAllStandardOutput().trimmed());
    const QStringList counts = said.split(QLatin1Char(' '));
    QVERIFY2(counts.size() == 2, said.toUtf8().constData()); // Only the counts: nothing differs.
    QCOMPARE(counts[0].toInt(), static_cast<int>(m_templates.size()) * 3 + 3);
    QVERIFY(counts[1].toInt() > 800);
}

void BillCommand::answersAndPicksAsAsked()
{
    const QJsonObject document = bill({"injection-frame-rail", "--set", "power=640 hp", "--set",
                                       "fluid=gasoline", "--pick", "prefilter=PF-100-12", "--json"})
                                     .json();
    const QJsonObject answers = document.value(QStringLiteral("answers")).toObject();
    QCOMPARE(answers.value(QStringLiteral("power")).toString(), QStringLiteral("640 hp"));
    QCOMPARE(answers.value(QStringLiteral("fluid")).toString(), QStringLiteral("gasoline"));
    QVERIFY(answers.contains(QStringLiteral("rail-pressure"))); // The rest by its default.
    QVERIFY(bill({"injection-frame-rail", "--pick", "prefilter=PF-100-12"}).out.find("PF-100-12") !=
            std::string::npos);
    // A planned build brings its own answers; what is typed comes on top.
    const QJsonObject planned = bill({"--build", "coupe-fuel", "--json"}).json();
    QCOMPARE(planned.value(QStringLiteral("answers")).toObject().value(QStringLiteral("power")),
             QJsonValue(QStringLiteral("520 hp")));
    const QJsonObject changed =
        bill({"--build", "coupe-fuel", "--set", "power=530 hp", "--json"}).json();
    QCOMPARE(changed.value(QStringLiteral("answers")).toObject().value(QStringLiteral("power")),
             QJsonValue(QStringLiteral("530 hp")));
}

void BillCommand::allotsNoMoreThanTheShelfHas()
{
    std::map<QString, double> free;
    const QJsonArray stock = runFlarestock({"stock", "--shop", m_shop, "--json"})
                                 .json()
                                 .value(QStringLiteral("stock"))
                                 .toArray();
    for (const QJsonValue &one : stock)
        free[one.toObject().value(QStringLiteral("part")).toString()] +=
            one.toObject().value(QStringLiteral("free")).toString().toDouble();
    int covered = 0;
    for (const std::string &id : m_templates)
        for (const QJsonValue &value :
             bill({id, "--json"}).json().value(QStringLiteral("lines")).toArray()) {
            const QJsonObject line = value.toObject();
            const double allotted = line.value(QStringLiteral("free")).toString().toDouble();
            QVERIFY(allotted <= free[line.value(QStringLiteral("part")).toString()] + 1e-9);
            covered += allotted > 0 ? 1 : 0;
        }
    QVERIFY(covered > 100);
}

void BillCommand::endsWithOneWhereItIsStrict()
{
    QCOMPARE(bill({"--build", "coupe-fuel"}).status, 0);
    QCOMPARE(bill({"--build", "coupe-fuel", "--strict"}).status, 1);
    QCOMPARE(bill({"--build", "coupe-fuel", "--strict", "--json"}).status, 1);
    int complete = 0;
    for (const std::string &id : m_templates) {
        const QJsonObject document = bill({id, "--json"}).json();
        const bool good = document.value(QStringLiteral("complete")).toBool() &&
                          document.value(QStringLiteral("stops")).toInt() == 0;
        QCOMPARE(bill({id, "--strict"}).status, good ? 0 : 1);
        complete += good ? 1 : 0;
    }
    QVERIFY(complete > 0);
}

void BillCommand::isReadByAPerson()
{
    const Ran ran = bill({"--build", "coupe-fuel"});
    for (const char *says : {"BILL", "JOINTS", "SHORT", "FINDINGS", "unit cost", "why", "Total ",
                             "stop: ", "not a safety certificate", "depressurise"})
        QVERIFY2(ran.out.find(says) != std::string::npos, says);
    for (const char *never : {" is safe", "safe to"})
        QVERIFY2(ran.out.find(never) == std::string::npos, never);
    QVERIFY(ran.err.empty());
    QVERIFY(bill({"--list"}).out.find("injection-frame-rail") != std::string::npos);
}

void BillCommand::refusesWhatIsWrongInOneLine_data()
{
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, const QStringList &words, const char *says) {
        QTest::newRow(name) << words << QString::fromUtf8(says);
    };
    const auto w = [](const char *text) { return QString::fromUtf8(text).split(QLatin1Char('|')); };
    row("no template", {}, "takes a template or --build");
    row("both", w("coolant|--build|coupe-fuel"), "not both");
    row("an unknown template", w("rocket"), "Templates are: ");
    row("an unknown build", w("--build|rocket"), "Builds are: ");
    row("an unknown question", w("coolant|--set|colour=red"), "is no question");
    row("no such answer", w("injection-frame-rail|--set|fluid=nitro"), "Answer one of: ");
    row("a bare number", w("injection-frame-rail|--set|power=450"), "power: ");
    row("no equals sign", w("coolant|--set|power"), "equals sign");
    row("an unknown part", w("injection-frame-rail|--pick|pump=XX"), "no part of the catalogue");
    row("an unknown slot", w("injection-frame-rail|--pick|turbine=EP-460"), "no station");
    row("an unknown preference", w("coolant|--prefer|cheap"), "shelf, joints or money");
}

void BillCommand::refusesWhatIsWrongInOneLine()
{
    QFETCH(QStringList, words);
    QFETCH(QString, says);
    Words typed;
    for (const QString &word : words)
        typed.push_back(word.toStdString());
    const Ran ran = bill(typed);
    QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
    QVERIFY2(ran.err.find(says.toStdString()) != std::string::npos, ran.err.c_str());
}

QTEST_APPLESS_MAIN(BillCommand)
#include "tst_bill_is_added_up_by_another_program.moc"
