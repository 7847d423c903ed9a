// SPDX-License-Identifier: MIT

#include "tests/systems/bench.h"

#include <QTest>

using namespace flarestock;

class AnswersAreChecked : public QObject {
    Q_OBJECT

private:
    static Template form();

private Q_SLOTS:
    void keepTheirDefaults();
    void areSpeltAsTheTemplateDoes();
    void areRefused_data();
    void areRefused();
    void keepTheDefaultOfWhatIsNotAsked();
};

Template AnswersAreChecked::form()
{
    Template made;
    made.id = "fuel";
    Question yes = choice("gauge", {"yes"});
    yes.form = Question::Form::YesNo;
    Question power = measure("power", Dimension::Power, "450 hp");
    power.least = *Measure::parse("50 hp");
    power.most = *Measure::parse("1000 hp");
    Question size = choice("gauge-size", {"small", "large"});
    size.when = *Condition::parse("gauge is yes");
    made.questions = {choice("fluid", {"E85", "gasoline"}), power, yes, size};
    return made;
}

void AnswersAreChecked::keepTheirDefaults()
{
    const auto answers = completed(form(), {});
    QVERIFY(answers);
    QCOMPARE(
        *answers,
        (Answers{
            {"fluid", "E85"}, {"power", "450 hp"}, {"gauge", "yes"}, {"gauge-size", "small"}}));
}

void AnswersAreChecked::areSpeltAsTheTemplateDoes()
{
    const auto answers =
        completed(form(), {{"fluid", " GASOLINE"}, {"gauge", "No"}, {"power", " 335 kW "}});
    QVERIFY(answers);
    QCOMPARE(answers->at("fluid"), std::string("gasoline"));
    QCOMPARE(answers->at("gauge"), std::string("no"));
    QCOMPARE(answers->at("power"), std::string("335 kW")); // As typed, in the person's unit.
    QVERIFY(completed(form(), {{"power", "1000 hp"}}));    // Bounds are included.
    QVERIFY(completed(form(), {{"power", "50 hp"}}));
}

void AnswersAreChecked::areRefused_data()
{
    QTest::addColumn<QString>("question");
    QTest::addColumn<QString>("answer");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, std::array<const char *, 3> texts) {
        QTest::newRow(name) << QString::fromUtf8(texts[0]) << QString::fromUtf8(texts[1])
                            << QString::fromUtf8(texts[2]);
    };
    row("not asked", {"colour", "red", "no question"});
    row("no choice", {"fluid", "nitro", "E85, gasoline"});
    row("a bare number", {"power", "450", "no answer"});
    row("another dimension", {"power", "450 psi", "no answer"});
    row("below the least", {"power", "49 hp", "below 50 hp"});
    row("above the most", {"power", "1001 hp", "above 1000 hp"});
    row("neither yes nor no", {"gauge", "maybe", "yes, no"});
    row("empty", {"fluid", "", "no answer"});
}

void AnswersAreChecked::areRefused()
{
    QFETCH(QString, question);
    QFETCH(QString, answer);
    QFETCH(QString, says);
    const auto answers = completed(form(), {{question.toStdString(), answer.toStdString()}});
    QVERIFY(!answers);
    QCOMPARE(answers.error().thing, question.toStdString());
    QVERIFY2(answers.error().text().find(says.toStdString()) != std::string::npos,
             answers.error().text().c_str());
}

void AnswersAreChecked::keepTheDefaultOfWhatIsNotAsked()
{
    const Answers given = {{"gauge", "no"}, {"gauge-size", "large"}};
    QCOMPARE(completed(form(), given)->at("gauge-size"), std::string("small"));
    QCOMPARE(completed(form(), {{"gauge-size", "large"}})->at("gauge-size"), std::string("large"));
    // It is still read, so that a slip is not found only when the question is asked again.
    QVERIFY(!completed(form(), {{"gauge", "no"}, {"gauge-size", "hugest"}}));
}

QTEST_APPLESS_MAIN(AnswersAreChecked)
#include "tst_answers_are_checked.moc"
