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

Shelf Ledger::shelf(const Catalogue &catalogue, const For &whom) const
{
    static const Bars none;
    std::map<const Part *, OnHand> found;
    std::map<BalanceKey, std::int64_t> promised;
    const Part *before = nullptr;
    for (const auto &[key, held] : m_balances) {
        const auto place = m_placeOf.find(key.place);
        if (place == m_placeOf.end() || !isStock(m_places[place->second].kind))
            continue;
        const Part *part = catalogue.find(key.part);
        if (!part)
            continue;
        if (part != before)
            promised = promisedAt(*part, whom.bars ? *whom.bars : none, whom.build);
        before = part;
        OnHand &sums = found[part];
        sums.quantity += held.quantity;
        sums.value += held.value;
        const bool barred = whom.barred && whom.barred->contains({key.part, key.lot});
        const auto taken = promised.find(key);
        const std::int64_t free = held.quantity - (taken == promised.end() ? 0 : taken->second);
        if (!isFree(key.condition) || barred || free <= 0)
            continue;
        sums.free += free;
        sums.freeAt[place->second] += free;
        if (isLength(part->unit))
            sums.pieces.push_back(free);
    }
    Shelf shelf;
    for (auto &[part, sums] : found)
        shelf.emplace(part->number, saidIn(part->unit, std::move(sums), m_places));
    return shelf;
}

} // namespace flarestock
