// SPDX-License-Identifier: MIT
//
// A wrong file is refused in a sentence and stays as it is; damage is noticed; nothing acknowledged
// is lost when the program is killed.

#include "shop_for_tests.h"

#include <QProcess>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>

#include <csignal>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace flarestock;
using namespace flarestock::tests;

class WrongFilesAreRefusedTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void saysWhatIsWrongAndTouchesNothing_data();
    void saysWhatIsWrongAndTouchesNothing();
    void doesNotOverwriteAFile();
    void noticesBitFlips();
    void noticesTruncation();
    void writesNothingIntoDamage_data();
    void writesNothingIntoDamage();
    void keepsWhatWasAcknowledgedWhenKilled();
};

void WrongFilesAreRefusedTest::saysWhatIsWrongAndTouchesNothing_data()
{
    QTest::addColumn<QString>("kind");
    QTest::addColumn<QString>("says");
    QTest::newRow("no database") << "text"
                                 << "not a shop file";
    QTest::newRow("empty") << "empty"
                           << "is empty";
    QTest::newRow("of another program") << "other"
                                        << "another program";
    QTest::newRow("of a newer program") << "newer"
                                        << "newer Flarestock";
    QTest::newRow("not there") << "none"
                               << "is not there";
    QTest::newRow("a folder") << "folder"
                              << "is not a file";
}

void WrongFilesAreRefusedTest::saysWhatIsWrongAndTouchesNothing()
{
    QFETCH(QString, kind);
    QFETCH(QString, says);
    const Folder folder;
    const auto path = folder.file();
    if (kind == u"text")
        writeBytes(path, QByteArray(500, 'x'));
    if (kind == u"empty")
        writeBytes(path, {});
    if (kind == u"folder")
        std::filesystem::create_directory(path);
    if (kind == u"other" || kind == u"newer") {
        QVERIFY(ShopFile::create(path, smallShop()));
        auto bytes = bytesOf(path);
        bytes[kind == u"other" ? 68 : 63] = 99; // application id, user version
        writeBytes(path, bytes);
    }
    const auto before = bytesOf(path);
    for (const auto mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto shop = ShopFile::open(path, mode);
        QVERIFY(!shop);
        QVERIFY2(shop.error().sentence().find(says.toStdString()) != std::string::npos,
                 shop.error().sentence().c_str());
        QVERIFY(!shop.error().remedy.empty());
    }
    QCOMPARE(bytesOf(path), before);
}

void WrongFilesAreRefusedTest::doesNotOverwriteAFile()
{
    const Folder folder;
    writeBytes(folder.file(), "somebody's letter");
    QVERIFY(!ShopFile::create(folder.file(), smallShop()));
    QCOMPARE(bytesOf(folder.file()), QByteArray("somebody's letter"));
}

void WrongFilesAreRefusedTest::noticesBitFlips()
{
    const Folder folder;
    {
        auto shop = ShopFile::create(folder.file(), smallShop());
        for (std::uint32_t i = 10; i < 40; ++i)
            QVERIFY(shop->append(
                        {move(i, 1, i % 2 ? "A1" : "trailer-1", i % 2 ? "trailer-1" : "A1")}) ||
                    i % 2 == 0);
    }
    const auto good = bytesOf(folder.file());
    const auto opened = ShopFile::open(folder.file(), OpenMode::ReadOnly);
    const auto original = opened->movements().value();
    std::mt19937 random(77);
    int flips = 0;
    int noticed = 0;
    for (; flips < 150; ++flips) {
        auto bad = good;
        const auto at = static_cast<qsizetype>(random() % static_cast<unsigned>(bad.size()));
        bad[at] = static_cast<char>(bad[at] ^ (1 << random() % 8));
        writeBytes(folder.file("flipped"), bad);
        const auto said = ShopFile::verify(folder.file("flipped"));
        const bool whole = said && said->whole;
        noticed += whole ? 0 : 1;
        if (!whole)
            continue;
        // Not noticed: then it harmed nothing, as all movements read as they were.
        const auto shop = ShopFile::open(folder.file("flipped"), OpenMode::ReadOnly);
        QVERIFY(shop);
        const auto movements = shop->movements();
        QVERIFY(movements);
        QCOMPARE(movements->size(), original.size());
        for (std::size_t i = 0; i < original.size(); ++i) {
            QVERIFY((*movements)[i].id == original[i].id);
            QCOMPARE((*movements)[i].quantity, original[i].quantity);
            QCOMPARE((*movements)[i].value, original[i].value);
        }
    }
    QVERIFY2(noticed > 12, qPrintable(QString::number(noticed)));
}

