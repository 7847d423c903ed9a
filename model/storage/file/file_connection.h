// SPDX-License-Identifier: MIT
//
// File connection: one SQLite connection to a shop file, with the settings that our promises rest
// on, read back after they were made.

#pragma once

#include "model/storage/file/open_here.h"
#include "model/storage/shop_connection.h"

#include <memory>
#include <optional>

struct sqlite3;

namespace flarestock {

class FileConnection : public ShopConnection {
public:
    /// Make: the file is not there yet, or it is made again from nothing.
    enum class Use : std::uint8_t { Make, Write, Read };

    /// Throws StorageFailure: not a shop file (where it is not made), it cannot be opened, or does
    /// not take the settings.
    FileConnection(const std::filesystem::path &path, Use use);
    ~FileConnection() override;

    /// By BEGIN IMMEDIATE. Throws also where the file is damaged; see writeOnlyAfter().
    void wholly(const std::function<void()> &action) override;
    void eachRow(std::string_view sql,
                 const std::function<void(const StoredRow &row)> &row) const override;
    void atOneMoment(const std::function<void()> &look) const override;
    [[nodiscard]] ChainEnd chainEnd() override; ///< The newest chain of the file.
    [[nodiscard]] std::int64_t nextLamport(std::int64_t last) override { return last + 1; }
    [[nodiscard]] bool hasNews() override;
    void examine(const std::function<void(const std::string &)> &wrong) const override;
    void copyTo(const std::filesystem::path &file) const override;
    [[nodiscard]] std::string trip() const override { return m_trip; }

    [[nodiscard]] const std::filesystem::path &path() const noexcept { return m_path; }
    /// SQLite's own, for what Qt does not reach; never closed through it.
    [[nodiscard]] sqlite3 *handle() const;

    /// `check`, which throws where the file is damaged, runs before the first writing, or at
    /// throwIfDamaged(); not where it went well before, and the file has been open here since.
    void writeOnlyAfter(std::function<void(const FileConnection &)> check);
    void throwIfDamaged();

    /// Another connection to the same file, which is kept until this one has written something.
    void keepUntilWritten(std::unique_ptr<FileConnection> looking);
    /// What has to be there as long as this connection is: a folder with a copy.
    void keepAlong(std::shared_ptr<const void> behind);

protected:
    [[noreturn]] void fail(const QSqlError &error) const override;

private:
    void applySettings();
    /// A file that travels alone leaves nothing beside it, and an action is on the disk for good
    /// when it is acknowledged.
    [[nodiscard]] bool takesJournal(bool travels) const;
    void rollBack() noexcept;
    /// After a failing disk, a full one or damage nothing more is written by this connection.
    void stopAfter(const StorageFailure &failure) noexcept;
    void throwIfStopped() const;

    std::filesystem::path m_path;
    Use m_use;
    std::string m_trip;
    bool m_stopped = false;
    bool m_writes = false; ///< Is inside wholly().
    std::int64_t m_dataVersion = -1;
    std::function<void(const FileConnection &)> m_check;
    std::shared_ptr<const void> m_behind;
    std::optional<OpenHere> m_openHere; ///< Not while it is made: then nobody knows its name.
    std::unique_ptr<FileConnection> m_looking; ///< Closed behind this one.
};

} // namespace flarestock
