// SPDX-License-Identifier: MIT
//
// `flarestock check`, from the outside: of every template and planned build of the demo shop it
// says what the bill says of it, no more and no less, the worst first. Its document is a contract.

#include "demo_copy.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

QString textOf(const QJsonValue &object, const char *key)
{
    return object.toObject().value(QLatin1String(key)).toString();
}

int countOf(const QJsonArray &findings, const char *severity)
{
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(), [severity](const QJsonValue &finding) {
            return textOf(finding, "severity") == QLatin1String(severity);
        }));
}

} // namespace

class CheckCommandTest : public QObject {
    Q_OBJECT

private:
    DemoCopy m_demo;

    [[nodiscard]] Ran asked(const char *command, Words words)
    {
        words.insert(words.begin(), command);
        words.insert(words.end(), {"--shop", m_demo.made()});
        return runFlarestock(words);
    }
    [[nodiscard]] std::vector<Words> everyBuild();

private Q_SLOTS:
    void hasTheShapeOfTheContract();
    void saysWhatTheBillSays();
    void takesAnswersAndPicks();
    void endsAsTheBillDoes();
    void tellsTheWorstFirst();
    void saysWhere();
    void missingPumpIsOneStop();
    void refusesInOneLine_data();
    void refusesInOneLine();
};

std::vector<Words> CheckCommandTest::everyBuild()
{
    std::vector<Words> builds{{"--build", "coupe-fuel"},
                              {"--build", "coupe-brakes"},
                              {"--build", "coupe-oil"},
                              {"--build", "single-seater-fuel"}};
    const auto listed = asked("bill", {"--list", "--json"}).json();
    for (const auto &form : listed.value(QLatin1String("templates")).toArray())
        builds.push_back({textOf(form, "id").toStdString()});
    return builds;
}

void CheckCommandTest::hasTheShapeOfTheContract()
{
    const auto said = asked("check", {"injection-frame-rail", "--json"}).json();
    QCOMPARE(keysOf(said), QStringList({QStringLiteral("answers"), QStringLiteral("cautions"),
                                        QStringLiteral("findings"), QStringLiteral("notes"),
                                        QStringLiteral("stops"), QStringLiteral("template")}));
    QCOMPARE(textOf(said, "template"), QStringLiteral("injection-frame-rail"));
    const auto findings = said.value(QLatin1String("findings")).toArray();
    QVERIFY(!findings.isEmpty());
    for (const auto &finding : findings) {
        QCOMPARE(keysOf(finding.toObject()),
                 QStringList({QStringLiteral("about"), QStringLiteral("remedy"),
                              QStringLiteral("severity"), QStringLiteral("source"),
                              QStringLiteral("text"), QStringLiteral("where")}));
        for (const char *key : {"about", "remedy", "source", "text"})
            QVERIFY2(!textOf(finding, key).isEmpty(), qPrintable(textOf(finding, "about")));
    }
}

void CheckCommandTest::saysWhatTheBillSays()
{
    qsizetype findings = 0;
    for (Words words : everyBuild()) {
        words.emplace_back("--json");
        const auto check = asked("check", words).json();
        const auto bill = asked("bill", words).json();
        const auto said = check.value(QLatin1String("findings")).toArray();
        QVERIFY2(said == bill.value(QLatin1String("findings")).toArray(), words.back().c_str());
        QCOMPARE(check.value(QLatin1String("answers")), bill.value(QLatin1String("answers")));
        QCOMPARE(check.value(QLatin1String("stops")), bill.value(QLatin1String("stops")));
        QCOMPARE(check.value(QLatin1String("stops")).toInt(), countOf(said, "stop"));
        QCOMPARE(check.value(QLatin1String("cautions")).toInt(), countOf(said, "caution"));
        QCOMPARE(check.value(QLatin1String("notes")).toInt(), countOf(said, "note"));
        findings += said.size();
    }
    QVERIFY(findings > 50);
}

