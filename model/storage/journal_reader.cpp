// SPDX-License-Identifier: MIT

#include "model/storage/journal_reader.h"

#include "model/storage/shop_sql.h"

namespace flarestock {

void readJournal(const ShopConnection &connection,
                 const std::function<void(const JournalRow &)> &onMovement,
                 const std::function<void(const RecordRow &)> &onRecord)
{
    auto movements = connection.run(sql::SelectMovements);
    auto records = connection.run(sql::SelectRecords);
    const auto nextRecord = [&records]() -> std::optional<RecordRow> {
        if (!records.next())
            return std::nullopt;
        return recordRow(records);
    };
    auto record = nextRecord();
    while (movements.next()) {
        const auto row = journalRow(movements);
        for (; record && isBefore(*record, row); record = nextRecord())
            onRecord(*record);
        onMovement(row);
    }
    for (; record; record = nextRecord())
        onRecord(*record);
}

Record recordIn(const ShopConnection &connection, const MovementId &id)
{
    auto query = connection.run(sql::SelectRecord, {idBytes(id)});
    if (!query.next())
        throw StorageFailure{{"record " + id.text(), "is not in the journal", "Check its id."}};
    return recordRow(query).record;
}

} // namespace flarestock
