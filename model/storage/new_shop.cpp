// SPDX-License-Identifier: MIT

#include "model/storage/new_shop.h"

#include "model/storage/file_header.h"
#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"

#include <QRandomGenerator>

#include <cstdio>
#include <fcntl.h>
#include <unistd.h>

namespace flarestock {

namespace {

QByteArray randomId()
{
    QByteArray id(16, '\0');
    for (auto &byte : id)
        byte = static_cast<char>(QRandomGenerator::system()->bounded(256));
    return id;
}

/// Everything that a shop begins with, in one transaction with the marks of the file.
void writeShop(ShopConnection &connection, const NewShop &shop)
{
    connection.run("PRAGMA application_id = " + std::to_string(sql::ApplicationId));
    for (const auto statement : sql::schemaOne())
        connection.run(statement);
    const std::string currency(shop.settings.currency.code());
    connection.run(sql::InsertShop, {text(shop.settings.title), text(currency),
                                     QVariant::fromValue<qlonglong>(shop.now),
                                     shopSeal(shop.settings.title, currency, shop.now)});
    int sequence = 0;
    for (const auto &place : shop.places)
        connection.run(sql::InsertPlace,
                       {++sequence, text(place.id), text(place.title),
                        text(std::string(text(place.kind))), sealOf(canonicalBytes(place))});
    for (const auto &[name, content] : shop.documents)
        writeDocument(connection, name, content, {shop.who, shop.now});
    connection.run(sql::InsertReplica, {randomId(), QByteArray(32, '\0')});
    JournalWriter writer(connection);
    for (const auto &movement : shop.opening)
        static_cast<void>(writer.append(movement));
    writer.finish();
    for (const auto &check : shop.boxChecks)
        writeBoxCheck(connection, check);
    connection.run("PRAGMA user_version = " + std::to_string(SchemaVersion));
}

void removeUnfinished(const std::filesystem::path &path)
{
    std::error_code ignored;
    for (const char *tail : {"", "-wal", "-shm"})
        std::filesystem::remove(path.string() + tail, ignored);
}

[[noreturn]] void refuseExisting(const std::filesystem::path &path)
{
    throw StorageFailure{{path.string(), "exists already", "Name another file, or move it away."}};
}

/// Brings everything from SQLite's log into the one file, and says where that failed: closing does
/// the same and says nothing. Busy (the first column) cannot be: nobody knows the file yet.
void bringIn(const ShopConnection &connection)
{
    if (connection.one("PRAGMA wal_checkpoint(TRUNCATE)").toInt() != 0)
        throw StorageFailure{{connection.path().string(), "could not be written",
                              "Nothing was made; check the disk, then try again."}};
}

/// Sees that the folder knows the name of the file.
void syncFolderOf(const std::filesystem::path &path)
{
    const auto folder = path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
    const int opened = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const bool synced = opened >= 0 && ::fsync(opened) == 0;
    // Some file systems do not open or sync folders; they keep names without being asked.
    const bool unasked = errno == EINVAL || errno == ENOTSUP || errno == EACCES;
    if (opened >= 0)
        ::close(opened);
    if (!synced && !unasked)
        throw StorageFailure{{path.string(),
                              "was made, but may not outlast a power cut: the disk "
                              "reported an error",
                              "Check the disk, then run flarestock verify on it."}};
}

/// Gives the file its name, never in the place of another, and sees that the folder knows it.
void giveName(const std::filesystem::path &unnamed, const std::filesystem::path &path)
{
    int done = ::renameat2(AT_FDCWD, unnamed.c_str(), AT_FDCWD, path.c_str(), RENAME_NOREPLACE);
    if (done != 0 && errno == EINVAL && !std::filesystem::exists(path))
        done = std::rename(unnamed.c_str(), path.c_str()); // A file system without that promise.
    if (done != 0 && errno == EEXIST)
        refuseExisting(path);
    if (done != 0)
        throw StorageFailure{{path.string(), "cannot be written", "Check who may write there."}};
    syncFolderOf(path);
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
        refuseExisting(path);
    if (path.has_parent_path() && !std::filesystem::is_directory(path.parent_path(), wrong))
        throw StorageFailure{{path.parent_path().string(), "is no folder", "Make it first."}};
    const std::filesystem::path unnamed =
        path.string() + ".new-" + randomId().toHex().left(8).toStdString();
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
