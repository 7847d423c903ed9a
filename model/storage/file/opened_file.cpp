// SPDX-License-Identifier: MIT

#include "model/storage/file/opened_file.h"

#include "model/storage/file/examination.h"
#include "model/storage/file/file_header.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/migration.h"
#include "model/storage/upkeep/verification.h"

namespace flarestock {

namespace {

void throwUnlessMarked(const FileConnection &connection)
{
    throwUnlessOurMarks(connection.path(), connection.one("PRAGMA application_id").toLongLong(),
                        connection.one("PRAGMA user_version").toLongLong());
}

[[noreturn]] void refuseDamaged(const std::filesystem::path &path, const std::string &wrong)
{
    throw StorageFailure{{path.string(), wrong,
                          "Do not write to it: keep it aside, run flarestock verify on it and "
                          "restore the newest backup."}};
}

/// What can be seen without following the whole chain: SQLite's own quick check, and that as many
/// entries are there as each replica says, up to the one that it ends with.
void checkQuickly(const FileConnection &connection)
{
    if (connection.one("PRAGMA quick_check(1)").toString() != QStringLiteral("ok"))
        refuseDamaged(connection.path(), "is damaged");
    const bool first = versionOf(connection) == 1;
    const auto ends = first ? sql::SelectJournalEndsOne : sql::SelectJournalEnds;
    for (auto query = connection.run(ends); connection.next(query);) {
        const auto entries = query.value(0).toLongLong();
        const bool closed = entries == 0 || query.value(2) == query.value(3);
        if (query.value(1).toLongLong() != entries || !closed)
            refuseDamaged(connection.path(), "is damaged: its journal does not end as it says");
    }
}

/// Of an older file: its pages and schema as they are, and everything else once it is of this
/// version.
Verification verifiedOlder(const FileConnection &connection, std::int64_t version)
{
    Verification said;
    const auto wrong = [&said](const std::string &what) { said.problems.push_back(what); };
    examinePages(connection, wrong);
    examineSchema(connection, version, wrong);
    if (!said.problems.empty())
        return said;
    const MigratedCopy copy(connection);
    return verified(*copy.open());
}

Verification verifiedOf(const FileConnection &connection)
{
    std::optional<Verification> older;
    connection.atOneMoment([&] {
        if (const auto version = versionOf(connection); version != SchemaVersion)
            older = verifiedOlder(connection, version);
    });
    return older ? *older : verified(connection);
}

} // namespace

std::unique_ptr<FileConnection> openFile(const std::filesystem::path &path, OpenMode mode)
{
    // Who only reads cannot roll back what a killed program left half-way.
    if (mode == OpenMode::ReadOnly && hasRollback(path))
        static_cast<void>(FileConnection(path, FileConnection::Use::Write));
    std::unique_ptr<FileConnection> looking;
    if (mode == OpenMode::ReadOnly || hasLog(path)) {
        looking = std::make_unique<FileConnection>(path, FileConnection::Use::Read);
        throwUnlessMarked(*looking);
    }
    std::unique_ptr<FileConnection> connection;
    if (mode == OpenMode::ReadOnly) {
        connection = std::move(looking);
    } else {
        connection = std::make_unique<FileConnection>(path, FileConnection::Use::Write);
        throwUnlessMarked(*connection);
        connection->writeOnlyAfter(checkQuickly);
        migrate(*connection);
    }
    if (versionOf(*connection) != SchemaVersion) {
        const auto copy = std::make_shared<const MigratedCopy>(*connection);
        connection = copy->open();
        connection->keepAlong(copy);
    }
    if (looking)
        connection->keepUntilWritten(std::move(looking));
    return connection;
}

Verification verifiedFile(const std::filesystem::path &path)
{
    if (hasRollback(path)) // As above.
        static_cast<void>(FileConnection(path, FileConnection::Use::Write));
    const FileConnection connection(path, FileConnection::Use::Read);
    throwUnlessMarked(connection);
    try {
        return verifiedOf(connection);
    } catch (const StorageFailure &failure) { // So damaged that a table cannot be read.
        if (!isOfTheShop(failure))
            throw;
        Verification said;
        said.problems.push_back(failure.problem.sentence());
        return said;
    }
}

} // namespace flarestock
