// SPDX-License-Identifier: MIT
//
// Shop connection: one SQLite connection with the settings that our promises rest on, read back
// after they were made. Statements are constant texts with values bound by position; what goes
// wrong is thrown as StorageFailure with a sentence for people.

#pragma once

#include "model/storage/failure.h"
#include "model/storage/open_here.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include <filesystem>
#include <optional>
#include <string_view>

struct sqlite3;

namespace flarestock {

class ShopConnection {
public:
    /// Make: the file is not there yet, or it is made again from nothing.
    enum class Use : std::uint8_t { Make, Write, Read };

    /// Throws StorageFailure: not a shop file (where it is not made), it cannot be opened, or does
    /// not take the settings.
    ShopConnection(const std::filesystem::path &path, Use use);
    ~ShopConnection();
    ShopConnection(const ShopConnection &) = delete;
    ShopConnection &operator=(const ShopConnection &) = delete;

    /// Runs a statement; the query stands before its first row. Throws StorageFailure.
    QSqlQuery run(std::string_view sql, const QVariantList &values = {}) const;
    /// The first column of the first row; invalid where there is none.
    [[nodiscard]] QVariant one(std::string_view sql, const QVariantList &values = {}) const;

    /// All of `action` or nothing, by BEGIN IMMEDIATE; acknowledged only after COMMIT came back.
    template <class Action>
    void wholly(Action &&action)
    {
        throwIfStopped();
        run("BEGIN IMMEDIATE");
        try {
            action();
            run("COMMIT");
        } catch (const StorageFailure &failure) {
            rollBack();
            stopAfter(failure);
            throw;
        } catch (...) {
            rollBack();
            throw;
        }
    }

    [[nodiscard]] const std::filesystem::path &path() const noexcept { return m_path; }
    /// SQLite's own, for what Qt does not reach; never closed through it.
    [[nodiscard]] sqlite3 *handle() const;
    [[nodiscard]] bool isWritable() const noexcept { return m_use != Use::Read; }

private:
    void applySettings();
    void rollBack() noexcept;
    /// After a failing disk, a full one or damage nothing more is written by this connection.
    void stopAfter(const StorageFailure &failure) noexcept;
    void throwIfStopped() const;
    [[noreturn]] void fail(const QSqlError &error) const;

    std::filesystem::path m_path;
    Use m_use;
    bool m_stopped = false;
    std::optional<OpenHere> m_openHere; ///< Not while it is made: then nobody knows its name.
    QString m_name;
    QSqlDatabase m_database;
};

} // namespace flarestock
