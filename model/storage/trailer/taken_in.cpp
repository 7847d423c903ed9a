// SPDX-License-Identifier: MIT

#include "model/storage/trailer/taken_in.h"

#include "model/journal/notes/decision.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/own_trip.h"

namespace flarestock {

std::vector<std::uint8_t> bytesOf(const RecordRow &row)
{
    if (isTakenIn(row)) {
        if (auto kept = keptBytes(row.record))
            return std::move(*kept);
    }
    return canonicalBytes(row.record);
}

TakenIn::TakenIn(const ShopConnection &connection)
{
    std::map<std::string, std::int64_t> numbers;
    connection.runAgain(sql::SelectReplicas, {}, [&numbers](const QSqlQuery &query) {
        numbers.emplace(query.value(1).toByteArray().toHex().toStdString(),
                        query.value(0).toLongLong());
    });
    for (const TravellingCopy &copy : tripsIn(connection).copies) {
        for (const Trip &brought : copy.brought) {
            for (const ChainTaken &chain : brought.chains) {
                const auto number = numbers.find(chain.replica);
                if (number == numbers.end())
                    continue; // Its entries will be missed.
                std::int64_t entry = chain.first;
                for (const auto &[from, to] : chain.counts) {
                    m_counts[number->second][entry] = from;
                    entry += to - from + 1;
                }
            }
        }
    }
}

std::int64_t TakenIn::countOf(const ChainPlace &place) const
{
    const auto chain = m_counts.find(place.replica);
    if (!isTakenIn(place) || chain == m_counts.end())
        return place.lamport;
    auto run = chain->second.upper_bound(place.sequence);
    if (run == chain->second.begin())
        return place.lamport;
    --run;
    return run->second + (place.sequence - run->first);
}

} // namespace flarestock
