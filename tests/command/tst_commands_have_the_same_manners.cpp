// SPDX-License-Identifier: MIT
//
// What every command has in common: help, version, exit status, one line for what is wrong.

#include "run_flarestock.h"

#include <QTest>

using flarestock::tests::Ran;
using flarestock::tests::runFlarestock;
using flarestock::tests::Words;

class CommandFrameTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void helpAndVersionAreDone_data();
    void helpAndVersionAreDone();
    void aWrongWordIsRefusedInOneLine_data();
    void aWrongWordIsRefusedInOneLine();
};

void CommandFrameTest::helpAndVersionAreDone_data()
{
    QTest::addColumn<std::string>("word");
    QTest::addColumn<std::string>("says");
    QTest::newRow("what can it do?") << std::string("--help") << std::string("Usage: flarestock");
    QTest::newRow("which version?") << std::string("--version") << std::string("flarestock 0.1.0");
}

void CommandFrameTest::helpAndVersionAreDone()
{
    QFETCH(std::string, word);
    QFETCH(std::string, says);
    const Ran ran = runFlarestock({word});
    QCOMPARE(ran.status, 0);
    QVERIFY2(ran.out.find(says) != std::string::npos, ran.out.c_str());
    QCOMPARE(ran.err, std::string());
}

void CommandFrameTest::aWrongWordIsRefusedInOneLine_data()
{
    QTest::addColumn<Words>("words");
    QTest::addColumn<std::string>("names");
    QTest::newRow("no such command") << Words{"weld"} << std::string("weld: is not a command");
    QTest::newRow("no such option") << Words{"--weld"} << std::string("--weld");
    QTest::newRow("a shop without a file") << Words{"--shop"} << std::string("--shop");
}

void CommandFrameTest::aWrongWordIsRefusedInOneLine()
{
    QFETCH(Words, words);
    QFETCH(std::string, names);
    const Ran ran = runFlarestock(words);
    QVERIFY2(ran.refusesInOneLine(), ran.err.c_str());
    QVERIFY2(ran.err.find(names) != std::string::npos, ran.err.c_str());
}

QTEST_APPLESS_MAIN(CommandFrameTest)
#include "tst_commands_have_the_same_manners.moc"
