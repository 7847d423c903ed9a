// SPDX-License-Identifier: MIT
//
// Questions whose default is worked out: they read as written, and every mistake in one is named
// with its line and column. Each row changes one line of a good template; the expected column is
// counted by hand in that line.

#include "model/exchange/template_toml.h"

#include <QTest>

using namespace flarestock;

class WorkedOutAnswersTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void goodOneReads();
    void isNamedWithItsPlace_data();
    void isNamedWithItsPlace();
};

static const std::vector<std::string> Good = {
    /* 1 */ "id = \"fuel-1\"",
    /* 2 */ "title = \"Fuel\"",
    /* 3 */ "system = \"fuel\"",
    /* 4 */ "fluid = \"gasoline\"",
    /* 5 */ "[[question]]",
    /* 6 */ "id = \"power\"",
    /* 7 */ "title = \"power\"",
    /* 8 */ "form = \"measure\"",
    /* 9 */ "dimension = \"power\"",
    /* 10 */ "default = \"450 hp\"",
    /* 11 */ "[[question]]",
    /* 12 */ "id = \"flow\"",
    /* 13 */ "title = \"fuel flow\"",
    /* 14 */ "form = \"measure\"",
    /* 15 */ "dimension = \"flow\"",
    /* 16 */ "worked-out = \"fuel demand\"",
    /* 17 */ "feed = \"gravity\"",
    /* 18 */ "shared-by = 2",
    /* 19 */ "default = \"200 L/h\"",
    /* 20 */ "[[question]]",
    /* 21 */ "id = \"size\"",
    /* 22 */ "title = \"pressure line size\"",
    /* 23 */ "form = \"dash\"",
    /* 24 */ "choices = [\"-6\", \"-8\", \"-10\"]",
    /* 25 */ "worked-out = \"line size\"",
    /* 26 */ "line = \"before regulator\"",
    /* 27 */ "delivery = \"carburettor\"",
    /* 28 */ "set-pressure = \"7 psi\"",
    /* 29 */ "flow = \"{flow}\"",
    /* 30 */ "pumps = [\"pump\"]",
    /* 31 */ "lengths = [\"10 ft\", [ { when = \"power above 500 hp\", is = \"2 ft\" } ]]",
    /* 32 */ "other-loss = \"9 kPa\"",
    /* 33 */ "construction = \"PT\"",
    /* 34 */ "rise = \"-8 in\"",
    /* 35 */ "default = \"-8\"",
    /* 36 */ "[[question]]",
    /* 37 */ "id = \"pressure\"",
    /* 38 */ "title = \"pressure at the pump\"",
    /* 39 */ "form = \"measure\"",
    /* 40 */ "dimension = \"pressure\"",
    /* 41 */ "worked-out = \"pump pressure\"",
    /* 42 */ "delivery = \"injection\"",
    /* 43 */ "set-pressure = \"43.5 psi\"",
    /* 44 */ "default = \"50 psi\"",
    /* 45 */ "[[question]]",
    /* 46 */ "id = \"return\"",
    /* 47 */ "title = \"return line size\"",
    /* 48 */ "form = \"dash\"",
    /* 49 */ "default = \"-6\"",
    /* 50 */ "[[station]]",
    /* 51 */ "id = \"pump\"",
    /* 52 */ "title = \"pump\"",
    /* 53 */ "kind = \"pump\"",
    /* 54 */ "level = \"suction\"",
    /* 55 */ "[[station]]",
    /* 56 */ "id = \"engine\"",
    /* 57 */ "title = \"engine\"",
    /* 58 */ "kind = \"engine\"",
    /* 59 */ "level = \"pressure\"",
    /* 60 */ "[[run]]",
    /* 61 */ "id = \"feed\"",
    /* 62 */ "level = \"pressure\"",
    /* 63 */ "from = \"pump.out\"",
    /* 64 */ "to = \"engine.in\"",
    /* 65 */ "length = \"10 ft\"",
    /* 66 */ "dash = \"{size}\"",
};

static std::string joined(const std::vector<std::string> &lines)
{
    std::string text;
    for (const std::string &line : lines)
        text += line + "\n";
    return text;
}

void WorkedOutAnswersTest::goodOneReads()
{
    const auto read = readTemplate(joined(Good), "t.toml");
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    const Template &form = **read;
    QCOMPARE(form.questions.size(), std::size_t{5});
    const WorkedDefault &flow = *form.questions[1].workedOut;
    QCOMPARE(flow.by, WorkedDefault::By::FuelDemand);
    QCOMPARE(flow.feed, Feed::Gravity);
    QCOMPARE(flow.sharedBy, 2);
    const Question &size = form.questions[2];
    QVERIFY(size.isDash && size.form == Question::Form::Choice);
    QCOMPARE(size.choices, (std::vector<std::string>{"-6", "-8", "-10"}));
    QCOMPARE(size.workedOut->line, WorkedDefault::Line::BeforeRegulator);
    QCOMPARE(size.workedOut->delivery, FuelSystem::Carburettor);
    QCOMPARE(size.workedOut->pumps, std::vector<std::string>{"pump"});
    QCOMPARE(size.workedOut->lengths.size(), std::size_t{2});
    QCOMPARE(size.workedOut->lengths[1].with({{"power", "501 hp"}}),
             std::optional<std::string>("2 ft"));
    QVERIFY(!size.workedOut->lengths[1].with({{"power", "500 hp"}}));
    QCOMPARE(form.questions[3].workedOut->by, WorkedDefault::By::PumpPressure);
    QCOMPARE(form.questions[3].workedOut->delivery, FuelSystem::Injection);
    const Question &back = form.questions[4];
    QVERIFY(!back.workedOut && back.isDash);
    QCOMPARE(back.choices, (std::vector<std::string>{"-4", "-6", "-8", "-10", "-12", "-16"}));
}

