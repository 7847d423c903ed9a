// SPDX-License-Identifier: MIT

#include "model/journal/balance.h"

namespace flarestock {

BalanceKey source(const Movement &movement)
{
    return {movement.part, movement.from, movement.lot, movement.condition};
}

BalanceKey target(const Movement &movement)
{
    return {movement.part, movement.to, movement.newLot.value_or(movement.lot),
            movement.newCondition.value_or(movement.condition)};
}

} // namespace flarestock