void CheckCommandTest::takesAnswersAndPicks()
{
    const auto said = asked("check", {"injection-frame-rail", "--set", "fluid=gasoline", "--pick",
                                      "postfilter=PF-100-8", "--json"})
                          .json();
    QCOMPARE(textOf(said.value(QLatin1String("answers")), "fluid"), QStringLiteral("gasoline"));
    const auto findings = said.value(QLatin1String("findings")).toArray();
    QVERIFY(std::any_of(findings.begin(), findings.end(), [](const QJsonValue &finding) {
        return textOf(finding, "where") == QLatin1String("postfilter") &&
               textOf(finding, "severity") == QLatin1String("stop");
    })); // 100 µm is no last filter before an injection: common practice, no source.
}

void CheckCommandTest::endsAsTheBillDoes()
{
    int good = 0;
    int bad = 0;
    for (Words words : {Words{"--build", "coupe-fuel"}, Words{"coolant"}, Words{"brake-axle"}}) {
        QCOMPARE(asked("check", words).status, 0);
        words.emplace_back("--strict");
        const int status = asked("check", words).status;
        QCOMPARE(status, asked("bill", words).status);
        good += status == 0 ? 1 : 0;
        bad += status == 1 ? 1 : 0;
    }
    QVERIFY(good > 0 && bad > 0);
}

void CheckCommandTest::tellsTheWorstFirst()
{
    const Ran ran = asked("check", {"--build", "coupe-fuel"});
    const auto stops = ran.out.find("\nSTOPS\n");
    const auto cautions = ran.out.find("\nCAUTIONS\n");
    const auto notes = ran.out.find("\nNOTES\n");
    QVERIFY2(stops < cautions && cautions < notes && notes != std::string::npos, ran.out.c_str());
    const auto leak = ran.out.find("it screws together and leaks");
    QVERIFY(stops < leak && leak < cautions);
    QVERIFY(ran.out.find("\nBILL\n") == std::string::npos);
    QVERIFY2(ran.out.find("\n1 stop, ") != std::string::npos, ran.out.c_str());
    QVERIFY(ran.out.find("not a safety certificate") != std::string::npos);
    QVERIFY(ran.out.find("depressurise") != std::string::npos);
}

void CheckCommandTest::saysWhere()
{
    const Ran ran = asked("check", {"--build", "coupe-fuel"});
    QVERIFY2(ran.out.find("at the joint rail inlet (pressure.end)\n") != std::string::npos,
             ran.out.c_str());
    QVERIFY2(ran.out.find("at the pump (pump)\n") != std::string::npos, ran.out.c_str());
    QVERIFY2(ran.out.find("in the whole build\n") != std::string::npos, ran.out.c_str());
}

void CheckCommandTest::missingPumpIsOneStop()
{
    // No pump of the demo gives so much methanol; its joints are open for that cause alone.
    const auto said = asked("check", {"injection-frame-rail", "--set", "fluid=methanol", "--set",
                                      "power=1200 hp", "--json"})
                          .json();
    const auto findings = said.value(QLatin1String("findings")).toArray();
    QCOMPARE(said.value(QLatin1String("stops")).toInt(), 1);
    QCOMPARE(textOf(findings.first(), "about"), QStringLiteral("Pump: no part does what is asked"));
}

void CheckCommandTest::refusesInOneLine_data()
{
    QTest::addColumn<Words>("words");
    QTest::addColumn<std::string>("says");
    const auto row = [](const char *name, const Words &words, const char *says) {
        QTest::newRow(name) << words << std::string(says);
    };
    row("nothing", {}, "flarestock check: takes a template or --build");
    row("both", {"coolant", "--build", "coupe-fuel"}, "not both");
    row("an unknown template", {"rocket"}, "Templates are: ");
    row("no such answer", {"injection-frame-rail", "--set", "fluid=nitro"}, "Answer one of: ");
    row("an unknown part", {"injection-frame-rail", "--pick", "pump=XX"}, "no part of the");
}

void CheckCommandTest::refusesInOneLine()
{
    QFETCH(Words, words);
    QFETCH(std::string, says);
    const Ran ran = asked("check", words);
    QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
    QVERIFY2(ran.err.find(says) != std::string::npos, ran.err.c_str());
}

QTEST_GUILESS_MAIN(CheckCommandTest)
#include "tst_check_says_what_the_bill_says.moc"
