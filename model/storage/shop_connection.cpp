// SPDX-License-Identifier: MIT

#include "model/storage/shop_connection.h"

#include <QSqlError>

#include <atomic>

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

struct Said {
    const char *wrong;
    const char *remedy;
};

/// SQLite's primary result codes (sqlite.org/rescode.html), in our words.
Said wordsFor(int code)
{
    switch (code & 0xff) {
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
    case 13:
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
    m_database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
    m_database.setDatabaseName(QString::fromStdString(path.string()));
    m_database.setConnectOptions(
        use == Use::Read ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=5000")
                         : QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000"));
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
    run("PRAGMA foreign_keys = ON");
    run("PRAGMA trusted_schema = OFF");
    run("PRAGMA cell_size_check = ON");
    run("PRAGMA mmap_size = 0");
    run("PRAGMA cache_size = -65536");
    if (m_use == Use::Read)
        return;
    const auto journal = one("PRAGMA journal_mode = WAL").toString();
    run("PRAGMA synchronous = FULL");
    const bool taken = journal == QStringLiteral("wal") && one("PRAGMA synchronous").toInt() == 2 &&
                       one("PRAGMA foreign_keys").toInt() == 1;
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

void ShopConnection::rollBack() noexcept
{
    QSqlQuery query(m_database);
    query.exec(QStringLiteral("ROLLBACK"));
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
