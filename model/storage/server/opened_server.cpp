// SPDX-License-Identifier: MIT

#include "model/storage/server/opened_server.h"

#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_sql.h"
#include "model/storage/verification.h"

namespace flarestock {

void throwUnlessShop(const ServerConnection &connection)
{
    if (!connection.one(sql::SelectHasTables).toBool())
        throw StorageFailure{
            {connection.name(), "holds no shop",
             "Name another database, or make one there: flarestock server setup."}};
    const auto version = connection.one(sql::SelectServerVersion).toLongLong();
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
