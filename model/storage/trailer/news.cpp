// SPDX-License-Identifier: MIT

#include "model/storage/trailer/news.h"

#include "model/storage/shop_sql.h"

#include <algorithm>

namespace flarestock {

std::map<QByteArray, ChainEnd> chainEnds(const ShopConnection &connection)
{
    std::map<QByteArray, ChainEnd> ends;
    connection.runAgain(sql::SelectReplicas, {}, [&ends](const QSqlQuery &query) {
        const QByteArray id = query.value(1).toByteArray();
        ends[id] = {query.value(0).toLongLong(), id, query.value(2).toLongLong(),
                    query.value(3).toLongLong(), query.value(4).toByteArray()};
    });
    return ends;
}

KnownChains chainsOf(const ShopConnection &connection)
{
    KnownChains known;
    for (const auto &[id, end] : chainEnds(connection))
        known[id] = end.entries;
    return known;
}

std::vector<NewsEntry> newsBehind(const KnownChains &known, const ShopConnection &connection)
{
    const TakenIn takenIn(connection);
    std::vector<NewsEntry> news;
    for (const auto &[chain, end] : chainEnds(connection)) {
        const QByteArray &id = end.id;
        const auto before = known.find(chain);
        const std::int64_t from = before == known.end() ? 0 : before->second;
        if (end.entries <= from)
            continue;
        const Values behind{number(end.replica), number(from)};
        connection.runAgain(sql::SelectMovementsBehind, behind, [&](const QSqlQuery &query) {
            JournalRow row = journalRow(query);
            auto bytes = canonicalBytes(row.movement);
            news.push_back(
                {row, id, takenIn.countOf(row), std::move(row.movement), {}, std::move(bytes)});
        });
        connection.runAgain(sql::SelectRecordsBehind, behind, [&](const QSqlQuery &query) {
            RecordRow row = recordRow(query);
            auto bytes = bytesOf(row);
            news.push_back(
                {row, id, takenIn.countOf(row), {}, std::move(row.record), std::move(bytes)});
        });
    }
    std::sort(news.begin(), news.end(),
              [](const NewsEntry &a, const NewsEntry &b) { return isBefore(a.place, b.place); });
    return news;
}

QByteArray hashOf(const ShopConnection &connection, std::int64_t replica, std::int64_t sequence)
{
    const Values place{number(replica), number(sequence), number(replica), number(sequence)};
    const auto hash = connection.one(sql::SelectEntryHash, place);
    if (!hash.isValid())
        throw StorageFailure{{connection.name(),
                              "lacks entry " + std::to_string(sequence) + " of a chain",
                              "Run flarestock verify on it."}};
    return hash.toByteArray();
}

} // namespace flarestock
