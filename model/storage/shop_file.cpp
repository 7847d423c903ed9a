// SPDX-License-Identifier: MIT

#include "model/storage/shop_file.h"

#include "model/storage/file_header.h"
#include "model/storage/journal_writer.h"
#include "model/storage/new_shop.h"
#include "model/storage/shop_sql.h"
#include "model/storage/verification.h"

namespace flarestock {

namespace {

ShopSettings settingsIn(const ShopConnection &connection)
{
    auto query = connection.run(sql::SelectShop);
    if (!query.next())
        throw StorageFailure{{connection.path().string(), "is a shop file that was never finished",
                              "Make it again, or use a backup."}};
    auto currency = Currency::parse(query.value(1).toString().toStdString());
    if (!currency)
        throw StorageFailure{{connection.path().string(), "has a currency that nobody knows",
                              "Restore the newest backup."}};
    return {query.value(0).toString().toStdString(), *currency};
}

void throwUnlessMarked(const ShopConnection &connection)
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
/// movements are there as each replica says, up to the one that it ends with.
void checkQuickly(const ShopConnection &connection)
{
    if (connection.one("PRAGMA quick_check(1)").toString() != QStringLiteral("ok"))
        refuseDamaged(connection.path(), "is damaged");
    for (auto query = connection.run(sql::SelectJournalEnds); query.next();) {
        const auto movements = query.value(0).toLongLong();
        const bool ends = movements == 0 || query.value(2) == query.value(3);
        if (query.value(1).toLongLong() != movements || !ends)
            refuseDamaged(connection.path(), "is damaged: its journal does not end as it says");
    }
}

/// Where the disk failed in the middle nobody knows whether it has them: says which to ask for
/// again.
void nameUnconfirmed(StorageFailure &failure, const std::vector<Movement> &movements)
{
    if (failure.nativeCode == 0 || movements.empty())
        return; // It was refused, and is not there.
    failure.problem.remedy += " Not confirmed is movement " + movements.front().id.text();
    if (movements.size() > 1)
        failure.problem.remedy += " with " + std::to_string(movements.size() - 1) + " more";
    failure.problem.remedy += ": said again with its id, it counts once.";
}

} // namespace

ShopFile::ShopFile(std::unique_ptr<ShopConnection> connection, ShopSettings settings)
    : m_connection(std::move(connection)), m_settings(std::move(settings))
{
}
ShopFile::ShopFile(ShopFile &&) noexcept = default;
ShopFile &ShopFile::operator=(ShopFile &&) noexcept = default;
ShopFile::~ShopFile() = default;

void ShopFile::wholly(const std::function<void()> &action)
{
    m_connection->wholly(action);
    m_looking.reset();
}

Result<ShopFile> ShopFile::create(const std::filesystem::path &path, const NewShop &shop)
{
    const auto made = guarded([&] { makeShopFile(path, shop); });
    if (!made)
        return tl::unexpected(made.error());
    return open(path, OpenMode::ReadWrite);
}

Result<ShopFile> ShopFile::open(const std::filesystem::path &path, OpenMode mode)
{
    return guarded([&] {
        std::unique_ptr<ShopConnection> looking;
        if (mode == OpenMode::ReadOnly || hasLog(path)) {
            looking = std::make_unique<ShopConnection>(path, ShopConnection::Use::Read);
            throwUnlessMarked(*looking);
        }
        if (mode == OpenMode::ReadOnly) {
            auto settings = settingsIn(*looking);
            return ShopFile(std::move(looking), std::move(settings));
        }
        auto connection = std::make_unique<ShopConnection>(path, ShopConnection::Use::Write);
        throwUnlessMarked(*connection);
        checkQuickly(*connection);
        auto settings = settingsIn(*connection);
        ShopFile shop(std::move(connection), std::move(settings));
        shop.m_looking = std::move(looking);
        return shop;
    });
}

Result<Verification> ShopFile::verify(const std::filesystem::path &path)
{
    return guarded([&] {
        const ShopConnection connection(path, ShopConnection::Use::Read);
        throwUnlessMarked(connection);
        try {
            return verified(connection);
        } catch (const StorageFailure &failure) { // So damaged that a table cannot be read.
            Verification said;
            said.problems.push_back(failure.problem.sentence());
            return said;
        }
    });
}

const ShopSettings &ShopFile::settings() const noexcept
{
    return m_settings;
}

std::filesystem::path ShopFile::path() const
{
    return m_connection->path();
}

Result<TextFiles> ShopFile::documents() const
{
    return guarded([&] {
        TextFiles files;
        for (auto query = m_connection->run(sql::SelectNewestDocuments); query.next();)
            files.emplace(query.value(0).toString().toStdString(),
                          query.value(1).toString().toStdString());
        return files;
    });
}

Result<void> ShopFile::putDocument(const std::string &name, const std::string &content,
                                   const std::string &who, std::int64_t now)
{
    return guarded([&] {
        wholly([&] { writeDocument(*m_connection, name, content, {who, now}); });
    });
}

Result<std::vector<Place>> ShopFile::places() const
{
    return guarded([&] { return placesIn(*m_connection); });
}

Result<Ledger> ShopFile::ledger() const
{
    return guarded([&] {
        Ledger ledger(placesIn(*m_connection));
        for (auto query = m_connection->run(sql::SelectMovements); query.next();) {
            const auto movement = journalRow(query).movement;
            if (const auto refusal = ledger.apply(movement))
                throw StorageFailure{
                    {m_connection->path().string(),
                     "holds movement " + movement.id.text() + ", which " +
                         std::string(text(*refusal)),
                     "Run flarestock verify on it and restore the newest backup."}};
        }
        return ledger;
    });
}

Result<std::vector<Appended>> ShopFile::append(const std::vector<Movement> &movements)
{
    return guarded([&] {
        std::vector<Appended> done;
        try {
            wholly([&] {
                JournalWriter writer(*m_connection);
                for (const auto &movement : movements)
                    done.push_back(writer.append(movement));
                writer.finish();
            });
        } catch (StorageFailure &failure) {
            nameUnconfirmed(failure, movements);
            throw;
        }
        return done;
    });
}

Result<std::vector<Movement>> ShopFile::movements(std::string_view part) const
{
    return guarded([&] {
        std::vector<Movement> found;
        auto query = part.empty()
                         ? m_connection->run(sql::SelectMovements)
                         : m_connection->run(sql::SelectMovementsOfPart, {text(std::string(part))});
        while (query.next())
            found.push_back(journalRow(query).movement);
        return found;
    });
}

Result<std::optional<Movement>> ShopFile::movement(const MovementId &id) const
{
    return guarded([&]() -> std::optional<Movement> {
        auto query = m_connection->run(sql::SelectMovement, {idBytes(id)});
        if (!query.next())
            return std::nullopt;
        return journalRow(query).movement;
    });
}

Result<Appended> ShopFile::record(const BoxCheck &check)
{
    return guarded([&] {
        Appended done{check.id, false};
        wholly([&] {
            done.already =
                m_connection->one("SELECT 1 FROM box_check WHERE id = ?", {idBytes(check.id)})
                    .isValid();
            if (!done.already)
                writeBoxCheck(*m_connection, check);
        });
        return done;
    });
}

Result<std::vector<BoxCheck>> ShopFile::boxChecks() const
{
    return guarded([&] {
        std::vector<BoxCheck> checks;
        for (auto query = m_connection->run(sql::SelectBoxChecks); query.next();)
            checks.push_back(boxCheckRow(query));
        return checks;
    });
}

} // namespace flarestock
