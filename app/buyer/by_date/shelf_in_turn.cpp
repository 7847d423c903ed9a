// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/shelf_in_turn.h"

namespace flarestock {

namespace {

/// A ledger of those parts alone.
Ledger ledgerOf(const std::set<const Part *> &parts, const Ledger &all)
{
    Balances balances;
    for (const Part *part : parts) {
        const auto ofPart = all.balancesOf(part->number);
        balances.insert(ofPart.begin(), ofPart.end());
    }
    Ledger few({all.places().begin(), all.places().end()}, std::move(balances));
    for (const Part *part : parts) {
        for (auto at = all.claims().lower_bound({part->number, {}});
             at != all.claims().end() && at->first.part == part->number; ++at)
            few.carryOver(at->first, at->second);
    }
    return few;
}

} // namespace

ShelfInTurn::ShelfInTurn(const Workshop &workshop, const Bars &bars)
    : m_workshop(workshop), m_bars(bars),
      m_shelf(withLevels(withLooks(workshop.ledger.shelf(workshop.catalogue, {{}, nullptr, &bars}),
                                   {workshop.looks, workshop.notes.opened}, workshop.ledger),
                         workshop.notes, workshop.catalogue))
{
}

ShelfInTurn::Parts ShelfInTurn::ownOf(const BuildPlan &plan, const Ledger &now) const
{
    Parts own;
    for (const auto &[key, claim] : now.claims()) {
        if (key.build == plan.id)
            own.insert(m_workshop.catalogue.find(key.part));
    }
    for (const LotKey &lot : barredLots(m_workshop.notes.lots, plan.car, plan.by))
        own.insert(m_workshop.catalogue.find(lot.part));
    own.erase(nullptr); // Not of the catalogue.
    return own;
}

const Shelf &ShelfInTurn::of(const BuildPlan &plan, const Ledger &now)
{
    Parts own = ownOf(plan, now);
    Parts anew = m_changed;
    anew.insert(m_ownBefore.begin(), m_ownBefore.end());
    anew.insert(own.begin(), own.end());
    Shelf worked = m_workshop.shelfFor(plan, ledgerOf(anew, now), m_bars);
    for (const Part *part : anew) {
        if (auto found = worked.extract(part->number))
            m_shelf.insert_or_assign(part->number, std::move(found.mapped()));
        else
            m_shelf.erase(part->number);
    }
    m_ownBefore = std::move(own);
    return m_shelf;
}

} // namespace flarestock
