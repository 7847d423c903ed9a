// SPDX-License-Identifier: MIT

#include "model/storage/shop_file.h"

#include "model/storage/file_header.h"
#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"
#include "model/storage/verification.h"

#include <QRandomGenerator>

namespace flarestock {

namespace {

QByteArray randomId()
{
    QByteArray id(16, '\0');
    for (auto &byte : id)
        byte = static_cast<char>(QRandomGenerator::system()->bounded(256));
    return id;
}

void writeDocument(ShopConnection &connection, const std::string &name, const std::string &content,
                   const std::pair<std::string, std::int64_t> &by)
{
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
                                                       by.first, std::to_string(by.second)}),
               previous);
    connection.run(sql::InsertDocument,
                   {QVariant::fromValue<qlonglong>(sequence), text(name),
                    QVariant::fromValue<qlonglong>(version), text(content), text(by.first),
                    QVariant::fromValue<qlonglong>(by.second), seal});
}

void writeBoxCheck(ShopConnection &connection, const BoxCheck &check)
{
    const auto sequence = connection.one("SELECT coalesce(max(sequence), 0) + 1 FROM box_check");
    connection.run(sql::InsertBoxCheck,
                   {sequence, idBytes(check.id), text(check.part), text(check.lot),
                    text(missingText(check.missing)), text(check.who),
                    QVariant::fromValue<qlonglong>(check.at), sealOf(canonicalBytes(check))});
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

void checkQuickly(const ShopConnection &connection)
{
    if (connection.one("PRAGMA quick_check(1)").toString() != QStringLiteral("ok"))
        throw StorageFailure{{connection.path().string(), "is damaged",
                              "Do not write to it: keep it aside, run flarestock verify on it and "
                              "restore the newest backup."}};
}

void removeUnfinished(const std::filesystem::path &path)
{
    std::error_code ignored;
    for (const char *tail : {"", "-wal", "-shm"})
        std::filesystem::remove(path.string() + tail, ignored);
}

} // namespace

ShopFile::ShopFile(std::unique_ptr<ShopConnection> connection, ShopSettings settings)
    : m_connection(std::move(connection)), m_settings(std::move(settings))
{
}
ShopFile::ShopFile(ShopFile &&) noexcept = default;
ShopFile &ShopFile::operator=(ShopFile &&) noexcept = default;
ShopFile::~ShopFile() = default;

Result<ShopFile> ShopFile::create(const std::filesystem::path &path, const NewShop &shop)
{
    std::error_code wrong;
    if (std::filesystem::exists(path, wrong))
        return problem(path.string(), "exists already", "Name another file, or move it away.");
    if (const auto folder = path.parent_path();
        !folder.empty() && !std::filesystem::is_directory(folder, wrong))
        return problem(folder.string(), "is no folder", "Make it first.");
    auto made = guarded([&] {
        auto connection = std::make_unique<ShopConnection>(path, ShopConnection::Use::Make);
        connection->wholly([&] { writeShop(*connection, shop); });
        return ShopFile(std::move(connection), shop.settings);
    });
    if (!made)
        removeUnfinished(path); // Ours alone: it was not there before.
    return made;
}

Result<ShopFile> ShopFile::open(const std::filesystem::path &path, OpenMode mode)
{
    return guarded([&] {
        throwUnlessShopFile(path);
        auto connection = std::make_unique<ShopConnection>(path, mode == OpenMode::ReadWrite
                                                                     ? ShopConnection::Use::Write
                                                                     : ShopConnection::Use::Read);
        throwUnlessOurMarks(path, connection->one("PRAGMA application_id").toLongLong(),
                            connection->one("PRAGMA user_version").toLongLong());
        if (mode == OpenMode::ReadWrite)
            checkQuickly(*connection);
        auto settings = settingsIn(*connection);
        return ShopFile(std::move(connection), std::move(settings));
    });
}

Result<Verification> ShopFile::verify(const std::filesystem::path &path)
{
    return guarded([&] {
        throwUnlessShopFile(path);
        const ShopConnection connection(path, ShopConnection::Use::Read);
        throwUnlessOurMarks(path, connection.one("PRAGMA application_id").toLongLong(),
                            connection.one("PRAGMA user_version").toLongLong());
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
        m_connection->wholly([&] { writeDocument(*m_connection, name, content, {who, now}); });
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
        m_connection->wholly([&] {
            JournalWriter writer(*m_connection);
            for (const auto &movement : movements)
                done.push_back(writer.append(movement));
            writer.finish();
        });
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

Result<Appended> ShopFile::record(const BoxCheck &check)
{
    return guarded([&] {
        Appended done{check.id, false};
        m_connection->wholly([&] {
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
        for (auto query = m_connection->run(sql::SelectBoxChecks); query.next();) {
            std::array<std::uint8_t, 16> id{};
            const auto bytes = query.value(1).toByteArray();
            std::copy_n(bytes.begin(), std::min<qsizetype>(16, bytes.size()), id.begin());
            checks.push_back({MovementId::ofBytes(id), query.value(2).toString().toStdString(),
                              query.value(3).toString().toStdString(),
                              missingOf(query.value(4).toString().toStdString()),
                              query.value(5).toString().toStdString(),
                              query.value(6).toLongLong()});
        }
        return checks;
    });
}

} // namespace flarestock
