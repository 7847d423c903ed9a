// SPDX-License-Identifier: MIT
//
// Opened server: a shop on a server, opened to be read or written, or verified whole.

#pragma once

#include "model/storage/server/server_connection.h"
#include "model/storage/shop_file.h"

#include <memory>

namespace flarestock {

/// Throws StorageFailure: as ServerConnection, or the database holds no shop, or one of a newer or
/// an older program.
[[nodiscard]] std::unique_ptr<ServerConnection> openServer(const std::string &shop, OpenMode mode);
/// Never writes. Throws StorageFailure as openServer().
[[nodiscard]] Verification verifiedServer(const std::string &shop);
/// The address, parsed. Throws StorageFailure.
[[nodiscard]] ServerAddress addressOf(const std::string &shop);

/// The schema version that the tables say.
[[nodiscard]] std::int64_t serverVersionOf(const ServerConnection &connection);
/// Throws StorageFailure where the tables are not there, or of a newer program.
void throwUnlessShop(const ServerConnection &connection);

} // namespace flarestock
