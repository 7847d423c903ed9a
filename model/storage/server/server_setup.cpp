// SPDX-License-Identifier: MIT

#include "model/storage/server/server_setup.h"

#include "model/storage/new_shop.h"
#include "model/storage/server/opened_server.h"
#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_sql.h"
#include "model/storage/upkeep/layers_of_before.h"

namespace flarestock {

namespace {

/// A name as SQL takes it, whatever its letters.
std::string named(std::string name)
{
    for (std::size_t at = name.find('"'); at != std::string::npos; at = name.find('"', at + 2))
        name.insert(at, "\"");
    return '"' + name + '"';
}

/// The role whose rights everybody has who works in the shop; nobody logs in as it.
std::string handsOf(const ServerConnection &connection)
{
    return connection.address().database + " hands";
}

bool hasRole(const ServerConnection &connection, const std::string &role)
{
    return connection
        .one("SELECT 1 FROM pg_roles WHERE rolname = ?", {QString::fromStdString(role)})
        .isValid();
}

void throwUnlessScram(const ServerConnection &connection)
{
    if (connection.one("SHOW password_encryption").toString() != QStringLiteral("scram-sha-256"))
        throw StorageFailure{{connection.name(), "keeps new passwords otherwise than by SCRAM",
                              "Set password_encryption = 'scram-sha-256' there, and each password "
                              "anew."}};
}

/// Where another setup has made it meanwhile, that one counts.
void createRole(ServerConnection &connection, const std::string &role)
{
    connection.run("DO $role$ BEGIN CREATE ROLE " + role +
                   "; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $role$");
}

void makeHands(ServerConnection &connection, const std::vector<std::string> &hands,
               ServerMade &made)
{
    for (const auto &hand : hands) {
        if (!hasRole(connection, hand)) {
            createRole(connection, named(hand) + " LOGIN");
            made.hands.push_back(hand);
        }
        connection.run("GRANT " + named(handsOf(connection)) + " TO " + named(hand));
    }
}

void giveRights(ServerConnection &connection)
{
    const std::string hands = named(handsOf(connection));
    if (!hasRole(connection, handsOf(connection)))
        createRole(connection, hands + " NOLOGIN");
    const std::string database = named(connection.address().database);
    connection.run("REVOKE ALL ON DATABASE " + database + " FROM PUBLIC");
    connection.run("GRANT CONNECT ON DATABASE " + database + " TO " + hands);
    for (const auto right : sql::serverRights()) {
        std::string statement(right);
        if (const auto at = statement.find("%1"); at != std::string::npos)
            statement.replace(at, 2, hands);
        connection.run(statement);
    }
}

/// Tables of an older program become of this one's, with all that they hold.
bool bringUp(ServerConnection &connection)
{
    if (serverVersionOf(connection) == sql::ServerSchemaVersion)
        return false;
    for (const auto statement : sql::serverExtended())
        connection.run(statement);
    if (connection.one("SELECT 1 FROM shop").isValid())
        writeLayersOfBefore(connection);
    return true;
}

} // namespace

ServerMade makeServerTables(ServerConnection &connection)
{
    throwUnlessScram(connection);
    ServerMade made;
    made.tables = !connection.one(sql::SelectHasTables).toBool();
    if (!made.tables) {
        throwUnlessShop(connection);
        made.broughtUp = bringUp(connection);
    } else {
        connection.run("CREATE SCHEMA flarestock");
        for (const auto statement : sql::serverSchema())
            connection.run(statement);
        // Whoever says that he only copies rows is refused as well.
        for (const auto guard : sql::serverGuards()) {
            const auto dot = guard.find('.');
            connection.run("ALTER TABLE " + std::string(guard.substr(0, dot)) +
                           " ENABLE ALWAYS TRIGGER " + std::string(guard.substr(dot + 1)));
        }
    }
    giveRights(connection);
    return made;
}

Result<ServerMade> setUpServer(const ServerSetup &setup)
{
    return guarded([&] {
        ServerConnection connection(addressOf(setup.shop), ServerConnection::Use::Own);
        ServerMade made;
        connection.wholly([&] {
            made = makeServerTables(connection);
            makeHands(connection, setup.hands, made);
            if (!setup.begins || connection.one("SELECT 1 FROM shop").isValid())
                return;
            writeShop(connection, *setup.begins);
            made.shop = true;
        });
        return made;
    });
}

} // namespace flarestock
