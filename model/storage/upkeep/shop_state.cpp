// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/shop_state.h"

#include "model/storage/file/opened_file.h"
#include "model/storage/server/opened_server.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

Result<std::string> shopState(const std::filesystem::path &shop)
{
    return guarded([&] {
        std::unique_ptr<ShopConnection> connection;
        if (isServer(shop))
            connection = openServer(shop.string(), OpenMode::ReadOnly);
        else
            connection = openFile(shop, OpenMode::ReadOnly);
        std::string state;
        connection->atOneMoment([&] {
            state.clear();
            connection->eachRow(sql::SelectReplicas, [&](const StoredRow &row) {
                state += row.bytes(1).toHex().toStdString() + ':' + std::to_string(row.number(2)) +
                         ':' + row.bytes(4).toHex().toStdString() + ';';
            });
            state += connection->one(sql::SelectLastDocument).toString().toStdString() + ';';
            for (const std::string_view added : {sql::SelectPlaces, sql::SelectBoxChecks}) {
                std::size_t count = 0;
                connection->eachRow(added, [&count](const StoredRow &) { ++count; });
                state += std::to_string(count) + ';';
            }
        });
        return state;
    });
}

} // namespace flarestock
