// SPDX-License-Identifier: MIT

#include "model/storage/shop_connection.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>

#include <array>
#include <atomic>
#include <unistd.h>

namespace flarestock {

namespace {

QString sqlText(std::string_view sql)
{
    return QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size()));
}

QString nextName()
{
    static std::atomic<int> count{0};
    return QStringLiteral("flarestock-shop-%1").arg(++count);
}

std::filesystem::path folderOf(const std::filesystem::path &path)
{
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
}

bool mayWrite(const std::filesystem::path &path)
{
    return ::access(path.c_str(), W_OK) == 0;
}

void throwUnlessMayWrite(const std::filesystem::path &path, ShopConnection::Use use)
{
    if (use == ShopConnection::Use::Read)
        return;
    if (use == ShopConnection::Use::Write && !mayWrite(path))
        throw StorageFailure{{path.string(), "may only be read",
                              "Check who may write it, or copy it to a folder of yours."}};
    // SQLite keeps its log beside the file.
    if (!mayWrite(folderOf(path)))
        throw StorageFailure{{path.string(), "cannot be written: its folder may only be read",
                              "Check who may write there, or copy the file to a folder of yours."}};
}

/// What is read in a folder that may not be written has no log beside it, and none can be made.
bool isImmutable(const std::filesystem::path &path, ShopConnection::Use use)
{
    std::error_code wrong;
    return use == ShopConnection::Use::Read && !mayWrite(folderOf(path)) &&
           !std::filesystem::exists(path.string() + "-wal", wrong);
}

/// The file as an address (sqlite.org/uri.html), so that no letter of its name means something.
QString addressOf(const std::filesystem::path &path, ShopConnection::Use use)
{
    const auto absolute = std::filesystem::absolute(path);
    const QUrl url = QUrl::fromLocalFile(QString::fromStdString(absolute.string()));
    QString address = url.toString(QUrl::FullyEncoded);
    switch (use) {
    case ShopConnection::Use::Make:
        return address + QStringLiteral("?mode=rwc");
    case ShopConnection::Use::Write:
        return address + QStringLiteral("?mode=rw");
    case ShopConnection::Use::Read:
        break;
    }
    return address + (isImmutable(path, use) ? QStringLiteral("?mode=ro&immutable=1")
                                             : QStringLiteral("?mode=ro"));
}

/// Settings that hold for reading too; each is read back.
struct Setting {
    const char *set;
    const char *ask;
    int value;
};
constexpr std::array<Setting, 4> Settings = {{
    {"PRAGMA foreign_keys = ON", "PRAGMA foreign_keys", 1},
    {"PRAGMA trusted_schema = OFF", "PRAGMA trusted_schema", 0},
    {"PRAGMA cell_size_check = ON", "PRAGMA cell_size_check", 1},
    {"PRAGMA mmap_size = 0", "PRAGMA mmap_size", 0},
}};

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

ShopConnection::ShopConnection(const std::filesystem::path &path, Use use)
    : m_path(path), m_use(use), m_name(nextName())
{
    if (use != Use::Make)
        m_openHere.emplace(path);
    throwUnlessMayWrite(path, use);
    m_database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
    m_database.setDatabaseName(addressOf(path, use));
    QString options = QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=5000");
    if (use == Use::Read)
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    m_database.setConnectOptions(options);
    try {
        if (!m_database.open())
            fail(m_database.lastError());
        applySettings();
    } catch (...) {
        m_database.close();
        m_database = {};
        QSqlDatabase::removeDatabase(m_name);
        throw;
    }
}

ShopConnection::~ShopConnection()
{
    m_database.close();
    m_database = {};
    QSqlDatabase::removeDatabase(m_name);
}

void ShopConnection::applySettings()
{
    bool taken = true;
    for (const Setting &setting : Settings) {
        run(setting.set);
        taken = taken && one(setting.ask).toInt() == setting.value;
    }
    run("PRAGMA cache_size = -65536");
    if (m_use != Use::Read) {
        taken = taken && one("PRAGMA journal_mode = WAL").toString() == QStringLiteral("wal");
        run("PRAGMA synchronous = FULL");
        taken = taken && one("PRAGMA synchronous").toInt() == 2;
    }
    if (!taken)
        throw StorageFailure{{m_path.string(), "does not take the settings that keep it safe",
                              "Move it to a local disk that is not read-only."}};
}

QSqlQuery ShopConnection::run(std::string_view sql, const QVariantList &values) const
{
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.prepare(sqlText(sql)))
        fail(query.lastError());
    for (const auto &value : values)
        query.addBindValue(value);
    if (!query.exec())
        fail(query.lastError());
    return query;
}

QVariant ShopConnection::one(std::string_view sql, const QVariantList &values) const
{
    auto query = run(sql, values);
    return query.next() ? query.value(0) : QVariant();
}

sqlite3 *ShopConnection::handle() const
{
    // As the documentation of QSqlDriver::handle() says.
    const QVariant handle = m_database.driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        throw StorageFailure{{m_path.string(), "cannot be reached", "Install Qt's SQLite driver."}};
    return *static_cast<sqlite3 *const *>(handle.constData());
}

void ShopConnection::rollBack() noexcept
{
    QSqlQuery query(m_database);
    query.exec(QStringLiteral("ROLLBACK"));
}

void ShopConnection::stopAfter(const StorageFailure &failure) noexcept
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

void ShopConnection::throwIfStopped() const
{
    if (m_stopped)
        throw StorageFailure{{m_path.string(), "is not written any more since writing it failed",
                              "Close it, run flarestock verify on it, then open it again."}};
}

void ShopConnection::fail(const QSqlError &error) const
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