void WrongFilesAreRefusedTest::noticesTruncation()
{
    const Folder folder;
    QVERIFY(ShopFile::create(folder.file(), smallShop()));
    const auto good = bytesOf(folder.file());
    for (const double share : {0.1, 0.5, 0.9, 0.99}) {
        writeBytes(folder.file("cut"),
                   good.left(static_cast<qsizetype>(share * double(good.size()))));
        QVERIFY(!ShopFile::open(folder.file("cut"), OpenMode::ReadWrite));
    }
}

void WrongFilesAreRefusedTest::writesNothingIntoDamage_data()
{
    QTest::addColumn<QByteArray>("sql");
    // Both as another program may do it, which knows nothing of what it leaves behind.
    QTest::newRow("an index that lacks a row") << QByteArray(
        "PRAGMA writable_schema = ON; CREATE TABLE other (id BLOB PRIMARY KEY, part TEXT);"
        "UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name = "
        "'sqlite_autoindex_other_1') WHERE name = 'movement_part'");
    QTest::newRow("a journal without its last entry")
        << QByteArray("DROP TRIGGER movement_remains; DELETE FROM movement WHERE sequence = 3");
}

void WrongFilesAreRefusedTest::writesNothingIntoDamage()
{
    QFETCH(QByteArray, sql);
    const Folder folder;
    {
        auto shop = ShopFile::create(folder.file(), smallShop());
        QVERIFY(shop->append({move(2, 1, "A1", "car-1"), move(3, 1, "A1", "car-1")}));
    }
    QProcess::execute(QStringLiteral("sqlite3"),
                      {QString::fromStdString(folder.file().string()), QString::fromUtf8(sql)});
    const auto before = bytesOf(folder.file());
    {
        // What it holds is seen; nothing is written, however often it is tried and opened.
        auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
        QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
        QVERIFY(!shop->ledger()->balances().empty());
        auto second = ShopFile::open(folder.file(), OpenMode::ReadWrite);
        for (auto *each : {&shop, &second, &shop}) {
            const auto written = (*each)->append({move(4, 1, "A1", "car-1")});
            QVERIFY(!written);
            QVERIFY2(written.error().sentence().find("is damaged") != std::string::npos,
                     written.error().sentence().c_str());
            QVERIFY(!(*each)->putDocument("a.csv", "part\n", "test", 1));
        }
    }
    QCOMPARE(bytesOf(folder.file()), before);
}

void WrongFilesAreRefusedTest::keepsWhatWasAcknowledgedWhenKilled()
{
    const Folder folder;
    QVERIFY(ShopFile::create(folder.file(), smallShop()));
    std::uint32_t next = 1000;
    int acknowledgedInAll = 0;
    for (int round = 0; round < 15; ++round) {
        int channel[2];
        QCOMPARE(pipe(channel), 0);
        const pid_t child = fork();
        if (child == 0) { // Moves to and fro, and says each movement that came back.
            auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
            for (std::uint32_t number = next; shop; ++number) {
                const bool out = number % 2 == 0;
                if (shop->append({move(number, 1, out ? "A1" : "car-1", out ? "car-1" : "A1")}) &&
                    write(channel[1], &number, sizeof number) != sizeof number)
                    break;
            }
            _exit(1);
        }
        close(channel[1]);
        std::vector<std::uint32_t> acknowledged;
        std::uint32_t first = 0; // Every other round it is killed while it opens the file, perhaps.
        if (round % 2 == 0 && read(channel[0], &first, sizeof first) == sizeof first)
            acknowledged.push_back(first);
        usleep(static_cast<useconds_t>(20'000 + 7'000 * round));
        kill(child, SIGKILL);
        waitpid(child, nullptr, 0);
        for (std::uint32_t number = 0; read(channel[0], &number, sizeof number) == sizeof number;)
            acknowledged.push_back(number);
        close(channel[0]);
        const auto said = ShopFile::verify(folder.file());
        QVERIFY2(said && said->whole, said ? "not whole" : said.error().sentence().c_str());
        const auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
        std::set<MovementId> there;
        const auto journal = shop->movements();
        for (const auto &movement : *journal)
            there.insert(movement.id);
        for (const auto number : acknowledged)
            QVERIFY2(there.contains(idNumber(number)), "an acknowledged movement is lost");
        acknowledgedInAll += static_cast<int>(acknowledged.size());
        next += 100'000;
    }
    QVERIFY2(acknowledgedInAll >= 8, qPrintable(QString::number(acknowledgedInAll)));
}

QTEST_GUILESS_MAIN(WrongFilesAreRefusedTest)
#include "tst_wrong_files_are_refused.moc"
