// SPDX-License-Identifier: MIT

#include "model/storage/trailer/travelling.h"

#include "model/storage/file/file_connection.h"
#include "model/storage/journal_reader.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/bringing.h"
#include "model/storage/trailer/own_trip.h"
#include "model/storage/upkeep/backup.h"
#include "model/storage/upkeep/sealed_rows.h"

#include <algorithm>

namespace flarestock {

namespace {

void throwIfCopy(const ShopConnection &shop, const char *what)
{
    if (!shop.trip().empty())
        throw StorageFailure{{shop.name(),
                              std::string("is itself a copy that was taken along: ") + what,
                              "Name the shop that it was taken from."}};
}

/// The places that go along: those that were named, or all drawers.
std::vector<std::string> placesFor(const Departure &departure, const ShopConnection &shop)
{
    const auto here = placesIn(shop);
    std::vector<std::string> going;
    if (departure.places.empty()) {
        for (const Place &place : here) {
            if (place.kind == PlaceKind::Drawer)
                going.push_back(place.id);
        }
    }
    for (const std::string &name : departure.places) {
        const auto found = std::find_if(here.begin(), here.end(),
                                        [&name](const Place &one) { return one.id == name; });
        if (found == here.end() || !isStock(found->kind))
            throw StorageFailure{
                {"place " + name,
                 found == here.end() ? "is not in this shop" : "is no place where stock lies",
                 "Name drawers, bins or shelves: flarestock place lists them."}};
        if (std::find(going.begin(), going.end(), name) == going.end())
            going.push_back(name);
    }
    const Trips trips = tripsIn(shop);
    for (const std::string &place : going) {
        const TravellingCopy *away = trips.away(place);
        if (away)
            throw StorageFailure{{"place " + place,
                                  "is with the copy \"" + away->taken.name + "\" already",
                                  "Bring that back first, or name other places: --places."}};
    }
    return going;
}

std::string freeName(const Departure &departure, const std::filesystem::path &to,
                     const Trips &trips)
{
    const std::string wanted = departure.name.empty() ? to.stem().string() : departure.name;
    std::string name = wanted;
    for (int number = 2; trips.named(name) && trips.named(name)->isOut; ++number)
        name = wanted + "-" + std::to_string(number);
    return name;
}

void write(ShopConnection &shop, const Record &record)
{
    JournalWriter writer(shop);
    static_cast<void>(writer.append(record));
    writer.finish();
}

/// Makes the file, says in it whose it is, and leaves nothing beside it.
void makeTravelling(const ShopConnection &shop, const std::filesystem::path &to, Trip trip)
{
    const auto unnamed = unfinishedName(to);
    try {
        shop.copyTo(unnamed);
        {
            FileConnection copy(unnamed, FileConnection::Use::Write);
            trip.id = OwnEntries{trip.id, {}, {}, 0, 1}.nextId();
            trip.state = TripState::Along;
            copy.wholly([&] { write(copy, trip.asRecord()); });
            if (copy.one("PRAGMA journal_mode = DELETE").toString() != QStringLiteral("delete"))
                throw StorageFailure{{to.string(), "could not be written", "Check the disk."}};
        }
        giveName(unnamed, to);
    } catch (StorageFailure &failure) {
        removeUnfinished(unnamed); // Ours alone: nobody knows its name.
        if (failure.problem.thing == unnamed.string())
            failure.problem.thing = to.string();
        throw;
    }
}

/// What was said under that id before, so that it counts once.
std::optional<Trip> saidBefore(const ShopConnection &shop, const MovementId &id)
{
    auto query = shop.run(sql::SelectRecord, {idBytes(id)});
    if (!shop.next(query))
        return std::nullopt;
    auto trip = Trip::read(recordRow(query).record);
    if (!trip)
        throw StorageFailure{{"record " + id.text(),
                              "stands in the journal already and says "
                              "something else",
                              "Give this one an id of its own."}};
    return std::move(*trip);
}

const TravellingCopy &awayCopy(const Trips &trips, const std::string &name)
{
    const TravellingCopy *copy = trips.named(name);
    if (!copy || !copy->isOut)
        throw StorageFailure{{"the copy " + name, copy ? "is not away" : "was never taken",
                              "flarestock trailer list says which are."}};
    return *copy;
}

Trip saidOf(const TravellingCopy &copy, TripState state, const Said &said)
{
    Trip trip = copy.taken;
    trip.id = said.id;
    trip.state = state;
    trip.places.clear();
    trip.who = said.who;
    trip.why = said.why;
    trip.at = said.at;
    return trip;
}

/// Throws where what stands beside the journal was changed from outside; each new entry is proved
/// when its turn comes.
void throwIfChanged(const ShopConnection &copy)
{
    checkSealed(copy, [&copy](const std::string &wrong) {
        throw StorageFailure{{copy.name(), "is not whole: " + wrong,
                              "Nothing of it was taken. Keep it aside: flarestock verify says what "
                              "is wrong with it."}};
    });
}

} // namespace

Result<Trip> Travelling::take(ShopFile &shop, const std::filesystem::path &to,
                              const Departure &departure, const Said &said)
{
    return guarded([&] {
        ShopConnection &connection = connectionOf(shop);
        throwIfCopy(connection, "another is taken from the shop");
        std::error_code wrong;
        if (std::filesystem::exists(std::filesystem::symlink_status(to, wrong)))
            throw StorageFailure{
                {to.string(), "exists already", "Name another file, or move it away."}};
        Trip trip;
        connection.wholly([&] {
            if (const auto before = saidBefore(connection, said.id)) {
                trip = *before;
                return;
            }
            trip = Trip{};
            trip.id = said.id;
            trip.trip = said.id.text();
            trip.name = freeName(departure, to, tripsIn(connection));
            trip.with = departure.with;
            trip.places = placesFor(departure, connection);
            trip.who = said.who;
            trip.why = said.why;
            trip.at = said.at;
            write(connection, trip.asRecord());
        });
        try {
            makeTravelling(connection, to, trip);
        } catch (StorageFailure &) { // It did not go.
            Trip none = trip;
            none.id = OwnEntries{said.id, {}, {}, 0, 2}.nextId();
            none.state = TripState::Ended;
            none.why = "the file could not be made";
            connection.wholly([&] { write(connection, none.asRecord()); });
            throw;
        }
        return trip;
    });
}

Result<BroughtBack> Travelling::bring(ShopFile &shop, const std::filesystem::path &copy,
                                      const Bringing &bringing, const Said &said)
{
    const auto file = ShopFile::open(copy, OpenMode::ReadOnly);
    if (!file)
        return tl::unexpected(file.error());
    return bring(shop, *file, bringing, said);
}

Result<BroughtBack> Travelling::bring(ShopFile &shop, const ShopFile &copy,
                                      const Bringing &bringing, const Said &said)
{
    return guarded([&] {
        ShopConnection &connection = connectionOf(shop);
        throwIfCopy(connection, "copies are brought to the shop");
        goOn(bringing, 0, 0);
        CopyRead read;
        copy.m_connection->atOneMoment([&] {
            throwIfChanged(*copy.m_connection);
            read = readCopy(*copy.m_connection, chainsOf(connection));
        });
        BroughtBack back;
        const StorageFailure onlyLooked{{"the copy", "was only looked at", "Nothing is wrong."}};
        try {
            connection.wholly([&] {
                back = broughtInto(connection, read, bringing, said);
                if (!back.written && !back.already)
                    throw onlyLooked; // Nothing of it stays.
            });
        } catch (const StorageFailure &failure) {
            if (failure.problem.wrong != onlyLooked.problem.wrong)
                throw;
        }
        return back;
    });
}

Result<Trips> Travelling::trips(ShopFile &shop)
{
    return guarded([&] { return tripsIn(connectionOf(shop)); });
}

Result<std::optional<Trip>> Travelling::ownTrip(const ShopFile &shop)
{
    return guarded([&] {
        return connectionOf(shop).trip().empty() ? std::optional<Trip>()
                                                 : ownTripOf(connectionOf(shop));
    });
}

Result<Trip> Travelling::release(ShopFile &shop, const std::string &copy,
                                 const std::vector<std::string> &places, const Said &said)
{
    return guarded([&] {
        ShopConnection &connection = connectionOf(shop);
        throwIfCopy(connection, "its places are released in the shop");
        Trip trip;
        connection.wholly([&] {
            if (const auto before = saidBefore(connection, said.id)) {
                trip = *before;
                return;
            }
            const Trips trips = tripsIn(connection);
            const TravellingCopy &away = awayCopy(trips, copy);
            trip = saidOf(away, TripState::Released, said);
            trip.places = places;
            for (const std::string &place : places) {
                if (!away.places.contains(place))
                    throw StorageFailure{{"place " + place,
                                          "is not with the copy \"" + away.taken.name + '"',
                                          "flarestock trailer list says which are."}};
            }
            write(connection, trip.asRecord());
        });
        return trip;
    });
}

Result<Trip> Travelling::end(ShopFile &shop, const std::string &copy, const Said &said)
{
    return guarded([&] {
        ShopConnection &connection = connectionOf(shop);
        throwIfCopy(connection, "a trip is ended in the shop");
        Trip trip;
        connection.wholly([&] {
            if (const auto before = saidBefore(connection, said.id)) {
                trip = *before;
                return;
            }
            const Trips trips = tripsIn(connection);
            trip = saidOf(awayCopy(trips, copy), TripState::Ended, said);
            write(connection, trip.asRecord());
        });
        return trip;
    });
}

} // namespace flarestock
