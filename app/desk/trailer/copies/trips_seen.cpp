// SPDX-License-Identifier: MIT

#include "app/desk/trailer/copies/trips_seen.h"

#include "app/desk/trailer/copies/copy_words.h"
#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

namespace {

QString day(const Trip &trip)
{
    return saidDate(dayOf(trip.at));
}

QString saidStands(const TravellingCopy &copy)
{
    const QString brought = copy.brought.empty() ? QString() : day(copy.brought.back());
    if (copy.ended)
        return CopySaid::tr("ended %1").arg(day(*copy.ended));
    if (!copy.isOut)
        return CopySaid::tr("back %1").arg(brought);
    return brought.isEmpty() ? CopySaid::tr("away") : CopySaid::tr("away, brought %1").arg(brought);
}

QString saidDetail(const TravellingCopy &copy)
{
    const Trip &taken = copy.taken;
    QStringList all{taken.who.empty()
                        ? CopySaid::tr("taken %1").arg(day(taken))
                        : CopySaid::tr("taken %1 by %2").arg(day(taken), said(taken.who))};
    if (!taken.with.empty())
        all.append(CopySaid::tr("with %1").arg(said(taken.with)));
    QStringList places;
    for (const std::string &place : copy.places)
        places.append(said(place));
    if (copy.isOut)
        all.append(places.isEmpty()
                       ? CopySaid::tr("no place is its own")
                       : CopySaid::tr("its own: %1").arg(places.join(QStringLiteral(", "))));
    return all.join(QStringLiteral("  ·  "));
}

Row tripRow(const TravellingCopy &copy)
{
    QStringList places;
    for (const std::string &place : copy.places)
        places.append(said(place));
    const QString stands = saidStands(copy);
    const QString detail = saidDetail(copy);
    return {said(copy.taken.trip),
            {said(copy.taken.name), stands, detail, copy.isOut, places,
             CopySaid::tr("copy %1, %2, %3").arg(said(copy.taken.name), stands, detail)}};
}

} // namespace

TripsSeen TripsSeen::of(const ReadShop &read)
{
    TripsSeen seen;
    if (!read)
        return seen;
    const auto looked = read([&seen](ShopFile &file, const Workshop &) -> Result<void> {
        auto all = Travelling::trips(file);
        auto itself = Travelling::ownTrip(file);
        if (!all || !itself)
            return tl::unexpected(all ? itself.error() : all.error());
        seen.trips = std::move(*all);
        seen.own = std::move(*itself);
        return {};
    });
    if (!looked)
        seen.problem = looked.error();
    return seen;
}

int TripsSeen::away() const
{
    return static_cast<int>(std::count_if(trips.copies.begin(), trips.copies.end(),
                                          [](const TravellingCopy &copy) { return copy.isOut; }));
}

QString TripsSeen::awayWith(const std::string &place) const
{
    const TravellingCopy *copy = own ? nullptr : trips.away(place);
    if (copy == nullptr)
        return {};
    return copy->taken.with.empty()
               ? CopySaid::tr("away with the copy %1").arg(said(copy->taken.name))
               : CopySaid::tr("away with %1").arg(said(copy->taken.with));
}

QStringList tripCells()
{
    return {QStringLiteral("name"),  QStringLiteral("stands"), QStringLiteral("detail"),
            QStringLiteral("isOut"), QStringLiteral("places"), QStringLiteral("says")};
}

std::vector<Row> tripRows(const TripsSeen &seen)
{
    std::vector<Row> rows;
    for (const bool isOut : {true, false}) {
        for (auto copy = seen.trips.copies.rbegin(); copy != seen.trips.copies.rend(); ++copy) {
            if (copy->isOut == isOut)
                rows.push_back(tripRow(*copy));
        }
    }
    return rows;
}

} // namespace flarestock