void WorkedOutAnswersTest::isNamedWithItsPlace_data()
{
    QTest::addColumn<unsigned>("line");
    QTest::addColumn<QString>("changed");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](unsigned line, const char *changed, unsigned column, const char *words) {
        QTest::addRow("%u %s", line, changed)
            << line << QString::fromUtf8(changed) << column << QString::fromUtf8(words);
    };
    row(6, "id = \"watts\"", 14, "a fuel demand goes by the power");
    row(15, "dimension = \"pressure\"", 11, "the default \"200 L/h\"");
    row(16, "worked-out = \"fuel demnd\"", 14, "Perhaps \"fuel demand\" is meant.");
    row(16, "worked-out = \"\"", 14, "\"worked-out\" is empty");
    row(16, "worked-out = 3", 14, "\"worked-out\" is a whole number, not a text");
    row(16, "worked-out = \"line size\"", 8, "a line size has no \"feed\"");
    row(16, "# not worked out", 8, "\"feed\" is only for what is worked out");
    row(17, "feed = \"gravty\"", 8, "Perhaps \"gravity\" is meant.");
    row(17, "line = \"suction\"", 8, "a fuel demand has no \"line\"");
    row(18, "shared-by = 17", 13, "not from 0 to 16");
    row(18, "sharedby = 2", 1, "a question has no \"sharedby\"");
    row(23, "form = \"dach\"", 8, "Perhaps \"dash\" is meant.");
    row(23, "form = \"choice\"", 14, "a line size is a dash size");
    row(24, "choices = [\"-6\", \"8\"]", 11, "\"8\" is no dash size");
    row(24, "choices = [\"-8\", \"-6\"]", 11, "the sizes do not rise at -6");
    row(24, "least = \"-4\"", 9, "a question of this form has no \"least\"");
    row(26, "line = \"before pump\"", 8, "is not a word for \"line\"");
    row(27, "# delivery is left out", 1, "this question has no \"delivery\"");
    row(27, "delivery = \"injektion\"", 12, "Perhaps \"injection\" is meant.");
    row(28, "set-pressure = \"7 m\"", 16, "\"7 m\"");
    row(29, "# flow is left out", 1, "this question has no \"flow\"");
    row(29, "flow = \"{power}\"", 8, "with the answer \"450 hp\" to \"power\"");
    row(29, "flow = \"{size}\"", 10, "there is no question \"size\" here");
    row(30, "pumps = [\"pmp\"]", 9, "has no station \"pmp\". Perhaps \"pump\" is meant.");
    row(30, "pumps = [\"engine\"]", 9, "the station \"engine\" has no pump");
    row(30, "pumps = [\"filters/pump\"]", 9, "has no module \"filters\"");
    row(30, "pumps = \"pump\"", 9, "\"pumps\" is a text, not a list");
    row(30, "pumps-apart = \"yes\"", 15, "\"pumps-apart\" is a text, not true or false");
    row(31, "lengths = []", 11, "\"lengths\" is empty");
    row(31, "lengths = \"10 ft\"", 11, "\"lengths\" is a text, not a list");
    row(31, "lengths = [\"10 psi\"]", 12, "\"10 psi\" is no length");
    row(31, "# lengths are left out", 1, "this question has no \"lengths\"");
    row(32, "other-loss = \"9 L/h\"", 14, "\"9 L/h\"");
    row(34, "rise = \"8 psi\"", 8, "\"8 psi\" is no rise");
    row(35, "default = \"-12\"", 11, "is none of its answers");
    row(40, "dimension = \"length\"", 11, "the default \"50 psi\"");
    row(43, "# nothing is set", 1, "this question has no \"set-pressure\"");
    row(43, "set-pressure = \"43.5 psi\"\nlengths = [\"1 ft\"]", 11,
        "a pump pressure has no \"lengths\"");
}

void WorkedOutAnswersTest::isNamedWithItsPlace()
{
    QFETCH(unsigned, line);
    QFETCH(QString, changed);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    auto lines = Good;
    lines.at(line - 1) = changed.toStdString();
    const auto read = readTemplates({{"templates/t.toml", joined(lines)}});
    QVERIFY(!read.has_value());
    const Problem &said = read.error();
    QVERIFY2(said.sentence().find(words.toStdString()) != std::string::npos, said.text().c_str());
    // What is missing is named at its table, what lost its partner at the partner.
    const unsigned expectedLine = changed.startsWith(QStringLiteral("id = \"watts"))          ? 16
                                  : changed.startsWith(QStringLiteral("dimension = \"pres"))  ? 19
                                  : changed.startsWith(QStringLiteral("dimension = \"leng"))  ? 44
                                  : changed.startsWith(QStringLiteral("worked-out = \"line")) ? 17
                                  : changed.startsWith(QStringLiteral("form = \"choice"))     ? 25
                                  : changed.startsWith(QStringLiteral("# not worked"))        ? 17
                                  : changed.startsWith(QStringLiteral("# nothing is set"))    ? 36
                                  : changed.startsWith(QLatin1Char('#'))                      ? 20
                                  : changed.contains(QStringLiteral("\nlengths"))             ? 44
                                                                                  : line;
    QVERIFY2(said.line == expectedLine && said.column == column, said.text().c_str());
    QVERIFY(!said.excerpt.empty());
    QVERIFY2(!said.remedy.empty(), said.text().c_str());
}

QTEST_APPLESS_MAIN(WorkedOutAnswersTest)
#include "tst_worked_out_answers_are_read.moc"
