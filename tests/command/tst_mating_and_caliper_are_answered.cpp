// SPDX-License-Identifier: MIT
//
// `flarestock mate` and `flarestock identify`, from the outside. The facts are those of
// tst_ports_mate_as_their_sources_say and tst_unmarked_fitting_is_among_its_candidates, with their
// sources there; here it is the shape and the manners.

#include "run_flarestock.h"

#include <QJsonArray>
#include <QTest>

using flarestock::tests::Ran;
using flarestock::tests::runFlarestock;
using flarestock::tests::Words;

class PortCommandsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void mateHasTheKeysOfTheContract();
    void mateSaysTurnsOnlyWhereItJams();
    void mateTellsAPerson();
    void identifyAsksForThePitchThenTheSeat();
    void refusesInOneLine_data();
    void refusesInOneLine();
};

void PortCommandsTest::mateHasTheKeysOfTheContract()
{
    const Ran ran = runFlarestock({"mate", "an -6 MALE", "orb -6 female + O-Ring", "--json"});
    QCOMPARE(ran.status, 0);
    const auto said = ran.json();
    QCOMPARE(said.keys(),
             QStringList({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("needs"),
                          QStringLiteral("source"), QStringLiteral("turns"),
                          QStringLiteral("verdict"), QStringLiteral("why")}));
    QCOMPARE(said.value(QLatin1String("a")).toString(), QStringLiteral("AN -6 male"));
    QCOMPARE(said.value(QLatin1String("b")).toString(), QStringLiteral("ORB -6 female + o-ring"));
    QCOMPARE(said.value(QLatin1String("verdict")).toString(), QStringLiteral("leaks"));
    QVERIFY(said.value(QLatin1String("turns")).isNull());
    QVERIFY(said.value(QLatin1String("needs")).toArray().isEmpty());
}

void PortCommandsTest::mateSaysTurnsOnlyWhereItJams()
{
    const auto said =
        runFlarestock({"mate", "METRIC M22x1.5 male", "ORB -10 female", "--json"}).json();
    QCOMPARE(said.value(QLatin1String("verdict")).toString(), QStringLiteral("jams"));
    QVERIFY(said.value(QLatin1String("turns")).toDouble() >= 1);
    const auto needs = runFlarestock({"mate", "ORB -8 male", "ORB -8 female", "--json"}).json();
    QCOMPARE(needs.value(QLatin1String("needs")).toArray(),
             QJsonArray{QStringLiteral("o-ring AS568-908")});
}

void PortCommandsTest::mateTellsAPerson()
{
    const Ran ran = runFlarestock({"mate", "AN -6 male", "ORB -6 female"});
    QCOMPARE(ran.status, 0);
    QVERIFY(ran.out.starts_with("AN -6 male with ORB -6 female: leaks\n"));
    QVERIFY(ran.out.find("source: ") != std::string::npos);
}

void PortCommandsTest::identifyAsksForThePitchThenTheSeat()
{
    Words words{"identify", "--male", "--od", "22.1 mm", "--json"};
    auto said = runFlarestock(words).json();
    QCOMPARE(said.value(QLatin1String("ask")).toString(), QStringLiteral("pitch"));
    QVERIFY(said.value(QLatin1String("candidates")).toArray().size() > 1);
    words.insert(words.end(), {"--pitch", "14 tpi"});
    said = runFlarestock(words).json();
    QCOMPARE(said.value(QLatin1String("ask")).toString(), QStringLiteral("seat"));
    words.insert(words.end(), {"--seat", "37 deg"});
    said = runFlarestock(words).json();
    QCOMPARE(said.value(QLatin1String("ask")).toString(), QStringLiteral("none"));
    const auto candidate = said.value(QLatin1String("candidates")).toArray().at(0).toObject();
    QCOMPARE(candidate.value(QLatin1String("thread")).toString(), QStringLiteral("7/8-14"));
    QCOMPARE(candidate.value(QLatin1String("deviation")).toString(), QStringLiteral("-0.13 mm"));
    QVERIFY(
        candidate.value(QLatin1String("ports")).toArray().contains(QStringLiteral("AN -10 male")));
}

void PortCommandsTest::refusesInOneLine_data()
{
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *name, const QStringList &words) {
        QTest::newRow(name) << words;
    };
    row("no such family",
        {QStringLiteral("mate"), QStringLiteral("thing -6 male"), QStringLiteral("AN -6 male")});
    row("one port only", {QStringLiteral("mate"), QStringLiteral("AN -6 male")});
    row("unknown aid", {QStringLiteral("mate"), QStringLiteral("AN -6 male + glue"),
                        QStringLiteral("AN -6 female")});
    row("no gender", {QStringLiteral("identify"), QStringLiteral("--od"), QStringLiteral("22 mm")});
    row("bare number", {QStringLiteral("identify"), QStringLiteral("--male"),
                        QStringLiteral("--od"), QStringLiteral("22")});
    row("a male by its inside", {QStringLiteral("identify"), QStringLiteral("--male"),
                                 QStringLiteral("--id"), QStringLiteral("20 mm")});
    row("no pitch", {QStringLiteral("identify"), QStringLiteral("--male"), QStringLiteral("--od"),
                     QStringLiteral("22 mm"), QStringLiteral("--pitch"), QStringLiteral("fine")});
}

void PortCommandsTest::refusesInOneLine()
{
    QFETCH(QStringList, words);
    Words plain;
    for (const auto &word : words)
        plain.push_back(word.toStdString());
    const Ran ran = runFlarestock(plain);
    QVERIFY2(ran.refusesInOneLine(), ran.err.c_str());
}

QTEST_APPLESS_MAIN(PortCommandsTest)
#include "tst_mating_and_caliper_are_answered.moc"
