// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/layers_of_before.h"

#include "model/storage/journal_reader.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

void writeLayersOfBefore(ShopConnection &connection)
{
    if (costingIn(connection) != Costing::FirstInFirstOut)
        return;
    Ledger ledger(placesIn(connection), Costing::FirstInFirstOut);
    ledger.remember(takenBackIn(connection));
    connection.eachRow(sql::SelectMovements, [&](const StoredRow &row) {
        const auto movement = journalRow(row).movement;
        if (const auto refusal = ledger.apply(movement))
            throw StorageFailure{
                {connection.name(),
                 "holds movement " + movement.id.text() + ", which " + std::string(text(*refusal)),
                 "Run flarestock verify on it and restore the newest backup."}};
    });
    for (const auto &[key, layers] : ledger.layers()) {
        for (const auto &[rank, layer] : layers)
            connection.run(sql::PutLayer, layerValues(key, rank, layer));
    }
}

} // namespace flarestock
