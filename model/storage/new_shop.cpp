// SPDX-License-Identifier: MIT

#include "model/storage/new_shop.h"

#include "model/storage/file_header.h"
#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/backup.h"
#include "model/storage/upkeep/schema.h"

namespace flarestock {

namespace {

/// Everything that a shop begins with, in one transaction with the marks of the file.
void writeShop(ShopConnection &connection, const NewShop &shop)
{
    connection.run("PRAGMA application_id = " + std::to_string(sql::ApplicationId));
    for (const auto statement : sql::schema(SchemaVersion))
        connection.run(statement);
    writeShopRow(connection, {shop.settings.title, std::string(shop.settings.currency.code()),
                              std::string(text(shop.settings.costing)), shop.now});
    std::int64_t sequence = 0;
    for (const auto &place : shop.places)
        writePlace(connection, place, ++sequence);
    for (const auto &[name, content] : shop.documents)
        writeDocument(connection, name, content, {shop.who, shop.now});
    connection.run(sql::InsertReplica, {randomReplicaId(), QByteArray(32, '\0')});
    JournalWriter writer(connection);
    for (const auto &movement : shop.opening)
        static_cast<void>(writer.append(movement));
    for (const auto &record : shop.records)
        static_cast<void>(writer.append(record));
    writer.finish();
    for (const auto &check : shop.boxChecks)
        writeBoxCheck(connection, check);
    connection.run("PRAGMA user_version = " + std::to_string(SchemaVersion));
}

/// Brings everything from SQLite's log into the one file, and says where that failed: closing does
/// the same and says nothing. Busy (the first column) cannot be: nobody knows the file yet.
void bringIn(const ShopConnection &connection)
{
    if (connection.one("PRAGMA wal_checkpoint(TRUNCATE)").toInt() != 0)
        throw StorageFailure{{connection.path().string(), "could not be written",
                              "Nothing was made; check the disk, then try again."}};
}

} // namespace

void writeDocument(ShopConnection &connection, const std::string &name, const std::string &written,
                   const Written &by)
{
    const std::string content = withoutMark(written);
    const auto newest = [&] { return connection.run(sql::SelectNewestDocument, {text(name)}); };
    std::int64_t version = 1;
    if (auto query = newest(); query.next()) {
        if (query.value(1).toString().toStdString() == content)
            return;
        version = query.value(0).toLongLong() + 1;
    }
    std::int64_t sequence = 1;
    QByteArray previous;
    if (auto last = connection.run(sql::SelectLastDocument); last.next()) {
        sequence = last.value(0).toLongLong() + 1;
        previous = last.value(1).toByteArray();
    }
    const auto seal =
        sealOf(canonicalBytes(std::vector<std::string>{name, std::to_string(version), content,
                                                       by.who, std::to_string(by.at)}),
               previous);
    connection.run(sql::InsertDocument,
                   {QVariant::fromValue<qlonglong>(sequence), text(name),
                    QVariant::fromValue<qlonglong>(version), text(content), text(by.who),
                    QVariant::fromValue<qlonglong>(by.at), seal});
}

void writeBoxCheck(ShopConnection &connection, const BoxCheck &check)
{
    const auto sequence = connection.one("SELECT coalesce(max(sequence), 0) + 1 FROM box_check");
    connection.run(sql::InsertBoxCheck,
                   {sequence, idBytes(check.id), text(check.part), text(check.lot),
                    text(missingText(check.missing)), text(check.who),
                    QVariant::fromValue<qlonglong>(check.at), sealOf(canonicalBytes(check))});
}

void makeShopFile(const std::filesystem::path &path, const NewShop &shop)
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
            ShopConnection connection(unnamed, ShopConnection::Use::Make);
            connection.wholly([&] { writeShop(connection, shop); });
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

} // namespace flarestock
