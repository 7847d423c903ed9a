// SPDX-License-Identifier: MIT

#include "model/storage/trailer/away.h"

#include "model/journal/serving.h"
#include "model/storage/trailer/own_trip.h"

#include <QDateTime>

namespace flarestock {

namespace {

std::string dayOf(std::int64_t at)
{
    return QDateTime::fromMSecsSinceEpoch(at, Qt::UTC).date().toString(Qt::ISODate).toStdString();
}

/// What no name of a lot, nor of a build, ends with.
constexpr std::string_view AwayMark = "\x01 away";

} // namespace

WhatIsAway WhatIsAway::in(const ShopConnection &connection)
{
    WhatIsAway away;
    away.m_trips = tripsIn(connection);
    const std::string own = connection.trip();
    std::erase_if(away.m_trips.copies, [&own](const TravellingCopy &copy) {
        return !copy.isOut || copy.taken.trip == own;
    });
    return away;
}

std::string WhatIsAway::whoHas(const std::string &place) const
{
    const TravellingCopy *copy = m_trips.away(place);
    if (!copy)
        return {};
    const Trip &taken = copy->taken;
    return "with the copy \"" + taken.name + '"' +
           (taken.with.empty() ? "" : ", which " + taken.with + " has") + ", out since " +
           dayOf(taken.at);
}

std::string WhatIsAway::keepsFrom(const Promise &promise, const Ledger &ledger,
                                  const Bars &bars) const
{
    const Claim now = ledger.claim({promise.part, promise.build});
    Claim then = now;
    if (m_trips.copies.empty() ||
        __builtin_add_overflow(now.promised, promise.quantity, &then.promised))
        return {};
    const std::int64_t more = then.outstanding() - now.outstanding();
    std::string with;
    // What is away bears another lot here, which the further promise may not use.
    Bars marked = bars;
    const auto own = bars.find(promise.build);
    const auto anybody = bars.find(std::string_view());
    const std::string further = promise.build + std::string(AwayMark);
    std::set<LotKey> &barred = marked[further];
    barred = own != bars.end()       ? own->second
             : anybody != bars.end() ? anybody->second
                                     : std::set<LotKey>();
    std::vector<AtHand> lying;
    for (const auto &[key, held] : ledger.balancesOf(promise.part)) {
        const Place *place = ledger.place(key.place);
        if (!place || !isStock(place->kind) || !isFree(key.condition))
            continue;
        AtHand one{key, held.quantity};
        if (const std::string who = whoHas(key.place); !who.empty()) {
            with = who;
            one.key.lot += AwayMark;
            for (auto &[build, lots] : marked) {
                if (lots.contains({key.part, key.lot}))
                    lots.insert({key.part, one.key.lot});
            }
            barred.insert({key.part, one.key.lot});
        }
        lying.push_back(std::move(one));
    }
    if (with.empty() || more <= 0)
        return {};
    std::vector<Wanted> wanted;
    for (auto at = ledger.claims().lower_bound(ClaimKey{promise.part, {}});
         at != ledger.claims().end() && at->first.part == promise.part; ++at) {
        if (at->second.outstanding() > 0)
            wanted.push_back({at->first.build, at->second.outstanding()});
    }
    const auto before = sumOf(served(wanted, lying, marked));
    wanted.push_back({further, more});
    return sumOf(served(wanted, lying, marked)) == before + more ? std::string() : with;
}

} // namespace flarestock
