// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/migration.h"

#include "model/storage/file/file_header.h"
#include "model/storage/new_shop.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/backup.h"
#include "model/storage/upkeep/layers_of_before.h"
#include "model/storage/upkeep/schema.h"

#include <cstdlib>

namespace flarestock {

namespace {

/// What a shop of version 2 cannot be without: where counts find more or less, and the bench.
void addPlaceOfKind(FileConnection &connection, const Place &wanted)
{
    std::int64_t last = 0;
    bool taken = false;
    for (auto query = connection.run(sql::SelectPlaces); connection.next(query);) {
        last = query.value(0).toLongLong();
        if (query.value(3).toString().toStdString() == text(wanted.kind))
            return;
        taken = taken || query.value(1).toString().toStdString() == wanted.id;
    }
    Place place = wanted;
    if (taken)
        place.id += "-2";
    writePlace(connection, place, last + 1);
}

void fromOneToTwo(FileConnection &connection)
{
    // Where rows point at each other is judged at the end, when all of them are there.
    connection.run("PRAGMA defer_foreign_keys = ON");
    for (const auto statement : sql::setAside())
        connection.run(statement);
    for (const auto statement : sql::madeAnew())
        connection.run(statement);
    auto shop = connection.run("SELECT title, currency, made_at FROM shop_1 WHERE only = 1");
    if (!connection.next(shop))
        throw StorageFailure{{connection.path().string(), "is a shop file that was never finished",
                              "Make it again, or use a backup."}};
    const ShopRow row{shop.value(0).toString().toStdString(),
                      shop.value(1).toString().toStdString(),
                      std::string(text(Costing::MovingAverage)), shop.value(2).toLongLong()};
    shop.clear();
    writeShopRow(connection, row);
    connection.run("DROP TABLE shop_1");
    for (const auto statement : sql::takenOver())
        connection.run(statement);
    addPlaceOfKind(connection, {"bench", "bench", PlaceKind::Bench});
    addPlaceOfKind(connection, {"difference", "found by counting", PlaceKind::Difference});
}

void fromTwoToThree(FileConnection &connection)
{
    for (const auto statement : sql::extended())
        connection.run(statement);
    writeLayersOfBefore(connection);
}

/// All steps from the version of the file to this one, and the version, in one transaction.
void step(FileConnection &connection)
{
    connection.wholly([&] {
        const auto version = versionOf(connection); // Another seat may have been faster.
        if (version == 1)
            fromOneToTwo(connection);
        if (version <= 2)
            fromTwoToThree(connection);
        connection.run("PRAGMA user_version = 3");
    });
}

std::filesystem::path copyName(const FileConnection &connection)
{
    const std::string name =
        connection.path().string() + ".schema-" + std::to_string(versionOf(connection));
    std::filesystem::path free = name;
    for (int number = 2; std::filesystem::exists(free); ++number)
        free = name + "-" + std::to_string(number);
    return free;
}

} // namespace

std::int64_t versionOf(const FileConnection &connection)
{
    return connection.one("PRAGMA user_version").toLongLong();
}

void migrate(FileConnection &connection)
{
    if (versionOf(connection) == SchemaVersion)
        return;
    connection.throwIfDamaged();
    makeCopy(connection, copyName(connection));
    step(connection);
}

MigratedCopy::MigratedCopy(const FileConnection &older)
{
    std::string folder = (std::filesystem::temp_directory_path() / "flarestock-XXXXXX").string();
    if (!::mkdtemp(folder.data()))
        throw StorageFailure{{older.path().string(),
                              "is of an older version, and there is no room to read it",
                              "Open it for writing once, so that it becomes of this version."}};
    m_folder = folder;
    makeCopy(older, m_folder / "shop.flarestock");
    FileConnection connection(m_folder / "shop.flarestock", FileConnection::Use::Write);
    step(connection);
}

MigratedCopy::~MigratedCopy()
{
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

std::unique_ptr<FileConnection> MigratedCopy::open() const
{
    return std::make_unique<FileConnection>(m_folder / "shop.flarestock",
                                            FileConnection::Use::Read);
}

} // namespace flarestock
