// SPDX-License-Identifier: MIT
//
// Shop connection: one connection to the database that holds a shop, whichever it is. Statements
// are constant texts of standard SQL with values bound by position, so that what reads and writes
// the journal is one for all; what differs stands in FileConnection and
// ServerConnection.

#pragma once

#include "model/storage/failure.h"

#include <QByteArray>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

/// What a statement is given, by position. No QVariantList: made of a few in braces, one of Qt 6.4
/// does not ask whether it got memory for them.
using Values = std::vector<QVariant>;

/// A chain of the journal as far as it goes.
struct ChainEnd {
    std::int64_t replica = 0; ///< Its number.
    QByteArray id;
    std::int64_t entries = 0;
    std::int64_t lamport = 0; ///< What the next one has to be greater than.
    QByteArray head;
};

/// A row as a statement shows it, until it shows the next one. Columns count from 0.
class StoredRow {
public:
    virtual ~StoredRow() = default;
    [[nodiscard]] virtual std::int64_t number(int column) const = 0;
    [[nodiscard]] virtual std::string text(int column) const = 0;
    [[nodiscard]] virtual QByteArray bytes(int column) const = 0;
    [[nodiscard]] virtual bool isNull(int column) const = 0;
};

/// The one on which a query stands.
class QueryRow final : public StoredRow {
public:
    explicit QueryRow(const QSqlQuery &query) : m_query(query) {}
    [[nodiscard]] std::int64_t number(int column) const override;
    [[nodiscard]] std::string text(int column) const override;
    [[nodiscard]] QByteArray bytes(int column) const override;
    [[nodiscard]] bool isNull(int column) const override;

private:
    const QSqlQuery &m_query;
};

class ShopConnection {
public:
    virtual ~ShopConnection();
    ShopConnection(const ShopConnection &) = delete;
    ShopConnection &operator=(const ShopConnection &) = delete;

    /// Runs a statement; the query stands before its first row. Throws StorageFailure.
    QSqlQuery run(std::string_view sql, const Values &values = {}) const;
    /// Runs a statement for each list of values, until `next` has none.
    void runEach(std::string_view sql, const std::function<std::optional<Values>()> &next) const;
    /// Runs a statement that is run often: it stays prepared for the next time. `row`, where there
    /// is one, is shown every row. Throws StorageFailure.
    void runAgain(std::string_view sql, const Values &values,
                  const std::function<void(const QSqlQuery &query)> &row = {}) const;
    /// Shows every row of a statement that reads much; `row` runs no other on this connection
    /// that writes. Throws StorageFailure.
    virtual void eachRow(std::string_view sql,
                         const std::function<void(const StoredRow &row)> &row) const;
    /// Goes to the next row of a query of this connection; whether there is one. A row that cannot
    /// be read is no end: throws StorageFailure.
    bool next(QSqlQuery &query) const;
    /// The first column of the first row; invalid where there is none.
    [[nodiscard]] QVariant one(std::string_view sql, const Values &values = {}) const;

    /// All of `action` or nothing; acknowledged only after COMMIT came back. It may be run several
    /// times, each time from the beginning, as long as nothing of it has stayed.
    virtual void wholly(const std::function<void()> &action) = 0;
    /// What `look` reads is of one moment, whatever others write meanwhile. Also inside
    /// wholly().
    virtual void atOneMoment(const std::function<void()> &look) const = 0;
    /// The chain that this connection writes on. Inside wholly(). Throws StorageFailure where there
    /// is none.
    [[nodiscard]] virtual ChainEnd chainEnd() = 0;
    /// The count of the next entry, greater than `last` and than that of whatever stands already.
    [[nodiscard]] virtual std::int64_t nextLamport(std::int64_t last) = 0;
    /// The trip that this very shop is the copy of: the id of the record that says that it was
    /// taken; empty where it is no copy that travels.
    [[nodiscard]] virtual std::string trip() const { return {}; }
    /// Whether another connection has written since it was asked last; true at the first time.
    /// Throws StorageFailure.
    [[nodiscard]] virtual bool hasNews() = 0;
    /// Says what is wrong with the database itself, besides what it holds.
    virtual void examine(const std::function<void(const std::string &)> &wrong) const = 0;
    /// Copies the shop as it is at this moment to a new file. Throws StorageFailure.
    virtual void copyTo(const std::filesystem::path &file) const = 0;

    /// What people call it: the file, or the address.
    [[nodiscard]] const std::string &name() const noexcept { return m_name; }

protected:
    /// How rows come: one after the other, as they are asked for, or all before the first.
    enum class Rows : std::uint8_t { OneByOne, AtOnce };
    /// `driver`: Qt's name of it. The database is not open yet.
    ShopConnection(std::string name, const char *driver, Rows rows);
    [[nodiscard]] QSqlDatabase &database() noexcept { return m_database; }
    [[nodiscard]] const QSqlDatabase &database() const noexcept { return m_database; }
    void close() noexcept;
    /// Throws it as a StorageFailure with a sentence for people.
    [[noreturn]] virtual void fail(const QSqlError &error) const = 0;

private:
    std::string m_name;
    Rows m_rows;
    QString m_connection; ///< Qt's name of it.
    QSqlDatabase m_database;
    mutable std::map<std::string, QSqlQuery> m_prepared; ///< Those not running.
};

} // namespace flarestock
