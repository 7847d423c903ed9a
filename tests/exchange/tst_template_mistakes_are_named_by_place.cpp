// SPDX-License-Identifier: MIT
//
// Every mistake in a template is named with its line and column. Each row changes one line of a
// good template; the expected column is counted by hand in that line.

#include "model/exchange/template_toml.h"

#include <QTest>

using namespace flarestock;

class BrokenTemplateTest : public QObject {
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
    /* 4 */ "fluid = \"{fluid}\"",
    /* 5 */ "filters = \"around electric pump\"",
    /* 6 */ "[[question]]",
    /* 7 */ "id = \"fluid\"",
    /* 8 */ "title = \"fluid\"",
    /* 9 */ "form = \"choice\"",
    /* 10 */ "choices = [\"gasoline\", \"E85\"]",
    /* 11 */ "default = \"E85\"",
    /* 12 */ "[[question]]",
    /* 13 */ "id = \"power\"",
    /* 14 */ "title = \"power\"",
    /* 15 */ "form = \"measure\"",
    /* 16 */ "dimension = \"power\"",
    /* 17 */ "default = \"450 hp\"",
    /* 18 */ "most = \"2000 hp\"",
    /* 19 */ "when = \"fluid is E85\"",
    /* 20 */ "[[station]]",
    /* 21 */ "id = \"cell\"",
    /* 22 */ "title = \"cell\"",
    /* 23 */ "kind = \"tank\"",
    /* 24 */ "level = \"suction\"",
    /* 25 */ "[[station]]",
    /* 26 */ "id = \"filter\"",
    /* 27 */ "title = \"filter\"",
    /* 28 */ "kind = \"filter\"",
    /* 29 */ "level = \"suction\"",
    /* 30 */ "micron = \"75 to 150\"",
    /* 31 */ "when = \"power above 500 hp and fluid is E85\"",
    /* 32 */ "[[run]]",
    /* 33 */ "id = \"supply\"",
    /* 34 */ "level = \"suction\"",
    /* 35 */ "from = \"cell.out\"",
    /* 36 */ "to = \"filter.in\"",
    /* 37 */ "length = \"5 ft 6 in\"",
    /* 38 */ "dash = [ { when = \"power above 500 hp\", is = \"-10\" }, { is = \"-8\" } ]",
    /* 39 */ "clamps-each = 300",
    /* 40 */ "[[extra]]",
    /* 41 */ "part = \"TL-37\"",
    /* 42 */ "count = 1",
    /* 43 */ "why = \"37° nuts\"",
};

static std::string joined(const std::vector<std::string> &lines)
{
    std::string text;
    for (const std::string &line : lines)
        text += line + "\n";
    return text;
}

void BrokenTemplateTest::goodOneReads()
{
    const auto read = readTemplate(joined(Good), "t.toml");
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    const Template &form = **read;
    QCOMPARE(form.fluidQuestion, std::string("fluid"));
    QCOMPARE(form.filters, FilterRule::AroundElectricPump);
    QCOMPARE(form.questions.size(), std::size_t{2});
    QCOMPARE(form.stations[1].demand.kind, Kind::Filter);
    QVERIFY(form.stations[1].bracketed);
    QCOMPARE(form.runs[0].from.port, std::string("out"));
    QCOMPARE(form.runs[0].clampsEach, 300);
    QCOMPARE(form.runs[0].dash.with({{"power", "501 hp"}}), std::optional<std::string>("-10"));
    QCOMPARE(form.runs[0].dash.with({{"power", "500 hp"}}), std::optional<std::string>("-8"));
}

