// SPDX-License-Identifier: MIT

#include "app/buyer/might_cover.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The first stock place where a made-up hose lies; empty where it lies in none.
std::string placeOf(const std::string &tag, const Ledger &ledger)
{
    for (const auto &[key, held] : ledger.balancesOf(tag)) {
        const Place *place = ledger.place(key.place);
        if (place && isStock(place->kind) && isFree(key.condition) && held.quantity > 0)
            return place->id;
    }
    return {};
}

} // namespace

std::vector<std::string> mightCover(const std::vector<NeedLine> &lines, const Workshop &workshop,
                                    const Shelf &left)
{
    std::set<std::string> lacking;
    for (const NeedLine &line : lines)
        if (line.shortBy.sign() > 0)
            lacking.insert(line.part->number);
    std::vector<std::string> notes;
    for (const auto &[tag, hose] : workshop.notes.hoses) {
        const std::string place =
            lacking.contains(hose.hose) ? placeOf(hose.tag, workshop.ledger) : std::string();
        if (!place.empty())
            notes.push_back("Made-up hose " + hose.tag + " of " + hose.hose + ", " +
                            Quantity::ofSmallest(hose.seats, Unit::Inch).spoken() +
                            " from seat to seat, lies at " + place + ": it is not counted on.");
    }
    for (const auto &[number, stock] : left) {
        const Part *box = workshop.catalogue.find(number);
        if (!box || stock.free.amount.sign() <= 0)
            continue;
        for (const PartCount &inside : box->box)
            if (lacking.contains(inside.part))
                notes.push_back(inside.part + " lies in the box of " + number + ", of which " +
                                stock.free.spoken() +
                                " stays free: it counts only for who takes that, or opens it.");
    }
    return notes;
}

} // namespace flarestock
