// SPDX-License-Identifier: MIT
//
// `flarestock demo` and `flarestock verify`, as a shell runs them: the demo shop is whole, a file
// that was changed behind the program's back is not, and neither command writes where it should
// not.

#include "tests/command/demo_copy.h"

#include <QRegularExpression>
#include <QTest>

using namespace flarestock::tests;

class DemoAndVerifyCommands : public QObject {
    Q_OBJECT

private:
    DemoCopy m_demo;

private Q_SLOTS:
    void demoMakesAShopThatIsWhole();
    void demoNeverOverwrites_data();
    void demoNeverOverwrites();
    void demoSaysWhereItCannotBe();
    void verifyHasTheShapeOfTheContract();
    void verifyCountsEveryMovement();
    void verifyTellsAPerson();
    void verifySeesWhatWasChanged_data();
    void verifySeesWhatWasChanged();
    void verifyNamesTheNewestGoodBackup();
    void verifyRefusesWhatIsNoShop_data();
    void verifyRefusesWhatIsNoShop();
};

void DemoAndVerifyCommands::demoMakesAShopThatIsWhole()
{
    const std::string path = m_demo.file("fresh.shop");
    const Ran ran = runFlarestock({"demo", "--to", path, "--json"});
    QCOMPARE(ran.status, 0);
    QCOMPARE(ran.err, std::string());
    const QJsonObject said = ran.json();
    QCOMPARE(keysOf(said), QStringList({QStringLiteral("movements"), QStringLiteral("shop"),
                                        QStringLiteral("title")}));
    QCOMPARE(said.value(QStringLiteral("shop")).toString().toStdString(), path);
    // Each row of the opening stock is a movement; the file has a header and no quoted line ends.
    const QByteArray stock =
        bytesOf(std::string(FLARESTOCK_SOURCE_DIR "/demo-data/stock.csv")).trimmed();
    QCOMPARE(said.value(QStringLiteral("movements")).toInt(), stock.count('\n'));
    QVERIFY(stock.count('\n') > 400);
    QCOMPARE(runFlarestock({"verify", path}).status, 0);
    const Ran spoken = runFlarestock({"demo", "--to", m_demo.file("spoken.shop")});
    QVERIFY2(spoken.out.starts_with("made ") && spoken.out.ends_with(" of opening stock\n"),
             spoken.out.c_str());
}

void DemoAndVerifyCommands::demoNeverOverwrites_data()
{
    QTest::addColumn<QByteArray>("before");
    QTest::newRow("somebody's letter") << QByteArray("Dear Two Beacons,\n");
    QTest::newRow("an empty file") << QByteArray();
    QTest::newRow("another shop") << bytesOf(m_demo.made());
}

void DemoAndVerifyCommands::demoNeverOverwrites()
{
    QFETCH(QByteArray, before);
    const std::string path = m_demo.file("there-already");
    writeBytes(path, before);
    for (const Words &words :
         {Words{"demo", "--to", path}, Words{"demo", "--to", path, "--json"}}) {
        const Ran ran = runFlarestock(words);
        QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
        QCOMPARE(ran.err, path + ": exists already. Name another file, or move it away.\n");
    }
    QVERIFY(bytesOf(path) == before);
}

void DemoAndVerifyCommands::demoSaysWhereItCannotBe()
{
    const Ran nowhere = runFlarestock({"demo", "--to", m_demo.file("no/such/demo.shop")});
    QVERIFY2(nowhere.refusesInOneLine(), nowhere.err.c_str());
    QVERIFY2(nowhere.err.find("is no folder") != std::string::npos, nowhere.err.c_str());
    const Ran unsaid = runFlarestock({"demo"});
    QVERIFY2(unsaid.refusesInOneLine(), unsaid.err.c_str());
    QVERIFY2(unsaid.err.find("--to") != std::string::npos, unsaid.err.c_str());
}