void BrokenTemplateTest::isNamedWithItsPlace_data()
{
    QTest::addColumn<unsigned>("line");
    QTest::addColumn<QString>("changed");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](unsigned line, const char *changed, unsigned column, const char *words) {
        QTest::newRow(changed) << line << QString::fromUtf8(changed) << column
                               << QString::fromUtf8(words);
    };
    row(1, "id = \"fuel-1", 13, "a quote on this line is not closed. A text stands between two");
    row(1, "id = fuel-1\"", 7, "a quote on this line is not closed");
    row(1, "id = \"\"\"fuel-1", 6, "the three quotes that begin here are not closed");
    row(1, "id = ['fuel-1]", 15, "a quote on this line is not closed");
    row(1, "id == \"fuel-1\"", 5, "this is not TOML");
    row(1, "id = \"Fuel 1\"", 6, "lower case letters, digits and hyphens");
    row(1, "größe = 1", 3, "a letter beyond ASCII outside quotes");
    row(1, "id = µ", 6, "a letter beyond ASCII outside quotes");
    row(1, "id = \"\"\"a\"\"\"\"\" µ", 16, "a letter beyond ASCII outside quotes");
    row(1, "id = [oZ'Z=µ=[", 7, "not TOML"); // no string begins in a word; found by fuzzing
    row(1, "id = 'µ\\' # µ", 6, "lower case letters, digits and hyphens");
    row(1, "id = 7", 6, "\"id\" is a whole number, not a text. Put it in quotes.");
    row(2, "titel = \"Fuel\"", 1, "a template has no \"titel\". Perhaps \"title\" is meant.");
    row(3, "system = \"feul\"", 10, "Perhaps \"fuel\" is meant.");
    row(4, "fluid = \"{flud}\"", 9,
        "there is no choice \"flud\" here. Perhaps \"fluid\" is meant.");
    row(4, "fluid = \"E86\"", 9, "");
    row(5, "filters = \"round pump\"", 11, "is not a word for \"filters\"");
    row(6, "[[qestion]]", 3, "a template has no \"qestion\". Perhaps \"question\" is meant.");
    row(9, "form = \"choise\"", 8, "Perhaps \"choice\" is meant.");
    row(10, "choices = [\"gasoline\", 85]", 24, "an item of \"choices\" is a whole number");
    row(10, "choices = [\"gasoline\", \"e85\", \"E85\"]", 11, "stands twice");
    row(10, "choices = [\"gasoline\", \"E85\", \"milk\"]", 9, "\"milk\", which is no fluid");
    row(11, "default = \"E86\"", 11, "the default \"E86\" is none of its answers. Perhaps \"E85\"");
    row(13, "id = \"fluid\"", 6, "the question \"fluid\" stands twice");
    row(16, "dimension = \"powr\"", 13, "Perhaps \"power\" is meant.");
    row(17, "default = \"450\"", 11, "the default \"450\"");
    row(17, "default = \"450 psi\"", 11, "the default \"450 psi\"");
    row(17, "default = \"2500 hp\"", 11, "is above 2000 hp");
    row(18, "most = \"2 m\"", 8, "\"2 m\"");
    row(19, "when = \"fluid is E86\"", 18, "\"E86\" is none of its answers");
    row(19, "when = \"power above 5 hp\"", 9, "there is no question \"power\" here");
    row(23, "kind = \"tanc\"", 8, "\"tanc\" is no kind of part. Perhaps \"tank\" is meant.");
    row(24, "level = \"sucktion\"", 9, "Perhaps \"suction\" is meant.");
    row(26, "id = \"cell\"", 6, "the id \"cell\" is that of another station");
    row(27, "tytle = \"filter\"", 1, "a station has no \"tytle\"");
    row(30, "micron = \"150 to 75\"", 10, "no range of microns");
    row(30, "micron = 100", 10, "Put it in quotes.");
    row(30, "micron = [ { when = \"power above 5 hp\" } ]", 12, "has no \"is\"");
    row(30, "micron = [ { is = \"10\" }, { is = \"20\" } ]", 27, "never reached");
    row(30, "micron = \"{powr}\"", 12, "no question \"powr\" here. Perhaps \"power\" is meant.");
    row(30, "micron = \"{power\"", 11, "the brace that opens here does not close");
    row(30, "micron = \"{power}\"", 10, "with the answer \"450 hp\" to \"power\"");
    row(30, "flow = \"255\"", 8, "\"255\"");
    row(39, "rise = \"8 psi\"", 8, "\"8 psi\" is no rise");
    row(39, "forward = \"{fluid}\"", 11, "with the answer \"gasoline\" to \"fluid\"");
    row(30, "rated = \"10 m\"", 9, "\"10 m\"");
    row(31, "when = \"power over 500 hp\"", 15, "no comparison follows the question");
    row(31, "when = \"powr above 500 hp\"", 9, "no question \"powr\" here");
    row(31, "when = \"power above 500 hp and fluid is E86\"", 41, "\"E86\" is none of its answers");
    row(31, "when = \"fluid above 500 hp\"", 9, "the answer to \"fluid\" has no size");
    row(31, "when = \"power above 500 psi\"", 21, "\"500 psi\"");
    row(31, "when = \"\\\"\\u00b5 is\"", 9, "a question is wanted");
    row(31, "when = true", 8, "\"when\" is true or false, not a text");
    row(31, "bracketed = \"yes\"", 13, "\"bracketed\" is a text, not true or false");
    row(31, "spare-elements = -1", 18, "not from 0 to 1000");
    row(35, "from = \"cel.out\"", 8,
        "there is no station \"cel\" here. Perhaps \"cell\" is meant.");
    row(35, "from = \"cell\"", 8, "no port of a station. Write station.port.");
    row(35, "from = \"filters/pre.in\"", 8, "there is no module \"filters\" here");
    row(36, "to = \"cell.out\"", 6, "the run ends where it begins");
    row(37, "length = \"5\"", 10, "\"5\" is no length");
    row(37, "length = \"{power}\"", 10, "with the answer \"450 hp\" to \"power\"");
    row(38, "dash = \"-\"", 8, "no dash size");
    row(38, "dash = [ { when = \"power above 500 hp\", is = \"10x\" }, { is = \"-8\" } ]", 46,
        "\"10x\" is no dash size");
    row(38, "dash = [ \"-8\" ]", 10, "an alternative of \"dash\" is a text");
    row(38, "dash = []", 8, "\"dash\" is empty");
    row(38, "tubing = \"11/7\"", 10, "no tube size");
    row(38, "end-angle = \"91\"", 13, "no angle of a hose end");
    row(38, "bend = \"5\"", 8, "\"5\" is no length");
    row(38, "dash = \"-8\"\nddash = \"-8\"", 1, "a run has no \"ddash\"");
    row(42, "count = 0", 9, "the count is not a number above 0");
    row(42, "count = 0.5", 9, "a fraction stands in quotes");
    row(43, "# why is left out", 1, "this extra has no \"why\"");
    row(42, "part = \"TL-38\"", 8, "cannot redefine"); // a key twice
}

void BrokenTemplateTest::isNamedWithItsPlace()
{
    QFETCH(unsigned, line);
    QFETCH(QString, changed);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    auto lines = Good;
    lines.at(line - 1) = changed.toStdString();
    const auto read = readTemplate(joined(lines), "t.toml");
    QVERIFY(!read.has_value());
    const Problem &said = read.error();
    QVERIFY2(said.sentence().find(words.toStdString()) != std::string::npos, said.text().c_str());
    // Two rows are named elsewhere: a table at its heading, the fluid at its own line.
    const unsigned expectedLine =
        changed.startsWith(QStringLiteral("choices = [\"gasoline\", \"E85\", \"milk")) ? 4
        : changed.startsWith(QStringLiteral("# why"))                                  ? 40
        : changed.contains(QStringLiteral("\nddash"))                                  ? line + 1
                                                                                       : line;
    QVERIFY2(said.line == expectedLine && said.column == column, said.text().c_str());
    QCOMPARE(said.thing, std::string("t.toml"));
    QVERIFY(!said.excerpt.empty());
    QVERIFY2(!said.remedy.empty(), said.text().c_str());
}

QTEST_APPLESS_MAIN(BrokenTemplateTest)
#include "tst_template_mistakes_are_named_by_place.moc"
