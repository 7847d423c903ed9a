// SPDX-License-Identifier: MIT

#include "model/storage/server/opened_server.h"

#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_sql.h"
#include "model/storage/upkeep/verification.h"

namespace flarestock {

namespace {

/// Only the owner may change tables.
void throwIfOlder(const ServerConnection &connection)
{
    const auto version = serverVersionOf(connection);
    if (version < sql::ServerSchemaVersion)
        throw StorageFailure{
            {connection.name(),
             "was made by an older Flarestock (schema " + std::to_string(version) +
                 " on servers, this one wants " + std::to_string(sql::ServerSchemaVersion) + ")",
             "Let its owner run flarestock server setup on it once more: nothing of "
             "it is lost."}};
}

} // namespace

std::int64_t serverVersionOf(const ServerConnection &connection)
{
    return connection.one(sql::SelectServerVersion).toLongLong();
}

void throwUnlessShop(const ServerConnection &connection)
{
    if (!connection.one(sql::SelectHasTables).toBool())
        throw StorageFailure{
            {connection.name(), "holds no shop",
             "Name another database, or make one there: flarestock server setup."}};
    const auto version = serverVersionOf(connection);
    if (version > sql::ServerSchemaVersion)
        throw StorageFailure{{connection.name(),
                              "was made by a newer Flarestock (schema " + std::to_string(version) +
                                  " on servers, this one knows " +
                                  std::to_string(sql::ServerSchemaVersion) + ")",
                              "Update Flarestock, then open it again."}};
}

ServerAddress addressOf(const std::string &shop)
{
    auto address = ServerAddress::parse(shop);
    if (!address)
        throw StorageFailure{address.error()};
    return std::move(*address);
}

std::unique_ptr<ServerConnection> openServer(const std::string &shop, OpenMode mode)
{
    auto connection = std::make_unique<ServerConnection>(
        addressOf(shop),
        mode == OpenMode::ReadOnly ? ServerConnection::Use::Read : ServerConnection::Use::Write);
    throwUnlessShop(*connection);
    throwIfOlder(*connection);
    return connection;
}

Verification verifiedServer(const std::string &shop)
{
    const auto connection = openServer(shop, OpenMode::ReadOnly);
    try {
        return verified(*connection);
    } catch (const StorageFailure &failure) {
        if (failure.answer == StorageFailure::Answer::Lost)
            throw;
        Verification said;
        said.problems.push_back(failure.problem.sentence());
        return said;
    }
}

} // namespace flarestock
