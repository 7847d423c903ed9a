// SPDX-License-Identifier: MIT
//
// What only shows when all templates stand together, what is too large or too deep, and the round
// trip of builds.

#include "model/exchange/shop_toml.h"
#include "model/exchange/template_toml.h"

#include <QTest>

using namespace flarestock;

class TemplateBookTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void namesACircleByItsPath();
    void checksModulesAgainstTheirTemplates_data();
    void checksModulesAgainstTheirTemplates();
    void refusesWhatIsTooLargeOrTooDeep();
    void writesBuildsThatReadTheSame();
    void refusesBrokenBuilds_data();
    void refusesBrokenBuilds();
    void refusesABrokenShop();
};

static std::string templateText(const std::string &id, const std::string &rest)
{
    return "id = \"" + id + "\"\ntitle = \"t\"\nsystem = \"fuel\"\nfluid = \"E85\"\n" + rest;
}

static std::string moduleText(const std::string &id, const std::string &of)
{
    return "[[module]]\nid = \"" + id + "\"\ntemplate = \"" + of + "\"\n";
}

static const std::string OneStation =
    "[[station]]\nid = \"s\"\ntitle = \"s\"\nkind = \"tee\"\nlevel = \"return\"\n";

void TemplateBookTest::namesACircleByItsPath()
{
    const auto book = readTemplates({
        {"templates/a.toml", templateText("a", moduleText("m", "b"))},
        {"templates/b.toml", templateText("b", OneStation + moduleText("m", "c"))},
        {"templates/c.toml", templateText("c", moduleText("m", "a"))},
    });
    QVERIFY(!book.has_value());
    QVERIFY2(book.error().wrong.find("a > b > c > a") != std::string::npos,
             book.error().text().c_str());
    QCOMPARE(book.error().thing, std::string("templates/c.toml"));
    QCOMPARE(std::pair(book.error().line, book.error().column), std::pair(7U, 12U));
    const auto self =
        readTemplates({{"templates/a.toml", templateText("a", moduleText("m", "a"))}});
    QVERIFY(self.error().wrong.find("a > a") != std::string::npos);
    // Shared, not a circle: two modules of one template.
    QVERIFY(readTemplates({{"templates/a.toml",
                            templateText("a", moduleText("m", "b") + moduleText("n", "b"))},
                           {"templates/b.toml", templateText("b", OneStation)}})
                .has_value());
    // A long chain is no circle, and no stack of ours grows with it.
    TextFiles chain;
    for (int i = 0; i < 3000; ++i)
        chain["templates/" + std::to_string(i) + ".toml"] = templateText(
            std::to_string(i), i < 2999 ? moduleText("m", std::to_string(i + 1)) : OneStation);
    QVERIFY(readTemplates(chain).has_value());
}

void TemplateBookTest::checksModulesAgainstTheirTemplates_data()
{
    QTest::addColumn<QString>("outer");
    QTest::addColumn<unsigned>("line");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const std::string &outer, std::pair<unsigned, unsigned> at,
                        const char *words) {
        QTest::newRow(words) << QString::fromStdString(outer) << at.first << at.second << words;
    };
    row(moduleText("m", "innner"), {7, 12}, "no template \"innner\". Perhaps \"inner\" is meant.");
    row(moduleText("m", "inner") + "answers = { finer = \"10\" }\n", {8, 13},
        "has no question \"finer\"");
    row(moduleText("m", "inner") + "answers = { fine = \"11\" }\n", {8, 20},
        "\"11\" is none of its answers");
    row(moduleText("m", "inner") + "answers = { fine = 10 }\n", {8, 20}, "Put it in quotes");
    const std::string run = "[[run]]\nid = \"r\"\nlevel = \"return\"\nfrom = \"s.a\"\n";
    row(moduleText("m", "inner") + OneStation + run + "to = \"m/t.b\"\n", {17, 6},
        "the template \"inner\" has no station \"t\"");
    row(moduleText("m", "inner") + OneStation + run + "to = \"m/n/s.b\"\n", {17, 6},
        "the template \"inner\" has no module \"n\"");
}

void TemplateBookTest::checksModulesAgainstTheirTemplates()
{
    QFETCH(QString, outer);
    QFETCH(unsigned, line);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const auto book = readTemplates(
        {{"templates/a.toml", templateText("a", outer.toStdString())},
         {"templates/inner.toml",
          templateText("inner", "[[question]]\nid = \"fine\"\ntitle = \"f\"\nform = \"choice\"\n"
                                "choices = [\"10\", \"40\"]\ndefault = \"10\"\n" +
                                    OneStation)}});
    QVERIFY(!book.has_value());
    const Problem &said = book.error();
    QVERIFY2(said.sentence().find(words.toStdString()) != std::string::npos, said.text().c_str());
    QVERIFY2(said.line == line && said.column == column, said.text().c_str());
    QCOMPARE(said.thing, std::string("templates/a.toml"));
}

