// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/backup.h"

#include "model/storage/shop_sql.h"

#include <QRandomGenerator>
#include <QSqlDriver>

#include <cstdio>
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

namespace flarestock {

namespace {

[[noreturn]] void refuseExisting(const std::filesystem::path &path)
{
    throw StorageFailure{{path.string(), "exists already", "Name another file, or move it away."}};
}

[[noreturn]] void refuseCode(const std::filesystem::path &path, int code)
{
    const bool full = (code & 0xff) == SQLITE_FULL;
    throw StorageFailure{{path.string(),
                          full ? "could not be written: the disk is full" : "could not be written",
                          full ? "Make room and try again; the shop itself is unchanged."
                               : "Check the folder, and who may write there."},
                         code};
}

/// Brings a file or a folder to the disk; says whether the disk took it.
bool synced(const std::filesystem::path &path, int flags)
{
    const int opened = ::open(path.c_str(), flags | O_CLOEXEC);
    const bool done = opened >= 0 && ::fsync(opened) == 0;
    const int code = errno;
    if (opened >= 0)
        ::close(opened);
    // Some file systems do not open or sync folders; they keep names without being asked.
    const bool folder = (flags & O_DIRECTORY) != 0;
    return done || (folder && (code == EINVAL || code == ENOTSUP || code == EACCES));
}

/// The copy as a file that is done: its log emptied, no longer one that keeps a log.
void copyPages(sqlite3 *from, const std::filesystem::path &unnamed)
{
    sqlite3 *to = nullptr;
    int code = sqlite3_open_v2(unnamed.c_str(), &to,
                               SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_EXCLUSIVE,
                               nullptr);
    if (code == SQLITE_OK) {
        sqlite3_backup *backup = sqlite3_backup_init(to, "main", from, "main");
        if (backup) {
            sqlite3_backup_step(backup, -1); // All in one step: one moment of the shop.
            code = sqlite3_backup_finish(backup);
        } else {
            code = sqlite3_errcode(to);
        }
    }
    sqlite3_close_v2(to);
    if (code != SQLITE_OK)
        refuseCode(unnamed, code);
}

} // namespace

std::filesystem::path unfinishedName(const std::filesystem::path &path)
{
    const auto number = QRandomGenerator::system()->generate();
    char name[16];
    std::snprintf(name, sizeof name, ".new-%08x", number);
    return path.string() + name;
}

void removeUnfinished(const std::filesystem::path &path) noexcept
{
    std::error_code ignored;
    for (const char *tail : {"", "-wal", "-shm", "-journal"})
        std::filesystem::remove(path.string() + tail, ignored);
}

void giveName(const std::filesystem::path &unnamed, const std::filesystem::path &path)
{
    int done = ::renameat2(AT_FDCWD, unnamed.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE);
    if (done != 0 && errno == EINVAL && !std::filesystem::exists(path))
        done = std::rename(unnamed.c_str(), path.c_str()); // A file system without that promise.
    if (done != 0 && errno == EEXIST)
        refuseExisting(path);
    if (done != 0)
        throw StorageFailure{{path.string(), "cannot be written", "Check who may write there."}};
    if (!synced(path.has_parent_path() ? path.parent_path() : std::filesystem::path("."),
                O_RDONLY | O_DIRECTORY))
        throw StorageFailure{{path.string(),
                              "was made, but may not outlast a power cut: the disk reported an "
                              "error",
                              "Check the disk, then run flarestock verify on it."}};
}

QByteArray randomReplicaId()
{
    QByteArray id(16, '\0');
    for (auto &byte : id)
        byte = static_cast<char>(QRandomGenerator::system()->bounded(256));
    return id;
}

namespace {

/// `to` as a copy that is whole, or nothing. `finish` is what else is done to it before it has its
/// name.
void makeWhole(const FileConnection &connection, const std::filesystem::path &to,
               void (*finish)(const std::filesystem::path &unnamed))
{
    std::error_code wrong;
    if (std::filesystem::exists(std::filesystem::symlink_status(to, wrong)))
        refuseExisting(to);
    if (to.has_parent_path() && !std::filesystem::is_directory(to.parent_path(), wrong))
        throw StorageFailure{{to.parent_path().string(), "is no folder", "Make it first."}};
    const auto unnamed = unfinishedName(to);
    try {
        copyPages(connection.handle(), unnamed);
        finish(unnamed);
        if (!synced(unnamed, O_RDWR))
            throw StorageFailure{{to.string(), "could not be brought to the disk",
                                  "Check the disk; the shop itself is unchanged."}};
        giveName(unnamed, to);
    } catch (StorageFailure &failure) {
        removeUnfinished(unnamed); // Ours alone: nobody knows its name.
        if (failure.problem.thing == unnamed.string())
            failure.problem.thing = to.string();
        throw;
    }
}

void beginReplica(const std::filesystem::path &unnamed)
{
    FileConnection copy(unnamed, FileConnection::Use::Write);
    copy.wholly([&] {
        copy.run(sql::InsertReplicaOfCopy, {randomReplicaId(), QByteArray(32, '\0')});
    });
    // A file that lies by itself keeps no log, and nothing stays beside it when it is only read.
    if (copy.one("PRAGMA journal_mode = DELETE").toString() != QStringLiteral("delete"))
        refuseCode(unnamed, SQLITE_ERROR);
}

} // namespace

void makeCopy(const FileConnection &connection, const std::filesystem::path &to)
{
    makeWhole(connection, to, [](const std::filesystem::path &) {});
}

void makeBackup(const FileConnection &connection, const std::filesystem::path &to)
{
    makeWhole(connection, to, beginReplica);
}

} // namespace flarestock
