// SPDX-License-Identifier: MIT
//
// Server setup: makes the tables of a shop in a database, with their guards, and the roles that may
// work in it. The role that does so owns them; nobody works as it from day to day.

#pragma once

#include "model/storage/server/server_connection.h"
#include "model/storage/shop_file.h"

#include <optional>

namespace flarestock {

struct ServerSetup {
    std::string shop;               ///< The address, with the role that is to own it.
    std::optional<NewShop> begins;  ///< What is written where the database holds no shop yet.
    std::vector<std::string> hands; ///< Roles to log in as, made where they are not there.
};

/// What was made and what was there already.
struct ServerMade {
    bool tables = false;
    bool broughtUp = false; ///< They were of an older program.
    bool shop = false;
    std::vector<std::string> hands;
};

/// All or nothing, and nothing twice. Problem: as ServerConnection, or the server keeps passwords
/// otherwise than by SCRAM, or does not let this role make what is needed.
[[nodiscard]] Result<ServerMade> setUpServer(const ServerSetup &setup);

/// Tables, guards and rights where they are not there, or those of an older program brought up.
/// Inside a transaction. Throws StorageFailure.
ServerMade makeServerTables(ServerConnection &connection);

} // namespace flarestock
