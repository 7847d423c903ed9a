// SPDX-License-Identifier: MIT
//
// Conditions: what they say of answers, and where a wrong one is wrong. The grammar is our own, so
// the expected results are written out by hand.

#include "model/systems/condition.h"

#include <QTest>

using namespace flarestock;

class ConditionReadingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void saysWhetherItHolds_data();
    void saysWhetherItHolds();
    void pointsAtWhatIsWrong_data();
    void pointsAtWhatIsWrong();
    void printsWhatItReads_data() { saysWhetherItHolds_data(); }
    void printsWhatItReads();
    void agreesWithTruthTables();
    void mentionsEachQuestionOnce();
    void refusesDeepNestingWithoutFallingOver();
};

void ConditionReadingTest::saysWhetherItHolds_data()
{
    QTest::addColumn<QString>("condition");
    QTest::addColumn<bool>("holds");
    const auto row = [](const char *condition, bool holds) {
        QTest::newRow(condition) << QString::fromUtf8(condition) << holds;
    };
    // Answers: see saysWhetherItHolds().
    row("", true);
    row("   ", true);
    row("fluid is E85", true);
    row("fluid is e85", true);
    row("FLUID IS E85", true);
    row("fluid is gasoline", false);
    row("fluid is not gasoline", true);
    row("fluid is not E85", false);
    row("fluid is one of gasoline, E85", true);
    row("fluid is one of gasoline, methanol", false);
    row("tank is saddle tank", true);
    row("tank is one of cell, saddle tank", true);
    row("tank is saddle", false);
    row("power above 500 hp", true);
    row("power above 600 hp", false);
    row("power below 600 hp", false);
    row("power at least 600 hp", true);
    row("power at most 600 hp", true);
    row("power at least 601 hp", false);
    row("power at least 447 kW", true); // 600 hp = 447.42 kW (550 ft lbf/s, NIST SP 811)
    row("power at least 448 kW", false);
    row("power is 600 hp", true);
    row("power is 600.0 hp", true);
    row("rail is 300 kPa", true); // answered as 3 bar
    row("rail above 300 kPa", false);
    row("rail at least 300 kPa", true);
    row("injectors above 7", true);
    row("injectors at most 7", false);
    row("power above 2 m", false); // another dimension never holds; a template refuses it
    row("gauge is yes", true);
    row("not gauge is yes", false);
    row("not (gauge is yes)", false);
    row("not not gauge is yes", true);
    row("not gauge is yes or gauge is yes", true);
    row("not (gauge is yes or fluid is E85)", false);
    row("fluid is gasoline and gauge is yes or gauge is yes", true);
    row("gauge is yes or fluid is gasoline and fluid is methanol", true);
    row("(gauge is yes or fluid is gasoline) and fluid is methanol", false);
    row("fluid is E85 and power above 500 hp and gauge is yes", true);
    row("fluid is E85 and power above 500 hp and gauge is no", false);
    row("nut is 'nuts and sleeves'", true);
    row("nut is one of 'nuts, bolts', 'nuts and sleeves'", true);
    row("nut is 'o''clock'", false);
    row("nut is 'or'", false);
    row("fluid is 'not'", false);
    row("tank is saddle 'bolted\t\tto the floor'", false); // blanks inside quotes are kept
    row("((((fluid is E85))))", true);
}

static const Answers TheAnswers = {
    {"fluid", "E85"},   {"tank", "saddle tank"}, {"power", "600 hp"},         {"rail", "3 bar"},
    {"injectors", "8"}, {"gauge", "yes"},        {"nut", "nuts and sleeves"},
};

void ConditionReadingTest::saysWhetherItHolds()
{
    QFETCH(QString, condition);
    QFETCH(bool, holds);
    const auto read = Condition::parse(condition.toStdString());
    QVERIFY2(read.has_value(), read ? "" : read.error().sentence().c_str());
    QCOMPARE(read->holds(TheAnswers), holds);
}

void ConditionReadingTest::printsWhatItReads()
{
    QFETCH(QString, condition);
    QFETCH(bool, holds);
    const auto read = Condition::parse(condition.toStdString());
    QVERIFY(read.has_value());
    const auto again = Condition::parse(read->text());
    QVERIFY2(again.has_value(), read->text().c_str());
    QCOMPARE(again->text(), read->text());
    QCOMPARE(again->holds(TheAnswers), holds);
}

