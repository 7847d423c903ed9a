// SPDX-License-Identifier: MIT
//
// The shelf: what the ledger holds, as builds see it.

#include "model/journal/ledger.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Sums in smallest units while the balances are walked; they are said in the part's unit after.
struct OnHand {
    std::int64_t quantity = 0;
    std::int64_t free = 0;
    std::int64_t value = 0;
    std::vector<std::int64_t> pieces;
    std::map<std::size_t, std::int64_t> freeAt; ///< By the place's index: nearest first.
};

FreeStock saidIn(Unit unit, OnHand sums, std::span<const Place> places)
{
    FreeStock stock;
    stock.onHand = Quantity::ofSmallest(sums.quantity, unit);
    stock.free = Quantity::ofSmallest(sums.free, unit);
    stock.value = Decimal::scaled(sums.value, 6);
    std::sort(sums.pieces.begin(), sums.pieces.end(), std::greater<>());
    for (const std::int64_t piece : sums.pieces)
        stock.pieces.push_back(Quantity::ofSmallest(piece, unit));
    for (const auto &[index, quantity] : sums.freeAt)
        stock.places.push_back({places[index].id, Quantity::ofSmallest(quantity, unit)});
    return stock;
}

} // namespace

Shelf Ledger::shelf(const Catalogue &catalogue) const
{
    std::map<const Part *, OnHand> found;
    for (const auto &[key, held] : m_balances) {
        const auto place = m_placeOf.find(key.place);
        if (place == m_placeOf.end() || !isStock(m_places[place->second].kind))
            continue;
        const Part *part = catalogue.find(key.part);
        if (!part)
            continue;
        OnHand &sums = found[part];
        sums.quantity += held.quantity;
        sums.value += held.value;
        if (!isFree(key.condition))
            continue;
        sums.free += held.quantity;
        sums.freeAt[place->second] += held.quantity;
        if (isLength(part->unit))
            sums.pieces.push_back(held.quantity);
    }
    Shelf shelf;
    for (auto &[part, sums] : found)
        shelf.emplace(part->number, saidIn(part->unit, std::move(sums), m_places));
    return shelf;
}

} // namespace flarestock
