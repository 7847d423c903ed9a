// SPDX-License-Identifier: MIT
//
// A file of every version that there has been becomes one of this version: whole, with all that it
// held, after it was copied; or, where it is only read, it stays as it is. The files of old are
// kept as SQL text, as SQLite's shell dumps and reads it.

#include "shop_for_tests.h"

#include <QProcess>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

QByteArray run(const QString &program, const QStringList &arguments, const QByteArray &input = {})
{
    QProcess process;
    process.start(program, arguments);
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(30'000) || process.exitCode() != 0)
        return "failed: " + process.readAllStandardError() + process.errorString().toUtf8();
    return process.readAllStandardOutput();
}

/// The file of a version, made by SQLite's own shell.
bool makeOld(const std::filesystem::path &file, int version)
{
    const auto sql = bytesOf(std::filesystem::path(FLARESTOCK_SOURCE_DIR) / "tests/storage" /
                             ("shop_of_schema_" + std::to_string(version) + ".sql"));
    return run(QStringLiteral("sqlite3"), {QString::fromStdString(file.string())}, sql).isEmpty();
}

QByteArray asked(const std::filesystem::path &file, const char *sql)
{
    return run(QStringLiteral("sqlite3"),
               {QString::fromStdString(file.string()), QString::fromLatin1(sql)})
        .trimmed();
}

} // namespace

class OlderFilesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void isReadWithoutBeingChanged();
    void becomesOfThisVersionWithAllThatItHeld();
    void isCopiedBeforeAndNeverOverACopy();
    void isAllOrNothing();
    void aDamagedOneIsNotTaken();
    void goesOnInTheSameChain();
};

void OlderFilesTest::isReadWithoutBeingChanged()
{
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    const auto before = bytesOf(folder.file());
    {
        const auto shop = ShopFile::open(folder.file(), OpenMode::ReadOnly);
        QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
        QCOMPARE(shop->movements()->size(), std::size_t{5});
        QCOMPARE(shop->boxChecks()->size(), std::size_t{1});
        QCOMPARE(shop->documents()->at("shop.toml"),
                 std::string("title = \"Test shop\"\n# second\n"));
        // 10 for 74.50; one used up for 7.45, two of the rest in the trailer.
        QCOMPARE(shop->ledger()->balance({"AD-8-10", "A1", "", PieceCondition::New}).quantity, 7);
        const auto said = ShopFile::verify(folder.file());
        QVERIFY(said && said->whole);
        QCOMPARE(said->movements, 5);
    }
    QCOMPARE(bytesOf(folder.file()), before);
    QVERIFY(!std::filesystem::exists(folder.file("shop.flarestock.schema-1")));
}

void OlderFilesTest::becomesOfThisVersionWithAllThatItHeld()
{
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    const auto hashes = asked(folder.file(), "SELECT hex(hash) FROM movement ORDER BY lamport");
    const auto balances = asked(folder.file(), "SELECT * FROM balance ORDER BY 1, 2, 3, 4");
    const auto documents = asked(folder.file(), "SELECT name, version, hex(seal) FROM document");
    QVERIFY(hashes.size() > 5 * 64);
    {
        const auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
        QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
        QVERIFY(shop->settings().costing == Costing::MovingAverage);
        const auto places = shop->places();
        QCOMPARE(places->back().kind, PlaceKind::Difference);
    }
    QCOMPARE(asked(folder.file(), "PRAGMA user_version"), QByteArray("2"));
    QCOMPARE(asked(folder.file(), "SELECT hex(hash) FROM movement ORDER BY lamport"), hashes);
    QCOMPARE(asked(folder.file(), "SELECT * FROM balance ORDER BY 1, 2, 3, 4"), balances);
    QCOMPARE(asked(folder.file(), "SELECT name, version, hex(seal) FROM document"), documents);
    QCOMPARE(asked(folder.file(), "PRAGMA foreign_key_check"), QByteArray());
    const auto said = ShopFile::verify(folder.file());
    QVERIFY2(said->whole, said->whole ? "" : said->problems.front().c_str());
}

void OlderFilesTest::isCopiedBeforeAndNeverOverACopy()
{
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    writeBytes(folder.file("shop.flarestock.schema-1"), "somebody's own");
    QVERIFY(ShopFile::open(folder.file(), OpenMode::ReadWrite));
    QCOMPARE(bytesOf(folder.file("shop.flarestock.schema-1")), QByteArray("somebody's own"));
    const auto copy = folder.file("shop.flarestock.schema-1-2");
    QCOMPARE(asked(copy, "PRAGMA user_version"), QByteArray("1"));
    QVERIFY(ShopFile::verify(copy)->whole);
}

void OlderFilesTest::isAllOrNothing()
{
    // A table that stands in the way makes the last steps fail.
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    asked(folder.file(), "CREATE TABLE record (id)");
    const auto rows = asked(folder.file(), "SELECT * FROM movement ORDER BY lamport");
    QVERIFY(!ShopFile::open(folder.file(), OpenMode::ReadWrite));
    QCOMPARE(asked(folder.file(), "PRAGMA user_version"), QByteArray("1"));
    QCOMPARE(asked(folder.file(), "SELECT * FROM movement ORDER BY lamport"), rows);
    QCOMPARE(asked(folder.file(), "SELECT count(*) FROM sqlite_schema WHERE name IN ('movement_1', "
                                  "'replica_1', 'shop_1')"),
             QByteArray("0"));
}

void OlderFilesTest::aDamagedOneIsNotTaken()
{
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    asked(folder.file(), "DROP TRIGGER movement_stays; UPDATE movement SET quantity = 3 WHERE "
                         "quantity = 2");
    const auto said = ShopFile::verify(folder.file());
    QVERIFY(said && !said->whole);
    QVERIFY(!said->problems.empty());
}

void OlderFilesTest::goesOnInTheSameChain()
{
    const Folder folder;
    QVERIFY(makeOld(folder.file(), 1));
    {
        auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
        QVERIFY(shop->append({move(6, 1, "A1", "trailer-1")}));
        const auto again = shop->append({move(3, 2, "A1", "trailer-1")});
        QVERIFY(again && again->front().already); // Done before the file was brought up.
    }
    QCOMPARE(asked(folder.file(), "SELECT max(sequence), count(*) FROM movement"),
             QByteArray("6|6"));
    QVERIFY(ShopFile::verify(folder.file())->whole);
}

QTEST_GUILESS_MAIN(OlderFilesTest)
#include "tst_older_files_become_of_this_version.moc"
