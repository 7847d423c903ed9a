// SPDX-License-Identifier: MIT

#include "model/storage/trailer/own_trip.h"

#include "model/storage/shop_rows.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

std::optional<Trip> ownTripOf(const ShopConnection &connection)
{
    auto query = connection.run(sql::SelectOwnTrip);
    if (!connection.next(query))
        return std::nullopt;
    auto trip = Trip::read(recordRow(query).record);
    if (!trip)
        throw StorageFailure{trip.error()};
    if (trip->state != TripState::Along)
        return std::nullopt;
    return std::move(*trip);
}

std::string tripIn(const ShopConnection &connection)
{
    try {
        const auto own = ownTripOf(connection);
        return own ? own->trip : std::string();
    } catch (const StorageFailure &) { // Of an older schema, or damaged.
        return {};
    }
}

Trips tripsIn(const ShopConnection &connection)
{
    std::vector<Record> records;
    connection.runAgain(sql::SelectRecordsAbout,
                        {text(std::string(TripSubject)), text(std::string(text(RecordKind::Trip)))},
                        [&](const QSqlQuery &row) { records.push_back(recordRow(row).record); });
    auto trips = Trips::of(records);
    if (!trips)
        throw StorageFailure{trips.error()};
    return std::move(*trips);
}

} // namespace flarestock
