// SPDX-License-Identifier: MIT
//
// One shop file and several who have it open: within one process nobody drops another's locks;
// verify sees one moment while others write; who finds it locked waits, and then says so.

#include "other_process.h"
#include "shop_for_tests.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTest>

#include <fcntl.h>
#include <set>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

/// Whether this process holds SQLite's shared lock on the file, as another process sees it: 510
/// bytes behind the first two of the lock page (sqlite.org/fileformat2.html, 1.5, "The Lock-Byte
/// Page": bytes 1073741824 to 1073742335).
bool holdsItsLock(const std::filesystem::path &path)
{
    const pid_t here = ::getpid();
    const OtherProcess other([&](const OtherProcess::Say &say) {
        struct flock lock {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        lock.l_start = 1'073'741'826;
        lock.l_len = 510;
        const int file = ::open(path.c_str(), O_RDWR);
        const bool asked = file >= 0 && ::fcntl(file, F_GETLK, &lock) == 0;
        say(!asked ? "cannot ask" : lock.l_type != F_UNLCK && lock.l_pid == here ? "held" : "free");
    });
    return other.said() == "held";
}

/// A lock of another program on the file, for as long as this lives.
class LockedElsewhere {
public:
    /// `milliseconds`: how long at most.
    LockedElsewhere(const std::filesystem::path &path, int milliseconds)
        : m_other([&](const OtherProcess::Say &say) {
              auto raw = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"));
              raw.setDatabaseName(QString::fromStdString(path.string()));
              QSqlQuery query(raw.open() ? raw : QSqlDatabase());
              say(query.exec(QStringLiteral("BEGIN IMMEDIATE")) ? "locked" : "failed");
              ::usleep(static_cast<useconds_t>(milliseconds) * 1000);
              query.exec(QStringLiteral("ROLLBACK"));
          })
    {
        m_locked = m_other.said() == "locked";
    }
    [[nodiscard]] bool isLocked() const { return m_locked; }

private:
    OtherProcess m_other;
    bool m_locked = false;
};

/// An action of two movements, by way of the trailer: every second one brings the piece back.
bool moveByTheTrailer(ShopFile &shop, std::uint32_t action)
{
    const bool out = action % 2 == 0;
    return shop
        .append({move(1000 + 2 * action, 1, out ? "A1" : "car-1", "trailer-1"),
                 move(1001 + 2 * action, 1, "trailer-1", out ? "car-1" : "A1")})
        .has_value();
}

} // namespace

class ShopFileAmongOthers : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keepsItsLocksWhenItIsOpenedOnceMore();
    void keepsItsLogWhenOthersClose();
    void isVerifiedAtOneMoment();
    void isReadWhileAnotherWrites();
    void saysThatItIsLocked();
    void waitsForAShortLock();
};

void ShopFileAmongOthers::keepsItsLocksWhenItIsOpenedOnceMore()
{
    const Folder folder;
    const auto path = folder.file();
    auto shop = ShopFile::create(path, smallShop());
    QVERIFY(shop->append({move(2, 1, "A1", "car-1")}));
    QVERIFY(holdsItsLock(path));
    for (const auto mode : {OpenMode::ReadOnly, OpenMode::ReadWrite}) {
        {
            const auto second = ShopFile::open(path, mode);
            QVERIFY(second && second->movements()->size() == 2);
            QVERIFY(holdsItsLock(path));
        }
        QVERIFY(holdsItsLock(path));
    }
    QVERIFY(ShopFile::verify(path)->whole);
    QVERIFY(holdsItsLock(path));
    // By another of its names.
    std::filesystem::create_symlink(path, folder.file("other-name"));
    QVERIFY(ShopFile::open(folder.file("other-name"), OpenMode::ReadOnly));
    QVERIFY(ShopFile::open(path.parent_path() / "." / path.filename(), OpenMode::ReadOnly));
    QVERIFY(!ShopFile::create(path, smallShop()));
    QVERIFY(holdsItsLock(path));
    // The test can tell: closing a file by plain means is what drops them.
    static_cast<void>(bytesOf(path));
    QVERIFY(!holdsItsLock(path));
}

