// SPDX-License-Identifier: MIT

#include "model/storage/trailer/copy_read.h"

#include "model/storage/shop_sql.h"
#include "model/storage/trailer/own_trip.h"

#include <algorithm>

namespace flarestock {

namespace {

QByteArray shopSealOf(const ShopConnection &connection)
{
    auto query = connection.run(sql::SelectShop);
    return connection.next(query) ? query.value(4).toByteArray() : QByteArray();
}

} // namespace

void goOn(const Bringing &bringing, std::size_t done, std::size_t of)
{
    if (bringing.step && !bringing.step(done, of))
        throw StorageFailure{
            {"the copy", "was not brought: it was stopped", "Nothing of it was written."}};
}

CopyRead readCopy(const ShopConnection &copy, const KnownChains &known)
{
    CopyRead read;
    const auto own = ownTripOf(copy);
    if (!own)
        throw StorageFailure{{copy.name(), "is no copy that was taken along",
                              "Name the file that flarestock trailer take has made."}};
    read.trip = own->trip;
    read.ends = chainEnds(copy);
    read.news = newsBehind(known, copy);
    read.beside = besideJournal(copy);
    read.shopSeal = shopSealOf(copy);
    for (const auto &[id, end] : read.ends) {
        const auto here = known.find(id);
        const auto both = here == known.end() ? 0 : std::min(here->second, end.entries);
        if (both > 0)
            read.hashes[id] = {both, hashOf(copy, end.replica, both)};
    }
    return read;
}

void throwUnlessOfThisShop(const CopyRead &copy, const ShopConnection &shop)
{
    const auto ends = chainEnds(shop);
    const bool related = std::any_of(copy.hashes.begin(), copy.hashes.end(), [&](const auto &one) {
        return ends.at(one.first).replica > 0;
    });
    if (copy.shopSeal != shopSealOf(shop) || !related)
        throw StorageFailure{
            {"the copy", "is of another shop", "Bring it to the shop that it was taken from."}};
    for (const auto &[id, last] : copy.hashes) {
        const ChainEnd &here = ends.at(id);
        const ChainEnd &there = copy.ends.at(id);
        if (here.replica > 0 && there.entries > here.entries)
            throw StorageFailure{{"the shop",
                                  "was put back to before the copy was taken: it lacks " +
                                      std::to_string(there.entries - here.entries) +
                                      " entries of its own that the copy has",
                                  "Restore a newer backup of the shop, or go on from the copy."}};
        if (hashOf(shop, here.replica, last.first) != last.second)
            throw StorageFailure{
                {"the copy",
                 "has gone on in two places: what was brought of it before is not what "
                 "it says",
                 "Use one file of a copy only; what the other one holds has to be written by "
                 "hand."}};
    }
}

} // namespace flarestock
