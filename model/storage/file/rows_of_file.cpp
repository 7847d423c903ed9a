// SPDX-License-Identifier: MIT
//
// The rows of a file straight from SQLite, for what reads a whole journal: by way of Qt every text
// of a row would become UTF-16, and then UTF-8 again.

#include "model/storage/file/file_connection.h"

#include <QSqlError>

#include <new>
#include <sqlite3.h>

namespace flarestock {

namespace {

class FileRow final : public StoredRow {
public:
    explicit FileRow(sqlite3_stmt *statement) : m_statement(statement) {}

    [[nodiscard]] std::int64_t number(int column) const override
    {
        return sqlite3_column_int64(m_statement, column);
    }
    [[nodiscard]] std::string text(int column) const override
    {
        const auto *bytes =
            reinterpret_cast<const char *>(sqlite3_column_text(m_statement, column));
        if (!bytes && !isNull(column))
            throw std::bad_alloc(); // SQLite says so by no text.
        return bytes ? std::string(bytes, sizeOf(column)) : std::string();
    }
    [[nodiscard]] QByteArray bytes(int column) const override
    {
        const auto *bytes = static_cast<const char *>(sqlite3_column_blob(m_statement, column));
        return {bytes, static_cast<qsizetype>(sizeOf(column))};
    }
    [[nodiscard]] bool isNull(int column) const override
    {
        return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
    }

private:
    [[nodiscard]] std::size_t sizeOf(int column) const
    {
        return static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column));
    }
    sqlite3_stmt *m_statement;
};

} // namespace

void FileConnection::eachRow(std::string_view sql,
                             const std::function<void(const StoredRow &row)> &row) const
{
    sqlite3 *file = handle();
    sqlite3_stmt *made = nullptr;
    int code = sqlite3_prepare_v2(file, sql.data(), static_cast<int>(sql.size()), &made, nullptr);
    const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt *)> statement(made, sqlite3_finalize);
    if (code == SQLITE_OK) {
        const FileRow here(made);
        while ((code = sqlite3_step(made)) == SQLITE_ROW)
            row(here);
    }
    if (code != SQLITE_DONE)
        fail(QSqlError({}, {}, QSqlError::StatementError,
                       QString::number(sqlite3_extended_errcode(file))));
}

} // namespace flarestock
