// SPDX-License-Identifier: MIT

#include "app/stockroom/taking_back.h"

#include "app/workshop/clock.h"
#include "model/journal/notes/build_log.h"

namespace flarestock {

namespace {

/// The record that undoes one; nothing where it is of a kind that stays.
Result<std::optional<Record>> opposite(const Record &past)
{
    if (past.kind == RecordKind::Promise) {
        auto promise = Promise::read(past);
        if (!promise)
            return tl::unexpected(promise.error());
        promise->quantity = -promise->quantity;
        return std::optional(promise->asRecord());
    }
    if (past.kind == RecordKind::Done) {
        auto done = BuildDone::read(past);
        if (!done)
            return tl::unexpected(done.error());
        done->open = !done->open;
        return std::optional(done->asRecord());
    }
    return std::optional<Record>();
}

} // namespace

Result<Action> movementTakenBack(const MovementId &id, const ShopFile &file,
                                 const Workshop &workshop, const By &by)
{
    const auto past = file.movementsOfAction(id);
    if (!past)
        return tl::unexpected(past.error());
    if (past->empty())
        return problem(id.text(), "is no movement of this shop", "Look it up: flarestock history.");
    std::set<MovementId> reversed;
    for (const Movement &one : *past) {
        if (workshop.ledger.isTakenBack(one.id))
            reversed.insert(one.id);
    }
    auto action = takenBack(*past, reversed, by);
    if (action)
        action->promised = Promised::MayGo; // What was a mistake was never there to be promised.
    return action;
}

Result<Action> actionTakenBack(const Action &done, const ShopFile &file, const Workshop &workshop,
                               const By &by)
{
    By signedBy = by;
    signedBy.action = by.action.value_or(freshId());
    Action back;
    if (!done.movements.empty()) {
        auto moved = movementTakenBack(done.movements.front().id, file, workshop, signedBy);
        if (!moved)
            return moved;
        back = std::move(*moved);
    }
    std::uint64_t n = back.movements.size();
    for (auto past = done.records.rbegin(); past != done.records.rend(); ++past) {
        auto record = opposite(*past);
        if (!record)
            return tl::unexpected(record.error());
        if (!*record)
            continue;
        (*record)->id = idWithin(*signedBy.action, n++);
        (*record)->who = by.who;
        (*record)->at = by.at;
        back.records.push_back(std::move(**record));
    }
    if (back.records.empty() && back.movements.empty())
        return problem("that", "was written down and stays", "Write down a newer one.");
    return back;
}

} // namespace flarestock
