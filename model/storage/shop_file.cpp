// SPDX-License-Identifier: MIT

#include "model/storage/shop_file.h"

#include "model/storage/file/new_file.h"
#include "model/storage/file/opened_file.h"
#include "model/storage/journal_reader.h"
#include "model/storage/journal_writer.h"
#include "model/storage/new_shop.h"
#include "model/storage/server/opened_server.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

namespace {

ShopSettings settingsIn(const ShopConnection &connection)
{
    auto query = connection.run(sql::SelectShop);
    if (!connection.next(query))
        throw StorageFailure{{connection.name(), "is a shop file that was never finished",
                              "Make it again, or use a backup."}};
    auto currency = Currency::parse(query.value(1).toString().toStdString());
    if (!currency)
        throw StorageFailure{
            {connection.name(), "has a currency that nobody knows", "Restore the newest backup."}};
    return {query.value(0).toString().toStdString(), *currency, costingIn(connection)};
}

/// Where the disk or the line failed in the middle nobody knows whether it has them: says which to
/// ask for again.
void nameUnconfirmed(StorageFailure &failure, const std::vector<Movement> &movements)
{
    const bool isRefused =
        failure.nativeCode == 0 && failure.answer != StorageFailure::Answer::Lost;
    if (isRefused || movements.empty())
        return; // It is not there.
    failure.problem.remedy += " Not confirmed is movement " + movements.front().id.text();
    if (movements.size() > 1)
        failure.problem.remedy += " with " + std::to_string(movements.size() - 1) + " more";
    failure.problem.remedy += ": said again with its id, it counts once.";
}

/// Where a document is another than in `basis`, or one of the two has it alone.
void throwIfOthers(const TextFiles &newest, const TextFiles &basis)
{
    const auto [one, other] =
        std::mismatch(newest.begin(), newest.end(), basis.begin(), basis.end());
    if (one == newest.end() && other == basis.end())
        return;
    throw StorageFailure{{one == newest.end() ? other->first : one->first,
                          "was changed by somebody else just now, so that nothing was written",
                          "Look at what it says now, then do it again."}};
}

} // namespace

ShopFile::ShopFile(std::filesystem::path path, std::unique_ptr<ShopConnection> connection,
                   ShopSettings settings)
    : m_path(std::move(path)), m_connection(std::move(connection)), m_settings(std::move(settings))
{
}

ShopFile::ShopFile(ShopFile &&) noexcept = default;

ShopFile &ShopFile::operator=(ShopFile &&) noexcept = default;

ShopFile::~ShopFile() = default;

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
        std::unique_ptr<ShopConnection> connection;
        if (isServer(path))
            connection = openServer(path.string(), mode);
        else
            connection = openFile(path, mode);
        auto settings = settingsIn(*connection);
        return ShopFile(path, std::move(connection), std::move(settings));
    });
}

Result<Verification> ShopFile::verify(const std::filesystem::path &path)
{
    return guarded(
        [&] { return isServer(path) ? verifiedServer(path.string()) : verifiedFile(path); });
}

const ShopSettings &ShopFile::settings() const noexcept
{
    return m_settings;
}

std::filesystem::path ShopFile::path() const
{
    return m_path;
}

Result<void> ShopFile::putDocument(const std::string &name, const std::string &content,
                                   const std::string &who, std::int64_t now)
{
    return guarded([&] {
        m_connection->wholly([&] { writeDocument(*m_connection, name, content, {who, now}); });
    });
}

Result<void> ShopFile::putDocuments(const TextFiles &changed, const TextFiles &basis,
                                    const std::string &who, std::int64_t now)
{
    return guarded([&] {
        m_connection->wholly([&] {
            throwIfOthers(newestDocuments(*m_connection), basis);
            for (const auto &[name, content] : changed)
                writeDocument(*m_connection, name, content, {who, now});
        });
    });
}

Result<void> ShopFile::changeDocument(const std::string &name, const DocumentChange &change,
                                      const std::string &who, std::int64_t now)
{
    return guarded([&] {
        m_connection->wholly([&] {
            const auto content = change(newestDocument(*m_connection, name));
            if (!content)
                throw StorageFailure{content.error()};
            writeDocument(*m_connection, name, *content, {who, now});
        });
    });
}

Result<std::vector<Appended>> ShopFile::append(const std::vector<Movement> &movements)
{
    return append(Action{{}, movements});
}

Result<std::vector<Appended>> ShopFile::append(const Action &action)
{
    return guarded([&] {
        std::vector<Appended> done;
        try {
            m_connection->wholly([&] {
                done.clear();
                JournalWriter writer(*m_connection, action.promised);
                for (const auto &record : action.records)
                    done.push_back(writer.append(record));
                for (const auto &movement : action.movements)
                    done.push_back(writer.append(movement));
                for (const auto &record : action.afterwards)
                    done.push_back(writer.append(record));
                writer.finish();
            });
        } catch (StorageFailure &failure) {
            nameUnconfirmed(failure, action.movements);
            throw;
        }
        return done;
    });
}

Result<Counted> ShopFile::append(Count count, const MovementId &difference)
{
    return guarded([&] {
        Counted done;
        m_connection->wholly([&] {
            done = {};
            JournalWriter writer(*m_connection, Promised::MayGo);
            count.expected = writer.balance(count.key).quantity;
            done.expected = count.expected;
            done.count = writer.append(count.asRecord());
            if (done.count.already) {
                done.expected = Count::read(recordIn(*m_connection, count.id)).value().expected;
                return;
            }
            const auto &ledger = writer.knowing(count.key.part);
            const auto places = ledger.places();
            const auto place = std::find_if(places.begin(), places.end(), [](const Place &one) {
                return one.kind == PlaceKind::Difference;
            });
            if (place == places.end())
                throw StorageFailure{{m_connection->name(),
                                      "has no place for what counts find more or less",
                                      "Add a place of the kind difference."}};
            auto movement = differenceOf(count, ledger, place->id);
            if (movement) {
                movement->id = difference;
                done.difference = writer.append(*movement).movement;
            }
            writer.finish();
        });
        return done;
    });
}

Result<void> ShopFile::add(const Place &place)
{
    return guarded([&] {
        m_connection->wholly([&] {
            const auto there = placesIn(*m_connection);
            if (std::any_of(there.begin(), there.end(),
                            [&place](const Place &one) { return one.id == place.id; }))
                throw StorageFailure{
                    {"place " + place.id, "is there already", "Give it another name."}};
            writePlace(*m_connection, place, static_cast<std::int64_t>(there.size()) + 1);
        });
    });
}

Result<void> ShopFile::backUp(const std::filesystem::path &to) const
{
    return guarded([&] { m_connection->copyTo(to); });
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

} // namespace flarestock