void ConditionReadingTest::pointsAtWhatIsWrong_data()
{
    QTest::addColumn<QString>("condition");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *condition, unsigned column, const char *words) {
        QTest::newRow(condition) << QString::fromUtf8(condition) << column << words;
    };
    row("fluid", 6, "no comparison follows");
    row("fluid E85", 7, "no comparison follows");
    row("fluid = E85", 7, "no comparison follows");
    row("fluid is", 9, "a value is wanted");
    row("fluid is and power above 5 hp", 10, "a value is wanted");
    row("fluid is E85 and", 17, "a question is wanted");
    row("fluid is E85 or or", 17, "a question is wanted");
    row("and fluid is E85", 1, "a question is wanted");
    row("(fluid is E85", 14, "a parenthesis is not closed");
    row("fluid is E85)", 13, "closes nothing");
    row("fluid is E85 (power above 5 hp)", 14, "does not belong here");
    row("fluid is E85, gasoline", 13, "does not belong here");
    row("fluid is one of", 16, "a value is wanted");
    row("fluid is one of E85,", 21, "a value is wanted");
    row("fluid is one of E85,, gasoline", 21, "a value is wanted");
    row("power above", 12, "a value is wanted");
    row("power above much", 13, "is no measure");
    row("power above 500 horses", 13, "is no measure");
    row("power at 500 hp", 7, "no comparison follows");
    row("fluid is 'E85", 10, "does not end");
    row("'fluid' is E85", 1, "a question is wanted");
    row("µ is E85", 1, "a question is wanted");
    row("fluid is µ )", 12, "closes nothing"); // columns count characters, not bytes
    row("()", 2, "a question is wanted");
    row("not", 4, "a question is wanted");
    row("fluid is E85 and (power above 5 hp or)", 38, "a question is wanted");
}

void ConditionReadingTest::pointsAtWhatIsWrong()
{
    QFETCH(QString, condition);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const auto read = Condition::parse(condition.toStdString());
    QVERIFY(!read.has_value());
    QVERIFY2(read.error().sentence().find(words.toStdString()) != std::string::npos,
             read.error().sentence().c_str());
    QCOMPARE(read.error().column, column);
    QCOMPARE(read.error().line, 0U);
}

/// Every assignment of three yes/no questions against C++'s own operators.
void ConditionReadingTest::agreesWithTruthTables()
{
    int swept = 0;
    for (int bits = 0; bits < 8; ++bits) {
        const bool a = (bits & 1) != 0;
        const bool b = (bits & 2) != 0;
        const bool c = (bits & 4) != 0;
        const auto word = [](bool yes) { return std::string(yes ? "yes" : "no"); };
        const Answers answers = {{"a", word(a)}, {"b", word(b)}, {"c", word(c)}};
        const auto check = [&](const char *text, bool expected) {
            const auto read = Condition::parse(text);
            QVERIFY(read.has_value());
            QCOMPARE(read->holds(answers), expected);
            ++swept;
        };
        check("a is yes and b is yes or c is yes", (a && b) || c);
        check("a is yes or b is yes and c is yes", a || (b && c));
        check("not a is yes and b is yes", !a && b);
        check("not (a is yes and b is yes)", !(a && b));
        check("(a is yes or b is yes) and not c is yes", (a || b) && !c);
        check("not (not a is yes or not (b is yes and c is no))", a && b && !c);
    }
    QCOMPARE(swept, 48);
}

void ConditionReadingTest::mentionsEachQuestionOnce()
{
    const auto read =
        Condition::parse("fluid is E85 and (power above 5 hp or fluid is one of a, b c)");
    QVERIFY(read.has_value());
    const auto mentions = read->mentions();
    QCOMPARE(mentions.size(), std::size_t{2});
    QCOMPARE(mentions[0].question, std::string("fluid"));
    QCOMPARE(mentions[0].column, 1U);
    QCOMPARE(mentions[0].values, (std::vector<std::string>{"E85", "a", "b c"}));
    QCOMPARE(mentions[0].valueColumns, (std::vector<std::uint32_t>{10, 55, 58}));
    QVERIFY(!mentions[0].measured);
    QCOMPARE(mentions[1].question, std::string("power"));
    QCOMPARE(mentions[1].column, 19U);
    QVERIFY(mentions[1].measured);
}

void ConditionReadingTest::refusesDeepNestingWithoutFallingOver()
{
    const auto repeated = [](const char *text, int times) {
        std::string all;
        for (int i = 0; i < times; ++i)
            all += text;
        return all;
    };
    QVERIFY(Condition::parse(repeated("(", 60) + "a is b" + repeated(")", 60)).has_value());
    for (const std::string &deep :
         {repeated("(", 1'000'000), repeated("not ", 1'000'000) + "a is b",
          repeated("(", 10'000) + "a is b" + repeated(")", 10'000)}) {
        const auto read = Condition::parse(deep);
        QVERIFY(!read.has_value());
        QVERIFY(read.error().wrong.find("nested more than 64 deep") != std::string::npos);
    }
    // Long is not deep.
    QVERIFY(Condition::parse(repeated("a is b or ", 100'000) + "a is c").has_value());
}

QTEST_APPLESS_MAIN(ConditionReadingTest)
#include "tst_conditions_read_as_written.moc"
