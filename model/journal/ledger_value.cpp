// SPDX-License-Identifier: MIT
//
// What movements are worth: the moving average, or first in, first out.

#include "model/journal/ledger.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

std::int64_t Ledger::valueOf(const BalanceKey &key, std::int64_t quantity) const
{
    assert(quantity > 0);
    if (m_costing == Costing::FirstInFirstOut) {
        if (const auto layers = m_layers.find(key); layers != m_layers.end())
            return sumOf(oldest(layers->second, quantity)).value;
    }
    return shareOf(balance(key), quantity);
}

std::int64_t Ledger::valueOf(const Movement &movement) const
{
    const Place *from = place(movement.from);
    if (movement.reverses) {
        const auto past = m_past.find(*movement.reverses);
        if (past != m_past.end() && (!from || canGiveBack(movement, past->second)))
            return past->second.value;
    }
    if (from && bringsValue(from->kind))
        return movement.value;
    return movement.quantity > 0 ? valueOf(source(movement), movement.quantity) : 0;
}

bool Ledger::canGiveBack(const Movement &movement, const Past &past) const
{
    if (!isStock(place(movement.from)->kind))
        return true;
    if (m_costing == Costing::FirstInFirstOut) {
        const auto there = m_layers.find(source(movement));
        return there != m_layers.end() && holds(there->second, past.layers);
    }
    const Balance held = balance(source(movement));
    return held == Balance{past.quantity, past.value} ||
           (held.quantity > past.quantity && held.value >= past.value);
}

/// The layers that a movement takes along. Out of a stock place the oldest, or those that it takes
/// back; out of any other place one that has just come, or again those that it takes back.
Layers Ledger::layersOf(const Movement &movement) const
{
    if (movement.deed == Deed::Settle)
        return {}; // They say already what lies there is worth.
    if (movement.reverses) {
        const auto past = m_past.find(*movement.reverses);
        if (past != m_past.end() && !past->second.layers.empty() &&
            sumOf(past->second.layers).value == movement.value &&
            canGiveBack(movement, past->second))
            return past->second.layers;
    }
    if (isStock(place(movement.from)->kind)) {
        const auto there = m_layers.find(source(movement));
        return there == m_layers.end() || movement.quantity <= 0
                   ? Layers()
                   : oldest(there->second, movement.quantity);
    }
    // Value alone goes to the newest of what lies there.
    if (movement.quantity == 0) {
        const auto there = m_layers.find(target(movement));
        if (there != m_layers.end() && !there->second.empty())
            return {{there->second.rbegin()->first, {0, movement.value}}};
    }
    const auto before = m_movementsOf.find(movement.part);
    const std::int64_t rank = before == m_movementsOf.end() ? 1 : before->second + 1;
    return {{rank, {movement.quantity, movement.value}}};
}

void Ledger::postLayers(const Movement &movement, const Layers &layers)
{
    if (m_costing != Costing::FirstInFirstOut)
        return;
    ++m_movementsOf[movement.part];
    if (layers.empty())
        return; // What is settled has none.
    if (isStock(place(movement.from)->kind)) {
        const auto at = m_layers.find(source(movement));
        assert(at != m_layers.end());
        takeOut(at->second, layers);
        if (at->second.empty())
            m_layers.erase(at);
    }
    if (isStock(place(movement.to)->kind))
        put(m_layers[target(movement)], layers);
}

} // namespace flarestock