void ShopFileAmongOthers::keepsItsLogWhenOthersClose()
{
    // Without the lock the last other one who closes takes SQLite's log away from under this one,
    // and with it what is written then.
    const Folder folder;
    const auto path = folder.file();
    auto shop = ShopFile::create(path, smallShop());
    QVERIFY(shop->append({move(2, 1, "A1", "car-1")}));
    QVERIFY(ShopFile::open(path, OpenMode::ReadOnly)); // And closed again.
    QProcess other;
    other.start(
        QStringLiteral("/usr/bin/sqlite3"),
        {QString::fromStdString(path.string()), QStringLiteral("SELECT count(*) FROM movement")});
    QVERIFY(other.waitForFinished());
    QCOMPARE(other.readAllStandardOutput(), QByteArray("2\n"));
    QVERIFY(std::filesystem::exists(path.string() + "-wal"));
    QVERIFY(shop->append({move(3, 1, "A1", "car-1")}));
    shop = ShopFile::open(path, OpenMode::ReadOnly);
    QCOMPARE(shop->movements()->size(), std::size_t{3});
    QVERIFY(ShopFile::verify(path)->whole);
}

void ShopFileAmongOthers::isVerifiedAtOneMoment()
{
    const Folder folder;
    const auto path = folder.file();
    {
        auto shop = ShopFile::create(path, smallShop());
        for (std::uint32_t action = 0; action < 200; ++action)
            QVERIFY(moveByTheTrailer(*shop, action));
    }
    const OtherProcess writer([&](const OtherProcess::Say &say) {
        auto shop = ShopFile::open(path, OpenMode::ReadWrite);
        say(shop ? "begun" : "failed");
        for (std::uint32_t action = 200; shop && moveByTheTrailer(*shop, action);)
            ++action;
    });
    QCOMPARE(writer.said(), std::string("begun"));
    std::set<std::int64_t> counts;
    QElapsedTimer timer;
    timer.start();
    // The writer is seen at ten different moments; every one of them is whole.
    while (counts.size() < 10 && timer.elapsed() < 60'000) {
        const auto said = ShopFile::verify(path);
        QVERIFY2(said, said ? "" : said.error().sentence().c_str());
        QVERIFY2(said->whole, said->whole ? "" : said->problems.front().c_str());
        QCOMPARE(said->movements % 2, 1); // The opening and whole actions of two.
        counts.insert(said->movements);
    }
    QVERIFY2(counts.size() >= 10, qPrintable(QString::number(counts.size())));
}

void ShopFileAmongOthers::isReadWhileAnotherWrites()
{
    const Folder folder;
    QVERIFY(ShopFile::create(folder.file(), smallShop()));
    const LockedElsewhere locked(folder.file(), 60'000);
    QVERIFY(locked.isLocked());
    QElapsedTimer timer;
    timer.start();
    const auto shop = ShopFile::open(folder.file(), OpenMode::ReadOnly);
    QVERIFY(shop && shop->ledger());
    QVERIFY(ShopFile::verify(folder.file())->whole);
    QVERIFY2(timer.elapsed() < 3000, qPrintable(QString::number(timer.elapsed())));
}

void ShopFileAmongOthers::saysThatItIsLocked()
{
    const Folder folder;
    QVERIFY(ShopFile::create(folder.file(), smallShop()));
    const LockedElsewhere locked(folder.file(), 60'000);
    QVERIFY(locked.isLocked());
    auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    QElapsedTimer timer;
    timer.start();
    const auto refused = shop->append({move(2, 1, "A1", "car-1")});
    const auto waited = timer.elapsed();
    QVERIFY(!refused);
    const std::string said = refused.error().sentence();
    QVERIFY2(said.starts_with(folder.file().string() + ": is locked by another program. "
                                                       "Close it there, then try again."),
             said.c_str());
    // It waits five seconds, as a person does, and no longer.
    QVERIFY2(waited > 3000 && waited < 15'000, qPrintable(QString::number(waited)));
    QCOMPARE(shop->movements()->size(), std::size_t{1});
}

void ShopFileAmongOthers::waitsForAShortLock()
{
    const Folder folder;
    QVERIFY(ShopFile::create(folder.file(), smallShop()));
    const LockedElsewhere locked(folder.file(), 700);
    QVERIFY(locked.isLocked());
    auto shop = ShopFile::open(folder.file(), OpenMode::ReadWrite);
    const auto done = shop->append({move(2, 1, "A1", "car-1")});
    QVERIFY2(done, done ? "" : done.error().sentence().c_str());
    QCOMPARE(shop->movements()->size(), std::size_t{2});
}

QTEST_GUILESS_MAIN(ShopFileAmongOthers)
#include "tst_shop_file_among_others.moc"
