// SPDX-License-Identifier: MIT
//
// A shop is made whole or not at all, also where its maker is killed meanwhile; and a shop file in
// a folder that may only be read is read there, and nothing is left beside it.

#include "other_process.h"
#include "shop_for_tests.h"

#include <QElapsedTimer>
#include <QTest>

#include <fcntl.h>
#include <sys/stat.h>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr std::uint32_t OpeningMovements = 800;

NewShop largeShop()
{
    NewShop shop = smallShop();
    for (std::uint32_t number = 2; number <= OpeningMovements; ++number)
        shop.opening.push_back(move(number, 1, "opening", "A1", number));
    return shop;
}

/// The names in a folder, the file's own left out.
std::vector<std::string> besides(const std::filesystem::path &path)
{
    std::vector<std::string> names;
    for (const auto &entry : std::filesystem::directory_iterator(path.parent_path()))
        if (entry.path() != path)
            names.push_back(entry.path().filename().string());
    return names;
}

/// As somebody for whom access rights count: root becomes nobody (65534 in Debian's base-passwd).
void becomeOrdinary()
{
    if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0))
        ::_exit(3);
}

/// A folder with a shop that may only be read, both; it may be removed again afterwards.
struct ReadOnlyFolder {
    Folder folder;
    ReadOnlyFolder()
    {
        if (!ShopFile::create(folder.file(), smallShop()))
            qFatal("the shop cannot be made");
    }
    void close() const
    {
        ::chmod(folder.file().c_str(), 0444);
        ::chmod(folder.file().parent_path().c_str(), 0555);
    }
    ~ReadOnlyFolder() { ::chmod(folder.file().parent_path().c_str(), 0755); }
    ReadOnlyFolder(const ReadOnlyFolder &) = delete;
    ReadOnlyFolder &operator=(const ReadOnlyFolder &) = delete;
};

/// What somebody is told who opens it and reads all: "read 1", or the sentence.
std::string toldOnReading(const std::filesystem::path &path)
{
    const OtherProcess reader([&](const OtherProcess::Say &say) {
        becomeOrdinary();
        if (::access(path.parent_path().c_str(), W_OK) == 0)
            return say("may write there");
        const auto shop = ShopFile::open(path, OpenMode::ReadOnly);
        const auto movements = shop ? shop->movements() : tl::unexpected(shop.error());
        const auto verified = ShopFile::verify(path);
        if (!movements)
            return say(movements.error().sentence());
        if (!verified || !verified->whole)
            return say("is not whole");
        say("read " + std::to_string(movements->size()));
    });
    return reader.saidToItsEnd();
}

} // namespace

class ShopIsMadeWholeOrNot : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whenItsMakerIsKilled();
    void whenAMovementIsRefused();
    void isReadWhereNobodyMayWrite();
    void isNotWrittenWhereNobodyMayWrite();
    void isNotReadWithoutItsLog();
};

void ShopIsMadeWholeOrNot::whenItsMakerIsKilled()
{
    const NewShop begun = largeShop();
    qint64 whole = 0; // How long making takes, in µs.
    {
        const Folder folder;
        QElapsedTimer timer;
        timer.start();
        QVERIFY(ShopFile::create(folder.file(), begun));
        whole = timer.nsecsElapsed() / 1000;
    }
    int halfWritten = 0;
    int madeAnyway = 0;
    constexpr int Rounds = 12;
    for (int round = 0; round <= Rounds; ++round) {
        const Folder folder;
        OtherProcess maker([&](const OtherProcess::Say &say) {
            say(ShopFile::create(folder.file(), begun) ? "made" : "failed");
            ::pause();
        });
        while (besides(folder.file()).empty() && !std::filesystem::exists(folder.file()))
            ::usleep(100); // Until it writes something.
        if (round < Rounds)
            ::usleep(static_cast<useconds_t>(whole * round / Rounds));
        else
            QCOMPARE(maker.said(), std::string("made"));
        maker.kill();
        if (std::filesystem::exists(folder.file())) {
            ++madeAnyway;
            const auto said = ShopFile::verify(folder.file());
            QVERIFY2(said && said->whole, said ? "not whole" : said.error().sentence().c_str());
            QCOMPARE(said->movements, OpeningMovements);
            continue;
        }
        halfWritten += besides(folder.file()).empty() ? 0 : 1;
        // What the killed one left does not keep the next from making it.
        QVERIFY(ShopFile::create(folder.file(), smallShop()));
        QVERIFY(ShopFile::verify(folder.file())->whole);
    }
    qInfo("of %d: %d killed while writing, %d made", Rounds + 1, halfWritten, madeAnyway);
    QVERIFY(halfWritten >= 3);
    QVERIFY(madeAnyway >= 1);
}

