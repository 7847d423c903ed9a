// SPDX-License-Identifier: MIT
//
// A shop keeps the last ten backups of itself and the last of each month, says which is the newest
// that is whole, and a shop made out of one goes on as a replica of its own.

#include "model/storage/upkeep/kept_backups.h"
#include "tests/storage/shop_for_tests.h"

#include <QDateTime>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

std::int64_t at(const char *utc)
{
    auto time = QDateTime::fromString(QString::fromLatin1(utc), Qt::ISODate);
    time.setTimeSpec(Qt::UTC);
    return time.toMSecsSinceEpoch();
}

std::vector<std::int64_t> numbersOf(const std::vector<KeptBackup> &backups)
{
    std::vector<std::int64_t> numbers;
    for (const auto &backup : backups)
        numbers.push_back(backup.number);
    return numbers;
}

} // namespace

class BackupsAreKeptByNumber : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLastTenAndOneAMonth();
    void aWrongClockLosesNone();
    void otherFilesAreNotTouched();
    void theNewestWholeOneIsNamed();
    void oneIsDueAfterADay();
    void aRestoredShopGoesOnAsItsOwn();
    void whatIsDamagedIsNotKept();
};

void BackupsAreKeptByNumber::theLastTenAndOneAMonth()
{
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), smallShop()).value();
    QVERIFY(keptBackups(folder.file()).empty());
    // Three a month from January to June: numbers 1 to 18.
    for (int month = 1; month <= 6; ++month) {
        for (const char *day : {"04", "17", "28"}) {
            const auto time = QStringLiteral("2026-%1-%2T09:30:00")
                                  .arg(month, 2, 10, QLatin1Char('0'))
                                  .arg(QLatin1String(day));
            const auto kept = keepBackup(shop, at(time.toLatin1().constData()));
            QVERIFY2(kept, kept ? "" : kept.error().sentence().c_str());
            QVERIFY(kept->found.whole);
        }
    }
    // 9 to 18 are the newest ten; 3 and 6 the last of January and of February.
    const auto kept = keptBackups(folder.file());
    QCOMPARE(numbersOf(kept),
             (std::vector<std::int64_t>{18, 17, 16, 15, 14, 13, 12, 11, 10, 9, 6, 3}));
    QCOMPARE(kept.back().at, at("2026-01-28T09:30:00"));
    for (const auto &backup : kept)
        QVERIFY(ShopFile::verify(backup.path).value().whole);
}

void BackupsAreKeptByNumber::aWrongClockLosesNone()
{
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), smallShop()).value();
    // Ten years ahead, then right again: the number says which is newer.
    QVERIFY(keepBackup(shop, at("2036-05-01T08:00:00")));
    QVERIFY(keepBackup(shop, at("2026-05-01T08:00:00")));
    const auto kept = keptBackups(folder.file());
    QCOMPARE(numbersOf(kept), (std::vector<std::int64_t>{2, 1}));
    QCOMPARE(kept.front().at, at("2026-05-01T08:00:00"));
    QCOMPARE(newestGoodBackup(folder.file())->backup.number, std::int64_t{2});
}

void BackupsAreKeptByNumber::otherFilesAreNotTouched()
{
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), smallShop()).value();
    QVERIFY(keepBackup(shop, at("2026-05-01T08:00:00")));
    const auto inside = folder.file().string() + ".backups/";
    const std::vector<std::string> others{"letter.txt", "backup-0001.flarestock",
                                          "backup-0001-2020-13-45T99-99-99Z.flarestock",
                                          "old backup-0000-2020-01-01T00-00-00Z.flarestock"};
    for (const auto &other : others)
        writeBytes(inside + other, "mine");
    for (int n = 0; n < 12; ++n)
        QVERIFY(keepBackup(shop, at("2026-05-02T08:00:00")));
    for (const auto &other : others)
        QCOMPARE(bytesOf(inside + other), QByteArray("mine"));
    QCOMPARE(keptBackups(folder.file()).size(), NewestKept);
}

