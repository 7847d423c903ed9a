// SPDX-License-Identifier: MIT

#include "app/desk/handing/origins.h"

#include <set>

namespace flarestock {

Origins originsOf(const std::vector<Movement> &movements, const Ledger &ledger)
{
    std::set<MovementId> takenBack;
    for (const Movement &movement : movements) {
        if (movement.reverses)
            takenBack.insert(*movement.reverses);
    }
    Origins origins;
    for (const Movement &movement : movements) {
        const Place *from = ledger.place(movement.from);
        if (from == nullptr || !isStock(from->kind) || movement.reverses ||
            takenBack.contains(movement.id))
            continue;
        const BalanceKey there{movement.part, movement.to, movement.newLot.value_or(movement.lot),
                               movement.newCondition.value_or(movement.condition)};
        origins[there] = movement.from;
    }
    return origins;
}

} // namespace flarestock