void DemoAndVerifyCommands::verifyHasTheShapeOfTheContract()
{
    const QByteArray before = bytesOf(m_demo.made());
    const Ran ran = runFlarestock({"verify", m_demo.made(), "--json"});
    QCOMPARE(ran.status, 0);
    QCOMPARE(ran.err, std::string());
    const QJsonObject said = ran.json();
    QCOMPARE(keysOf(said), QStringList({QStringLiteral("heads"), QStringLiteral("lastGood"),
                                        QStringLiteral("movements"), QStringLiteral("problems"),
                                        QStringLiteral("whole")}));
    QCOMPARE(said.value(QStringLiteral("whole")), QJsonValue(true));
    QVERIFY(said.value(QStringLiteral("movements")).isDouble());
    QCOMPARE(said.value(QStringLiteral("problems")), QJsonValue(QJsonArray()));
    const QJsonArray heads = said.value(QStringLiteral("heads")).toArray();
    QCOMPARE(heads.size(), 1); // One seat has written this file.
    const QRegularExpression head(QStringLiteral("^[0-9a-f]{32}:([0-9]+):[0-9a-f]{64}$"));
    const auto matched = head.match(heads.at(0).toString());
    QVERIFY2(matched.hasMatch(), heads.at(0).toString().toUtf8().constData());
    // Records stand in the chain beside the movements: what the drawers are to hold.
    QVERIFY(matched.captured(1).toInt() > said.value(QStringLiteral("movements")).toInt());
    QVERIFY(bytesOf(m_demo.made()) == before);
}

void DemoAndVerifyCommands::verifyCountsEveryMovement()
{
    const std::string shop = m_demo.copied();
    const auto verified = [&shop] { return runFlarestock({"verify", shop, "--json"}).json(); };
    const QJsonObject before = verified();
    const QJsonObject moved = runFlarestock({"move", "AD-8-10", "1", "--from", "A3", "--to",
                                             "car-1", "--shop", shop, "--json"})
                                  .json();
    const QJsonObject after = verified();
    QCOMPARE(after.value(QStringLiteral("movements")).toInt(),
             before.value(QStringLiteral("movements")).toInt() + 1);
    QVERIFY(after.value(QStringLiteral("heads")) != before.value(QStringLiteral("heads")));
    QCOMPARE(after.value(QStringLiteral("lastGood")), moved.value(QStringLiteral("movement")));
    QCOMPARE(after.value(QStringLiteral("whole")), QJsonValue(true));
}

void DemoAndVerifyCommands::verifyTellsAPerson()
{
    const Ran ran = runFlarestock({"verify", m_demo.made()});
    QCOMPARE(ran.status, 0);
    QCOMPARE(ran.err, std::string());
    QVERIFY2(ran.out.starts_with(m_demo.made() + " is whole: "), ran.out.c_str());
    QCOMPARE(std::count(ran.out.begin(), ran.out.end(), '\n'), 1);
}

void DemoAndVerifyCommands::verifySeesWhatWasChanged_data()
{
    QTest::addColumn<QByteArray>("stands");
    QTest::addColumn<QByteArray>("forged");
    QTest::addColumn<QByteArray>("names");
    const auto row = [](const char *name, const char *stands, const char *forged,
                        const char *names) {
        QTest::newRow(name) << QByteArray(stands) << QByteArray(forged) << QByteArray(names);
    };
    row("why something was moved", "what lay there on the first day",
        "what lay there on the worst day", "was changed after it was written");
    row("the shop's name", "Two Beacons hill-climb", "Ten Beacons hill-climb",
        "the shop's name, currency or costing");
    row("a place", "shelf 1: hose rack", "shelf 7: hose rack", "place SH-1");
    row("a rule of the file", "a movement is never deleted", "a movement is often deleted",
        "the schema");
}

void DemoAndVerifyCommands::verifySeesWhatWasChanged()
{
    QFETCH(QByteArray, stands);
    QFETCH(QByteArray, forged);
    QFETCH(QByteArray, names);
    QCOMPARE(stands.size(), forged.size());
    QByteArray bytes = bytesOf(m_demo.made());
    const qsizetype at = bytes.indexOf(stands);
    QVERIFY(at > 0);
    bytes.replace(at, stands.size(), forged);
    const std::string path = m_demo.file("forged.shop");
    writeBytes(path, bytes);

    const Ran ran = runFlarestock({"verify", path, "--json"});
    QCOMPARE(ran.status, 2);
    const QJsonObject said = ran.json();
    QCOMPARE(said.value(QStringLiteral("whole")), QJsonValue(false));
    const QJsonArray problems = said.value(QStringLiteral("problems")).toArray();
    QVERIFY(!problems.isEmpty());
    QVERIFY2(ran.out.find(names.toStdString()) != std::string::npos, ran.out.c_str());

    const Ran spoken = runFlarestock({"verify", path});
    QCOMPARE(spoken.status, 2);
    QVERIFY2(spoken.out.find(names.toStdString()) != std::string::npos, spoken.out.c_str());
    for (const char *says : {"is not whole", "last good movement", "restore the newest backup"})
        QVERIFY2(spoken.err.find(says) != std::string::npos, spoken.err.c_str());
    QCOMPARE(std::count(spoken.err.begin(), spoken.err.end(), '\n'), 1);
    QVERIFY(bytesOf(path) == bytes); // It never writes.
}

