// SPDX-License-Identifier: MIT

#include "app/stockroom/deed.h"

#include "app/workshop/clock.h"

namespace flarestock {

namespace {

/// What undoes a deed, for the history; the figures follow from the reversal alone.
Deed opposite(Deed deed) noexcept
{
    switch (deed) {
    case Deed::Issue:
        return Deed::Return;
    case Deed::Return:
        return Deed::Issue;
    default:
        return deed;
    }
}

Movement reversalOf(const Movement &past)
{
    const BalanceKey from = target(past);
    Movement back = movementOf(from, past.quantity, past.from, opposite(past.deed));
    back.document = past.document;
    back.reverses = past.id;
    if (from.lot != past.lot)
        back.newLot = past.lot;
    if (from.condition != past.condition)
        back.newCondition = past.condition;
    return back;
}

} // namespace

Movement movementOf(const BalanceKey &from, std::int64_t quantity, const std::string &to, Deed deed)
{
    Movement movement;
    movement.part = from.part;
    movement.quantity = quantity;
    movement.from = from.place;
    movement.to = to;
    movement.lot = from.lot;
    movement.condition = from.condition;
    movement.deed = deed;
    return movement;
}

MovementId idWithin(const MovementId &action, std::uint64_t n)
{
    auto bytes = action.bytes();
    for (std::size_t i = 15; i >= 8 && n > 0; --i) {
        const std::uint64_t sum = bytes[i] + (n & 0xff);
        bytes[i] = static_cast<std::uint8_t>(sum);
        n = (n >> 8) + (sum >> 8);
    }
    return MovementId::ofBytes(bytes);
}

Action numbered(std::vector<Movement> movements, const By &by)
{
    Action action;
    const MovementId first = by.action.value_or(freshId());
    std::uint64_t n = 0;
    for (Movement &movement : movements) {
        movement.id = idWithin(first, n);
        if (n++ > 0)
            movement.action = first;
        movement.who = by.who;
        if (movement.why.empty())
            movement.why = by.why;
        movement.at = by.at;
    }
    action.movements = std::move(movements);
    return action;
}

Result<Action> takenBack(const std::vector<Movement> &past, const std::set<MovementId> &reversed,
                         const By &by)
{
    std::vector<Movement> back;
    for (auto at = past.rbegin(); at != past.rend(); ++at) {
        if (!reversed.contains(at->id))
            back.push_back(reversalOf(*at));
    }
    if (back.empty())
        return problem("that action", "was taken back before", "Look at the history.");
    return numbered(std::move(back), by);
}

} // namespace flarestock
