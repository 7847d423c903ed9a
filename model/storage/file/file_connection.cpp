// SPDX-License-Identifier: MIT

#include "model/storage/file/file_connection.h"

#include "model/storage/file/examination.h"
#include "model/storage/file/left_begun.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/backup.h"
#include "model/storage/upkeep/migration.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>

#include <unistd.h>

namespace flarestock {

namespace {

bool mayWrite(const std::filesystem::path &path)
{
    return ::access(path.c_str(), W_OK) == 0;
}

void throwUnlessMayWrite(const std::filesystem::path &path, FileConnection::Use use)
{
    if (use == FileConnection::Use::Read)
        return;
    if (use == FileConnection::Use::Write && !mayWrite(path))
        throw StorageFailure{{path.string(), "may only be read",
                              "Check who may write it, or copy it to a folder of yours."}};
    // SQLite keeps its log beside the file.
    if (!mayWrite(path.parent_path() / "."))
        throw StorageFailure{{path.string(), "cannot be written: its folder may only be read",
                              "Check who may write there, or copy the file to a folder of yours."}};
}

/// What is read in a folder that may not be written has no log beside it, and none can be made.
bool isImmutable(const std::filesystem::path &path, FileConnection::Use use)
{
    std::error_code wrong;
    return use == FileConnection::Use::Read && !mayWrite(path.parent_path() / ".") &&
           !std::filesystem::exists(path.string() + "-wal", wrong);
}

/// The file as an address (sqlite.org/uri.html), so that no letter of its name means something.
QString addressOf(const std::filesystem::path &path, FileConnection::Use use)
{
    const auto absolute = std::filesystem::absolute(path);
    const QUrl url = QUrl::fromLocalFile(QString::fromStdString(absolute.string()));
    QString address = url.toString(QUrl::FullyEncoded);
    switch (use) {
    case FileConnection::Use::Make:
        return address + QStringLiteral("?mode=rwc");
    case FileConnection::Use::Write:
        return address + QStringLiteral("?mode=rw");
    case FileConnection::Use::Read:
        break;
    }
    return address + (isImmutable(path, use) ? QStringLiteral("?mode=ro&immutable=1")
                                             : QStringLiteral("?mode=ro"));
}

struct Said {
    const char *wrong;
    const char *remedy;
};

constexpr int Full = 13;
/// Its memory beside the file cannot grow: "may indicate that the volume is out of space".
constexpr int NoRoomToShare = 4874;

/// SQLite's result codes (sqlite.org/rescode.html), in our words.
Said wordsFor(int code)
{
    switch (code == NoRoomToShare ? Full : code & 0xff) {
    case 5:
    case 6:
        return {"is locked by another program", "Close it there, then try again."};
    case 8:
        return {"cannot be written",
                "It is read-only, or its folder is: check who may write there."};
    case 10:
        return {"could not be read or written: the disk reported an error",
                "Nothing was confirmed; check the disk, then run flarestock verify."};
    case 11:
    case 26:
        return {"is damaged", "Do not write to it: keep it aside and restore the newest backup."};
    case Full:
        return {"could not be written: the disk is full",
                "Nothing was changed; make room and try again."};
    case 14:
        return {"cannot be opened", "Check the folder, and who may read it."};
    case 19:
        return {"refused the change", "What is written in the journal stays; make a new movement."};
    default:
        return {"could not be read or written", "Run flarestock verify on it."};
    }
}

} // namespace

FileConnection::FileConnection(const std::filesystem::path &path, Use use)
    : ShopConnection(path.string(), "QSQLITE", Rows::OneByOne), m_path(path), m_use(use)
{
    if (use != Use::Make)
        m_openHere.emplace(path);
    throwUnlessMayWrite(path, use);
    database().setDatabaseName(addressOf(path, use));
    QString options = QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=5000");
    if (use == Use::Read)
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    database().setConnectOptions(options);
    try {
        if (!database().open())
            FileConnection::fail(database().lastError());
        applySettings();
    } catch (...) {
        close(); // Before it is no longer open here.
        throw;
    }
}

FileConnection::~FileConnection()
{
    close();
}

void FileConnection::wholly(const std::function<void()> &action)
{
    throwIfStopped();
    throwIfDamaged();
    endWhatIsLeft(handle());
    run("BEGIN IMMEDIATE");
    m_writes = true;
    try {
        action();
        run("COMMIT");
        m_writes = false;
    } catch (const StorageFailure &failure) {
        rollBack();
        stopAfter(failure);
        throw;
    } catch (...) {
        rollBack();
        throw;
    }
    m_looking.reset();
}

void FileConnection::atOneMoment(const std::function<void()> &look) const
{
    if (m_writes)
        return look();
    endWhatIsLeft(handle());
    run("BEGIN");
    try {
        look();
    } catch (...) {
        QSqlQuery(database()).exec(QStringLiteral("ROLLBACK"));
        throw;
    }
    // Nothing was written: it also ends well where SQLite will not commit for damage that it met.
    if (QSqlQuery end(database()); !end.exec(QStringLiteral("COMMIT")))
        end.exec(QStringLiteral("ROLLBACK"));
}

ChainEnd FileConnection::chainEnd()
{
    std::optional<ChainEnd> end;
    runAgain(sql::SelectNewestReplica, {}, [&end](const QSqlQuery &query) {
        end = {query.value(0).toLongLong(), query.value(1).toByteArray(),
               query.value(2).toLongLong(), query.value(3).toLongLong(),
               query.value(4).toByteArray()};
    });
    if (!end)
        throw StorageFailure{
            {name(), "is a shop file that was never finished", "Make it again, or use a backup."}};
    return *end;
}

bool FileConnection::hasNews()
{
    const auto before = m_dataVersion;
    m_dataVersion = one("PRAGMA data_version").toLongLong();
    return m_dataVersion != before;
}

void FileConnection::examine(const std::function<void(const std::string &)> &wrong) const
{
    examinePages(*this, wrong);
    examineSchema(*this, versionOf(*this), wrong);
}

void FileConnection::copyTo(const std::filesystem::path &file) const
{
    makeBackup(*this, file);
}

void FileConnection::writeOnlyAfter(std::function<void(const FileConnection &)> check)
{
    m_check = std::move(check);
}

void FileConnection::throwIfDamaged()
{
    if (!m_check || !m_openHere || m_openHere->isChecked())
        return;
    m_check(*this);
    m_openHere->setChecked();
}

void FileConnection::keepUntilWritten(std::unique_ptr<FileConnection> looking)
{
    m_looking = std::move(looking);
}

void FileConnection::keepAlong(std::shared_ptr<const void> behind)
{
    m_behind = std::move(behind);
}

sqlite3 *FileConnection::handle() const
{
    // As the documentation of QSqlDriver::handle() says.
    const QVariant handle = database().driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        throw StorageFailure{{m_path.string(), "cannot be reached", "Install Qt's SQLite driver."}};
    return *static_cast<sqlite3 *const *>(handle.constData());
}

void FileConnection::rollBack() noexcept
{
    m_writes = false;
    QSqlQuery(database()).exec(QStringLiteral("ROLLBACK"));
}

void FileConnection::stopAfter(const StorageFailure &failure) noexcept
{
    switch (failure.nativeCode & 0xff) { // SQLITE_IOERR, CORRUPT, FULL, NOTADB
    case 10:
    case 11:
    case 13:
    case 26:
        m_stopped = true;
        break;
    default:
        break;
    }
}

void FileConnection::throwIfStopped() const
{
    if (m_stopped)
        throw StorageFailure{{m_path.string(), "is not written any more since writing it failed",
                              "Close it, run flarestock verify on it, then open it again."}};
}

void FileConnection::fail(const QSqlError &error) const
{
    bool isNumber = false;
    const int code = error.nativeErrorCode().toInt(&isNumber);
    const auto [wrong, remedy] = wordsFor(isNumber ? code : 0);
    std::string words = wrong;
    // What the triggers of the schema say is meant for people.
    if ((code & 0xff) == 19 && !error.databaseText().isEmpty())
        words += " (" + error.databaseText().toStdString() + ")";
    throw StorageFailure{{m_path.string(), words, remedy}, isNumber ? code : 0};
}

} // namespace flarestock
