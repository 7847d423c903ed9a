// SPDX-License-Identifier: MIT

#include "model/parts/free_stock.h"

namespace flarestock {

Rational FreeStock::carriedUnitCost() const
{
    return onHand.amount.isZero() ? Rational() : Rational(value, onHand.amount);
}

} // namespace flarestock