void TemplateBookTest::refusesWhatIsTooLargeOrTooDeep()
{
    const auto refused = [](const std::string &text, const char *words) {
        const auto read = readTemplate(text, "t.toml");
        QVERIFY(!read.has_value());
        QVERIFY2(read.error().sentence().find(words) != std::string::npos,
                 read.error().sentence().substr(0, 300).c_str());
    };
    const auto repeated = [](const char *text, int times) {
        std::string all;
        for (int i = 0; i < times; ++i)
            all += text;
        return all;
    };
    refused(std::string(4U * 1024 * 1024 + 1, '#'), "more than 4 MB");
    refused("a = " + repeated("[", 10'000) + repeated("]", 10'000), "not TOML");
    refused("a = " + repeated("{a=", 10'000) + "1" + repeated("}", 10'000), "not TOML");
    refused(repeated("a.", 10'000) + "b = 1", "nested more than 100 deep");
    refused("[" + repeated("a.", 1'000'000) + "b]", "nested more than 100 deep");
    refused("[" + repeated("a . ", 10'000) + "b]", "nested more than 100 deep");
    refused("id = \"\xFF\"", "not UTF-8");
    refused(std::string("id = \"\0\"", 8), "not UTF-8");
    refused("", "has no \"id\"");
}

void TemplateBookTest::writesBuildsThatReadTheSame()
{
    const std::vector<BuildPlan> builds = {
        {"coupe-fuel",
         "Coupe: \"fuel\", 37° \\ 90°\n2nd",
         "injection",
         "car-2",
         "2026-12-12",
         {{"fluid", "E85"}, {"power", "520 hp"}},
         {{"prefilter", "PF-100-10"},
          {"rail-in.end", "AD-66 + HE-6"},
          {"filters/pre", "x\ty\x01\x7F"}},
         "money"},
        {"plain", "Plain", "gravity", "", "", {}, {}, "shelf"},
    };
    const std::string text = writeBuilds(builds);
    const auto read = readBuilds(text, "builds.toml");
    QVERIFY2(read.has_value(), read ? "" : read.error().text().c_str());
    QCOMPARE(read->size(), builds.size());
    for (std::size_t i = 0; i < builds.size(); ++i) {
        const BuildPlan &a = builds[i];
        const BuildPlan &b = (*read)[i];
        QCOMPARE(std::tie(b.id, b.title, b.templateId, b.car, b.by, b.preference),
                 std::tie(a.id, a.title, a.templateId, a.car, a.by, a.preference));
        QCOMPARE(b.answers, a.answers);
        QCOMPARE(b.picks, a.picks);
    }
    QCOMPARE(writeBuilds(*read), text);
    QVERIFY(readBuilds(writeBuilds({}), "b").value().empty());
}

void TemplateBookTest::refusesBrokenBuilds_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<unsigned>("line");
    QTest::addColumn<unsigned>("column");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *rest, std::pair<unsigned, unsigned> at, const char *words) {
        QTest::newRow(rest) << QStringLiteral("[[build]]\nid = \"a\"\ntitle = \"A\"\n") +
                                   QString::fromUtf8(rest)
                            << at.first << at.second << words;
    };
    row("", {1, 1}, "has no \"template\"");
    row("template = \"t\"\nby = \"2026-02-30\"\n", {5, 6}, "is no date");
    row("template = \"t\"\nby = \"12.12.2026\"\n", {5, 6}, "is no date");
    row("template = \"t\"\nprefer = \"shelve\"\n", {5, 10}, "Perhaps \"shelf\" is meant.");
    row("template = \"t\"\nanswers = { power = 520 }\n", {5, 21}, "Put it in quotes");
    row("template = \"t\"\npikcs = {}\n", {5, 1}, "Perhaps \"picks\" is meant.");
    row("template = \"t\"\n[[build]]\nid = \"a\"\ntitle = \"B\"\ntemplate = \"t\"\n", {6, 6},
        "stands twice");
}

void TemplateBookTest::refusesBrokenBuilds()
{
    QFETCH(QString, text);
    QFETCH(unsigned, line);
    QFETCH(unsigned, column);
    QFETCH(QString, words);
    const auto read = readBuilds(text.toStdString(), "builds.toml");
    QVERIFY(!read.has_value());
    QVERIFY2(read.error().sentence().find(words.toStdString()) != std::string::npos,
             read.error().text().c_str());
    QVERIFY2(read.error().line == line && read.error().column == column,
             read.error().text().c_str());
}

void TemplateBookTest::refusesABrokenShop()
{
    const auto said = [](const std::string &text) {
        const auto read = readShop(text, "shop.toml");
        return read ? std::string("read") : read.error().text();
    };
    const std::string top = "title = \"S\"\ncurrency = \"USD\"\n";
    const std::string bin = "[[place]]\nid = \"C4\"\ntitle = \"bin\"\nkind = \"bin\"\n";
    QCOMPARE(said(top + bin), std::string("read"));
    const auto says = [&](const std::string &text, const char *words) {
        QVERIFY2(said(text).find(words) != std::string::npos, said(text).c_str());
    };
    says("title = \"S\"\ncurrency = \"dollar\"\n", "line 2, column 12");
    says(top + "[[place]]\nid = \"C4\"\ntitle = \"bin\"\nkind = \"bun\"\n", "line 6, column 8");
    says(top + bin + bin, "line 8, column 6: the place \"C4\" stands twice");
    says(top + "[[plaice]]\n", "Perhaps \"place\" is meant.");
}

QTEST_APPLESS_MAIN(TemplateBookTest)
#include "tst_templates_stand_together.moc"
