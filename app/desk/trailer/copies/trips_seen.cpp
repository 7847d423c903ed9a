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

QString refusalOnDesk(const Problem &problem, const QString &instead)
{
    Problem shown = problem;
    if (shown.remedy.find("--") != std::string::npos ||
        shown.remedy.find("flarestock ") != std::string::npos)
        shown.remedy = instead.toStdString();
    return said(shown.sentence());
}

TripsSeen TripsSeen::of(const std::function<Result<ShopFile>()> &read)
{
    TripsSeen seen;
    if (!read)
        return seen;
    auto file = read();
    if (!file) {
        seen.problem = file.error().sentence();
        return seen;
    }
    auto trips = Travelling::trips(*file);
    auto own = Travelling::ownTrip(*file);
    if (trips && own) {
        seen.trips = std::move(*trips);
        seen.own = std::move(*own);
    } else {
        seen.problem = (trips ? own.error() : trips.error()).sentence();
    }
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
