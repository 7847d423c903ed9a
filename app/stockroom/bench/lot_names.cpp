// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/lot_names.h"

namespace flarestock {

std::set<LotKey> lotNames(const std::string &part, const Workshop &workshop)
{
    std::set<LotKey> names;
    for (const auto &[key, held] : workshop.ledger.balancesOf(part))
        names.insert({key.part, key.lot});
    for (const auto &[lot, facts] : workshop.notes.lots) {
        if (lot.part == part)
            names.insert(lot);
    }
    return names;
}

void keepLotFacts(Action &action, const Renamed &piece, const Workshop &workshop)
{
    const auto known = workshop.notes.lots.find(piece.lot);
    if (piece.now == piece.lot.lot || known == workshop.notes.lots.end())
        return;
    const Movement &first = action.movements.front();
    LotFacts facts = known->second;
    facts.id = idWithin(first.id, action.movements.size() + action.records.size());
    facts.lot.lot = piece.now;
    facts.who = first.who;
    facts.at = first.at;
    action.records.push_back(facts.asRecord());
}

} // namespace flarestock
