// SPDX-License-Identifier: MIT
//
// What was true with a copy of the shop, and what it leaves behind here: pieces are counted as
// everywhere, but a movement keeps the value that it was written with, which here may be another by
// now. Which layers go is said by those that lie here. The difference is settled behind it.

#include "model/journal/ledger.h"

namespace flarestock {

std::optional<Refusal> Ledger::take(const Movement &movement)
{
    if (movement.deed == Deed::Settle)
        return apply(movement);
    const Ends ends{source(movement), target(movement)};
    if (const auto refused = formRefusal(movement, ends))
        return refused;
    if (isStock(place(movement.from)->kind) && movement.quantity > balance(ends.from).quantity)
        return Refusal::NotEnough;
    if (overflows(movement, ends))
        return Refusal::Overflow;
    postAll(movement, ends,
            m_costing == Costing::FirstInFirstOut ? layersTaken(movement) : Layers());
    return std::nullopt;
}

std::optional<Refusal> Ledger::take(const Promise &promise)
{
    if (promise.part.empty())
        return Refusal::UnknownPart;
    if (promise.build.empty())
        return Refusal::NoBuild;
    const ClaimKey key{promise.part, promise.build};
    Claim then = claim(key);
    if (__builtin_add_overflow(then.promised, promise.quantity, &then.promised))
        return Refusal::Overflow;
    keep(key, then);
    return std::nullopt;
}

/// As layersOf(), whatever value the movement says.
Layers Ledger::layersTaken(const Movement &movement) const
{
    if (movement.reverses) {
        const auto past = m_past.find(*movement.reverses);
        if (past != m_past.end() && !past->second.layers.empty() &&
            canGiveBack(movement, past->second))
            return past->second.layers;
    }
    // Value alone that comes where nothing lies any more has no layer to go to.
    if (movement.quantity == 0 && layersAt(target(movement)).empty())
        return {};
    Movement withoutPast = movement;
    withoutPast.reverses.reset();
    return layersOf(withoutPast);
}

std::optional<Refusal> Ledger::settleRefusal(const Movement &movement, const Ends &ends) const
{
    const Place *from = place(movement.from);
    const Place *to = place(movement.to);
    if (movement.part.empty())
        return Refusal::UnknownPart;
    if (!from || !to)
        return Refusal::UnknownPlace;
    const bool comes = from->kind == PlaceKind::Difference && isStock(to->kind);
    const bool goes = to->kind == PlaceKind::Difference && isStock(from->kind);
    if (movement.quantity != 0 || movement.value <= 0 || movement.reverses || (!comes && !goes))
        return Refusal::NotMoreThanZero;
    return overflows(movement, ends) ? std::optional(Refusal::Overflow) : std::nullopt;
}

} // namespace flarestock
