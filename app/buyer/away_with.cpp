// SPDX-License-Identifier: MIT

#include "app/buyer/away_with.h"

#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// What is free of a part, here and with copies.
struct FreeParted {
    Decimal here;
    std::map<const TravellingCopy *, Decimal> away;
};

FreeParted freeParted(const FreeStock &stock, const Trips &trips)
{
    FreeParted parted;
    for (const FreeStock::AtPlace &at : stock.places) {
        if (const TravellingCopy *copy = trips.away(at.place))
            parted.away[copy] += at.free.amount;
        else
            parted.here += at.free.amount;
    }
    return parted;
}

} // namespace

std::vector<std::string> countedOnAway(const ShopNeeds &needs, const Workshop &workshop,
                                       const Trips &trips)
{
    std::map<const Part *, Decimal> wanted;
    for (const NeedLine &line : needs.lines)
        if (!line.isPlace)
            wanted[line.part] += line.free;
    const Shelf shelf = workshop.ledger.shelf(workshop.catalogue, {{}, nullptr, nullptr});
    std::vector<std::string> notes;
    for (const auto &[part, amount] : wanted) {
        const auto stock = shelf.find(part->number);
        if (stock == shelf.end())
            continue;
        const FreeParted parted = freeParted(stock->second, trips);
        if (parted.away.empty() || amount <= parted.here)
            continue;
        std::string copies;
        for (const auto &[copy, there] : parted.away)
            copies += (copies.empty() ? "" : ", ") + Quantity{there, part->unit}.spoken() +
                      " with " + copy->taken.name + " since " + dayOf(copy->taken.at);
        notes.push_back(part->number + ": " + Quantity{amount, part->unit}.spoken() +
                        " counted on, " + Quantity{parted.here, part->unit}.spoken() +
                        " of it here; away are " + copies + ".");
    }
    return notes;
}

} // namespace flarestock
