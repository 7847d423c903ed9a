// SPDX-License-Identifier: MIT

#include "model/storage/file/new_file.h"

#include "model/storage/file/file_header.h"
#include "model/storage/new_shop.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/backup.h"
#include "model/storage/upkeep/schema.h"

namespace flarestock {

namespace {

/// The tables, and the marks of the file.
void makeTables(FileConnection &connection)
{
    connection.run("PRAGMA application_id = " + std::to_string(sql::ApplicationId));
    for (const auto statement : sql::schema(SchemaVersion))
        connection.run(statement);
    connection.run("PRAGMA user_version = " + std::to_string(SchemaVersion));
}

/// Brings everything from SQLite's log into the one file, and says where that failed: closing does
/// the same and says nothing. Busy (the first column) cannot be: nobody knows the file yet.
void bringIn(const FileConnection &connection)
{
    if (connection.one("PRAGMA wal_checkpoint(TRUNCATE)").toInt() != 0)
        throw StorageFailure{{connection.name(), "could not be written",
                              "Nothing was made; check the disk, then try again."}};
}

} // namespace

void makeFile(const std::filesystem::path &path,
              const std::function<void(FileConnection &connection)> &write)
{
    throwIfServer(path);
    std::error_code wrong;
    if (std::filesystem::exists(std::filesystem::symlink_status(path, wrong)))
        throw StorageFailure{
            {path.string(), "exists already", "Name another file, or move it away."}};
    if (path.has_parent_path() && !std::filesystem::is_directory(path.parent_path(), wrong))
        throw StorageFailure{{path.parent_path().string(), "is no folder", "Make it first."}};
    const auto unnamed = unfinishedName(path);
    try {
        {
            FileConnection connection(unnamed, FileConnection::Use::Make);
            connection.wholly([&] {
                makeTables(connection);
                write(connection);
            });
            bringIn(connection);
        }
        giveName(unnamed, path);
    } catch (StorageFailure &failure) {
        removeUnfinished(unnamed); // Ours alone: nobody knows its name.
        if (failure.problem.thing == unnamed.string())
            failure.problem.thing = path.string();
        throw;
    }
}

void makeShopFile(const std::filesystem::path &path, const NewShop &shop)
{
    makeFile(path, [&shop](FileConnection &connection) {
        beginReplica(connection);
        writeShop(connection, shop);
    });
}

} // namespace flarestock