void DemoAndVerifyCommands::verifyNamesTheNewestGoodBackup()
{
    const std::string path = m_demo.file("backed-up.shop");
    writeBytes(path, bytesOf(m_demo.made()));
    const auto backUp = [&path] {
        return runFlarestock({"backup", "--shop", path, "--json"})
            .json()
            .value(QStringLiteral("backup"))
            .toString()
            .toStdString();
    };
    const std::string good = backUp();
    const std::string damaged = backUp();
    QVERIFY(good.find("backup-0001-") != std::string::npos);
    QVERIFY(damaged.find("backup-0002-") != std::string::npos);
    writeBytes(damaged, bytesOf(damaged).left(4096));
    QByteArray bytes = bytesOf(path);
    bytes.replace("Two Beacons hill-climb", "Ten Beacons hill-climb");
    QVERIFY(bytes != bytesOf(path));
    writeBytes(path, bytes);

    const Ran ran = runFlarestock({"verify", path, "--json"});
    QCOMPARE(ran.status, 2);
    QCOMPARE(ran.json().value(QStringLiteral("newestGoodBackup")).toString().toStdString(), good);
    const Ran spoken = runFlarestock({"verify", path});
    QVERIFY2(spoken.err.find(good) != std::string::npos, spoken.err.c_str());

    const std::string again = m_demo.file("again.shop");
    QCOMPARE(runFlarestock({"restore", good, "--to", again}).status, 0);
    const QJsonObject restored = runFlarestock({"verify", again, "--json"}).json();
    QVERIFY(restored.value(QStringLiteral("whole")).toBool());
    QCOMPARE(restored.value(QStringLiteral("movements")),
             runFlarestock({"verify", m_demo.made(), "--json"})
                 .json()
                 .value(QStringLiteral("movements")));
    QCOMPARE(runFlarestock({"restore", good, "--to", again}).status, 2); // It is there already.
    QCOMPARE(runFlarestock({"restore", damaged, "--to", m_demo.file("no.shop")}).status, 2);

    writeBytes(path, "a letter"); // No longer a shop at all.
    const Ran letter = runFlarestock({"verify", path});
    QCOMPARE(letter.status, 2);
    QVERIFY2(letter.err.find(good) != std::string::npos, letter.err.c_str());
}

void DemoAndVerifyCommands::verifyRefusesWhatIsNoShop_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<std::string>("says");
    const QByteArray good = bytesOf(m_demo.made());
    QTest::newRow("a letter") << QByteArray(4096, 'x') << std::string("is not a shop file");
    QTest::newRow("nothing in it") << QByteArray() << std::string("is empty");
    QTest::newRow("cut off") << good.left(good.size() - 4096) << std::string("is damaged");
    QTest::newRow("something behind it") << good + "x" << std::string("is damaged");
    QByteArray other = good;
    other[68] = 'X'; // The application id.
    QTest::newRow("another program's") << other << std::string("another program");
}

void DemoAndVerifyCommands::verifyRefusesWhatIsNoShop()
{
    QFETCH(QByteArray, bytes);
    QFETCH(std::string, says);
    const std::string path = m_demo.file("other");
    writeBytes(path, bytes);
    for (const Words &words : {Words{"verify", path}, Words{"verify", path, "--json"}}) {
        const Ran ran = runFlarestock(words);
        QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
        QVERIFY2(ran.err.starts_with(path + ": "), ran.err.c_str());
        QVERIFY2(ran.err.find(says) != std::string::npos, ran.err.c_str());
    }
    QVERIFY(bytesOf(path) == bytes);
    const Ran none = runFlarestock({"verify", m_demo.file("none.shop")});
    QVERIFY2(none.refusesInOneLine(), none.err.c_str());
    QVERIFY2(none.err.find("is not there") != std::string::npos, none.err.c_str());
}

QTEST_APPLESS_MAIN(DemoAndVerifyCommands)
#include "tst_changed_file_is_not_whole.moc"