void BackupsAreKeptByNumber::theNewestWholeOneIsNamed()
{
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), smallShop()).value();
    QVERIFY(!newestGoodBackup(folder.file()));
    const auto first = keepBackup(shop, at("2026-05-01T08:00:00")).value();
    QVERIFY(shop.append({move(2, 1, "A1", "car-1")}));
    const auto second = keepBackup(shop, at("2026-05-02T08:00:00")).value();
    QCOMPARE(newestGoodBackup(folder.file())->backup.path, second.backup.path);
    QCOMPARE(newestGoodBackup(folder.file())->found.movements, std::int64_t{2});

    auto bytes = bytesOf(second.backup.path);
    bytes[bytes.size() / 2] = static_cast<char>(bytes[bytes.size() / 2] ^ 0x40);
    bytes.replace("AD-8-10", "AD-8-11");
    writeBytes(second.backup.path, bytes);
    QCOMPARE(newestGoodBackup(folder.file())->backup.path, first.backup.path);
    writeBytes(first.backup.path, "gone");
    QVERIFY(!newestGoodBackup(folder.file()));
}

void BackupsAreKeptByNumber::oneIsDueAfterADay()
{
    const std::int64_t taken = at("2026-05-01T08:00:00");
    const std::vector<KeptBackup> one{{"x", 1, taken}};
    QVERIFY(isBackupDue({}, taken));
    QVERIFY(!isBackupDue(one, taken));
    QVERIFY(!isBackupDue(one, taken + 86'400'000));
    QVERIFY(isBackupDue(one, taken + 86'400'001));
    QVERIFY(isBackupDue(one, taken - 1)); // Taken tomorrow: a clock was wrong.
}

void BackupsAreKeptByNumber::aRestoredShopGoesOnAsItsOwn()
{
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), smallShop()).value();
    const auto kept = keepBackup(shop, at("2026-05-01T08:00:00")).value();
    const auto before = bytesOf(kept.backup.path);
    const auto again = folder.file("again.flarestock");
    QVERIFY(restore(kept.backup.path, again).value().whole);
    QCOMPARE(bytesOf(kept.backup.path), before);

    // Both go on; each entry of either has a replica and a number that the other does not have.
    auto restored = ShopFile::open(again, OpenMode::ReadWrite).value();
    QVERIFY(restored.append({move(2, 1, "A1", "car-1")}));
    QVERIFY(shop.append({move(3, 1, "A1", "car-1")}));
    const auto heads = ShopFile::verify(folder.file()).value().heads;
    const auto others = ShopFile::verify(again).value();
    QVERIFY(others.whole);
    QCOMPARE(heads.size(), std::size_t{1});
    QVERIFY(others.heads.size() > 1);
    const std::string own = others.heads.back();
    QCOMPARE(QString::fromStdString(own).section(QLatin1Char(':'), 1, 1), QStringLiteral("1"));
    QVERIFY(own.substr(0, 32) != heads.front().substr(0, 32));
    // What was there before stands under the shop's own head.
    QCOMPARE(QString::fromStdString(others.heads.front()).section(QLatin1Char(':'), 1, 1),
             QStringLiteral("1"));
    QVERIFY(!restore(kept.backup.path, again)); // Never in the place of a file.
}

void BackupsAreKeptByNumber::whatIsDamagedIsNotKept()
{
    const Folder folder;
    {
        auto made = ShopFile::create(folder.file(), smallShop()).value();
        QVERIFY(keepBackup(made, at("2026-05-01T08:00:00")));
    }
    auto bytes = bytesOf(folder.file());
    QVERIFY(bytes.contains("AD-8-10"));
    bytes.replace("AD-8-10", "AD-8-11");
    writeBytes(folder.file(), bytes);
    auto shop = ShopFile::open(folder.file(), OpenMode::ReadOnly);
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    const auto refused = keepBackup(*shop, at("2026-05-02T08:00:00"));
    QVERIFY(!refused);
    QVERIFY(refused.error().sentence().find("not whole") != std::string::npos);
    QCOMPARE(numbersOf(keptBackups(folder.file())), (std::vector<std::int64_t>{1}));
    QVERIFY(!restore(folder.file(), folder.file("again.flarestock")));
}

QTEST_APPLESS_MAIN(BackupsAreKeptByNumber)
#include "tst_backups_are_kept_by_number.moc"
