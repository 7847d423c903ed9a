// SPDX-License-Identifier: MIT
//
// What a command answers does not depend on where it runs: whole commands under a locale that has a
// comma for the decimal point (German in Germany, made for the test out of Debian's `locales`) and
// in the time zone that is furthest ahead (Pacific/Kiritimati, UTC+14), byte for byte as in the
// plain locale and UTC. A locale or a time zone that is missing fails here: then nothing would have
// been tested.

#include "tests/command/demo_copy.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";

/// What a small program of the system says.
QByteArray systemSays(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitStatus() != QProcess::NormalExit ||
        process.exitCode() != 0)
        return "failed: " + process.readAllStandardError();
    return process.readAllStandardOutput().trimmed();
}

} // namespace

class AnswersAreTheSameEverywhere : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_locales;
    DemoCopy m_demo;

    /// Every program that is started from now on runs there.
    static void goHome()
    {
        qputenv("LC_ALL", "C.UTF-8");
        qputenv("TZ", "UTC");
    }
    static void goToTheIsland()
    {
        qputenv("LC_ALL", "de_DE.UTF-8");
        qputenv("TZ", "Pacific/Kiritimati");
    }

private Q_SLOTS:
    void initTestCase();
    void cleanup() { goHome(); }
    void theIslandIsReallyElsewhere();
    void whatIsAsked_data();
    void whatIsAsked();
    void whatIsMoved();
    void aShopThatWasMadeThere();
};

void AnswersAreTheSameEverywhere::initTestCase()
{
    const QString made = m_locales.filePath(QStringLiteral("de_DE.UTF-8"));
    QCOMPARE(systemSays(QStringLiteral("/usr/bin/localedef"),
                        {QStringLiteral("-i"), QStringLiteral("de_DE"), QStringLiteral("-f"),
                         QStringLiteral("UTF-8"), made}),
             QByteArray());
    qputenv("LOCPATH", m_locales.path().toUtf8());
    goHome();
    QVERIFY(!m_demo.made().empty());
}

void AnswersAreTheSameEverywhere::theIslandIsReallyElsewhere()
{
    const auto decimalPoint = [] {
        return systemSays(QStringLiteral("/usr/bin/locale"), {QStringLiteral("decimal_point")});
    };
    const auto ahead = [] {
        return systemSays(QStringLiteral("/usr/bin/date"), {QStringLiteral("+%z")});
    };
    QCOMPARE(decimalPoint(), QByteArray("."));
    QCOMPARE(ahead(), QByteArray("+0000"));
    goToTheIsland();
    QCOMPARE(decimalPoint(), QByteArray(","));
    QCOMPARE(ahead(), QByteArray("+1400"));
}

void AnswersAreTheSameEverywhere::whatIsAsked_data()
{
    QTest::addColumn<QString>("words");
    const auto row = [](const char *words) { QTest::newRow(words) << QString::fromUtf8(words); };
    row("bill|injection-frame-rail|--set|power=640.5 hp|--shop|SHOP|--json");
    row("bill|injection-frame-rail|--set|supply=150.5 cm|--shop|SHOP|--json");
    row("bill|--build|coupe-fuel|--shop|SHOP|--json");
    row("bill|coolant|--prefer|money|--shop|SHOP|--json");
    row("bill|--build|coupe-fuel|--shop|SHOP");
    row("bill|--list|--shop|SHOP|--json");
    row("flow|injection-frame-rail|--set|altitude=1200.5 m|--shop|SHOP|--json");
    row("flow|carburettor-return|--shop|SHOP");
    row("stock|--shop|SHOP|--json");
    row("stock|--find|hose -8|--shop|SHOP");
    row("verify|SHOP|--json");
    row("mate|METRIC M22x1.5 male|ORB -10 female|--json");
    row("line|--fluid|gasoline|--flow|255.5 L/h|--bore|8.71 mm|--length|5.25 m|--json");
    row("line|--density|745.2 kg/m3|--viscosity|0.41 mPa.s|--flow|1.5 gpm|--bore|0.343 in|"
        "--length|12.5 ft|--roughness|1.5 um|--k|2.4|--rise|-0.5 m");
    row("identify|--male|--od|22.1 mm|--pitch|1.81 mm|--json");
    // What is refused is refused in the same words; a comma is a decimal point nowhere.
    row("line|--fluid|gasoline|--flow|255,5 L/h|--bore|8.71 mm|--length|5 m|--json");
    row("bill|injection-frame-rail|--set|power=640,5 hp|--shop|SHOP|--json");
    row("move|PT-8|1,5|--from|SH-1|--to|car-1|--shop|SHOP");
}

void AnswersAreTheSameEverywhere::whatIsAsked()
{
    QFETCH(QString, words);
    Words typed;
    for (const QString &word : words.split(QLatin1Char('|')))
        typed.push_back(word == u"SHOP" ? m_demo.made() : word.toStdString());
    const Ran home = runFlarestock(typed);
    goToTheIsland();
    const Ran island = runFlarestock(typed);
    QVERIFY2(island.out == home.out, (island.out + "\ninstead of\n" + home.out).c_str());
    QVERIFY2(island.err == home.err, (island.err + "\ninstead of\n" + home.err).c_str());
    QCOMPARE(island.status, home.status);
    const bool comma =
        words.contains(u"255,5") || words.contains(u"640,5") || words.contains(u"1,5");
    QCOMPARE(home.status, comma ? 2 : 0);
    QVERIFY(home.err.size() + home.out.size() > 40);
}

void AnswersAreTheSameEverywhere::whatIsMoved()
{
    const auto movedThenTold = [this](bool island) {
        const std::string shop = m_demo.copied();
        if (island)
            goToTheIsland();
        const Ran moved = runFlarestock({"move", "PT-8", "2 ft 1.5 in", "--from", "SH-1", "--to",
                                         "trailer-4", "--id", Id, "--shop", shop, "--json"});
        const std::string told = runFlarestock({"stock", "--shop", shop, "--json"}).out;
        goHome();
        return moved.out + moved.err + told;
    };
    const std::string home = movedThenTold(false);
    QVERIFY2(home.find("\"124.5\"") != std::string::npos, home.c_str()); // Of 150 in.
    QVERIFY(movedThenTold(true) == home);
}

void AnswersAreTheSameEverywhere::aShopThatWasMadeThere()
{
    const std::string shop = m_demo.file("island.shop");
    goToTheIsland();
    QCOMPARE(runFlarestock({"demo", "--to", shop}).status, 0);
    goHome();
    QCOMPARE(runFlarestock({"verify", shop}).status, 0);
    for (const Words &asked : {Words{"stock", "--json", "--shop"},
                               Words{"bill", "--build", "coupe-fuel", "--json", "--shop"}}) {
        const auto of = [&asked](const std::string &file) {
            Words words = asked;
            words.push_back(file);
            return runFlarestock(words).out;
        };
        QVERIFY(of(shop) == of(m_demo.made()));
    }
}

QTEST_APPLESS_MAIN(AnswersAreTheSameEverywhere)
#include "tst_answers_are_the_same_everywhere.moc"