void ShopIsMadeWholeOrNot::whenAMovementIsRefused()
{
    const Folder folder;
    NewShop begun = largeShop();
    begun.opening.push_back(move(9999, 1, "car-1", "nowhere"));
    const auto refused = ShopFile::create(folder.file(), begun);
    QVERIFY(!refused);
    QVERIFY2(refused.error().sentence().find("a place that the shop does not have") !=
                 std::string::npos,
             refused.error().sentence().c_str());
    QVERIFY(!std::filesystem::exists(folder.file()));
    QVERIFY(besides(folder.file()).empty());
}

void ShopIsMadeWholeOrNot::isReadWhereNobodyMayWrite()
{
    const ReadOnlyFolder shop;
    shop.close();
    const QByteArray before = bytesOf(shop.folder.file());
    QCOMPARE(toldOnReading(shop.folder.file()), std::string("read 1"));
    QVERIFY(besides(shop.folder.file()).empty());
    QVERIFY(bytesOf(shop.folder.file()) == before);
}

void ShopIsMadeWholeOrNot::isNotWrittenWhereNobodyMayWrite()
{
    const ReadOnlyFolder shop;
    shop.close();
    const auto told = [&shop](const auto &attempt) {
        const OtherProcess writer([&](const OtherProcess::Say &say) {
            becomeOrdinary();
            const auto done = attempt(shop.folder.file());
            say(done ? "done" : done.error().sentence());
        });
        return writer.saidToItsEnd();
    };
    const auto opens = [](const std::filesystem::path &path) {
        return ShopFile::open(path, OpenMode::ReadWrite);
    };
    const std::string path = shop.folder.file().string();
    QCOMPARE(told(opens), path + ": may only be read. Check who may write it, or copy it to a "
                                 "folder of yours.");
    ::chmod(path.c_str(), 0666); // The folder alone.
    QCOMPARE(told(opens), path + ": cannot be written: its folder may only be read. Check who may "
                                 "write there, or copy the file to a folder of yours.");
    const std::string other = told([](const std::filesystem::path &there) {
        return ShopFile::create(there.parent_path() / "new.flarestock", smallShop());
    });
    QVERIFY2(other.find("new.flarestock: cannot be written") != std::string::npos, other.c_str());
    QVERIFY(besides(shop.folder.file()).empty());
}

void ShopIsMadeWholeOrNot::isNotReadWithoutItsLog()
{
    // A log that waits beside it holds the newest movements: never the old state without a word.
    const ReadOnlyFolder shop;
    {
        auto open = ShopFile::open(shop.folder.file(), OpenMode::ReadWrite);
        QVERIFY(open->append({move(2, 1, "A1", "car-1")}));
        for (const char *tail : {"", "-wal"}) { // As after a crash.
            const std::string path = shop.folder.file().string() + tail;
            std::filesystem::copy_file(path, path + "-kept");
        }
    }
    for (const char *tail : {"", "-wal"}) {
        const std::string path = shop.folder.file().string() + tail;
        std::filesystem::rename(path + "-kept", path);
        ::chmod(path.c_str(), 0444);
    }
    shop.close();
    const std::string said = toldOnReading(shop.folder.file());
    QVERIFY2(said == "read 2" || said.starts_with(shop.folder.file().string() + ": "),
             said.c_str());
    QVERIFY(said != "read 1");
}

QTEST_GUILESS_MAIN(ShopIsMadeWholeOrNot)
#include "tst_shop_is_made_whole_or_not.moc"
