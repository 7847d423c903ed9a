// SPDX-License-Identifier: MIT

#include "model/systems/expanding/allotment.h"

namespace flarestock {

Allotment::Allotment(const Catalogue &catalogue, const Shelf *shelf)
    : m_catalogue(catalogue), m_shelf(shelf)
{
}

Allotment::Entry &Allotment::entry(const Part &part)
{
    const auto [found, isNew] = m_entries.try_emplace(&part);
    Entry &made = found->second;
    if (!isNew || !m_shelf)
        return made;
    const auto on = m_shelf->find(part.number);
    if (on == m_shelf->end())
        return made;
    made.stock = &on->second;
    if (isLength(part.unit))
        made.pieces = CutPieces(*made.stock, part.unit);
    return made;
}

Decimal Allotment::left(const Part &part)
{
    const Entry &of = entry(part);
    if (!of.stock)
        return {};
    Decimal rest = of.stock->usable() - of.taken;
    return rest.sign() > 0 ? rest : Decimal();
}

void Allotment::take(const Part &part, const Decimal &count)
{
    entry(part).taken += count;
}

bool Allotment::holds(const Part &part, const Decimal &length)
{
    return entry(part).pieces.holds(length);
}

void Allotment::cut(const Part &part, const Decimal &length)
{
    Entry &of = entry(part);
    if (of.pieces.cut(length))
        of.taken += length;
}

void Allotment::take(const Way &way)
{
    for (const Piece &piece : way.pieces)
        take(*piece.part, 1);
    for (const WayAid &aid : way.aids) {
        if (!aid.part)
            continue;
        if (!isUsedByMeasure(aid.part->kind) || entry(*aid.part).taken.isZero())
            take(*aid.part, countOf(aid));
    }
}

std::optional<Decimal> Allotment::cost(const Part &part, const Decimal &count, bool here)
{
    const FreeStock *stock = entry(part).stock;
    if (here && stock && stock->onHand.amount.sign() > 0)
        return stock->carriedUnitCost().times(count).toDecimal(6, Rounding::HalfEven);
    const Offer *offer = m_catalogue.bestOffer(part, count);
    if (!offer)
        return std::nullopt;
    return (offer->priceEach(count) * count).rescaled(6, Rounding::HalfEven);
}

const FreeStock *Allotment::stock(const Part &part)
{
    return entry(part).stock;
}

Decimal countOf(const WayAid &aid)
{
    return aid.need.aid == Aid::Sealant ? Decimal(1) : Decimal(aid.need.count);
}

} // namespace flarestock
