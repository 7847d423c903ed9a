// SPDX-License-Identifier: MIT

#include "model/journal/ledger.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

bool fitsSum(std::int64_t a, std::int64_t b) noexcept
{
    std::int64_t sum = 0;
    return !__builtin_add_overflow(a, b, &sum);
}

bool fitsDifference(std::int64_t a, std::int64_t b) noexcept
{
    std::int64_t difference = 0;
    return !__builtin_sub_overflow(a, b, &difference);
}

} // namespace

std::string_view text(Refusal refusal) noexcept
{
    switch (refusal) {
    case Refusal::UnknownPart:
        return "names no part";
    case Refusal::UnknownPlace:
        return "names a place that the shop does not have";
    case Refusal::SamePlace:
        return "goes from a place to the same place";
    case Refusal::NotMoreThanZero:
        return "moves no quantity, or less than nothing";
    case Refusal::ReversesUnknown:
        return "takes back a movement that is not in the journal";
    case Refusal::NotTheReverse:
        return "does not take back exactly what was moved, the same way";
    case Refusal::AlreadyReversed:
        return "takes back a movement that was taken back before";
    case Refusal::NotEnough:
        return "takes more than the place holds";
    case Refusal::WrongValue:
        return "takes another value along than the place carries";
    case Refusal::Overflow:
        return "is larger than a journal can count";
    case Refusal::NoBuild:
        return "names no build";
    case Refusal::NotFree:
        return "asks for more than is free, or lets go of more than is promised";
    }
    return "";
}

Ledger::Ledger(std::vector<Place> places, Costing costing)
    : m_places(std::move(places)), m_costing(costing)
{
    for (std::size_t i = 0; i < m_places.size(); ++i)
        m_placeOf.emplace(m_places[i].id, i);
}

Ledger::Ledger(std::vector<Place> places, Balances balances) : Ledger(std::move(places))
{
    m_balances = std::move(balances);
    std::erase_if(m_balances, [](const auto &entry) { return entry.second.isNothing(); });
}

const Place *Ledger::place(std::string_view id) const noexcept
{
    const auto at = m_placeOf.find(id);
    return at == m_placeOf.end() ? nullptr : &m_places[at->second];
}

Balance Ledger::balance(const BalanceKey &key) const
{
    const auto at = m_balances.find(key);
    return at == m_balances.end() ? Balance{} : at->second;
}

Ledger::Walk Ledger::balancesOf(std::string_view part) const
{
    // PieceCondition::New is the first of all keys of a part.
    const auto first = m_balances.lower_bound({std::string(part), {}, {}, PieceCondition::New});
    const auto last = std::find_if(first, m_balances.end(),
                                   [part](const auto &entry) { return entry.first.part != part; });
    return {first, last};
}

bool Ledger::isTakenBack(const MovementId &id) const
{
    const auto at = m_past.find(id);
    return at != m_past.end() && at->second.reversed;
}

void Ledger::remember(std::set<MovementId> only)
{
    m_remembered = std::move(only);
}

void Ledger::knowTakenBack(const MovementId &past)
{
    m_past[past].reversed = true;
}

void Ledger::know(const Movement &past, bool reversed, const Layers &moved)
{
    // Ids grow with time, so that most are the last.
    m_past.insert_or_assign(
        m_past.end(), past.id,
        // What it took along was worth what its layers say, also where it was taken in.
        Past{source(past), past.quantity, moved.empty() ? past.value : sumOf(moved).value, reversed,
             target(past), moved, past.deed == Deed::Settle});
}

Layers Ledger::movedBy(const MovementId &past) const
{
    const auto at = m_past.find(past);
    return at == m_past.end() ? Layers() : at->second.layers;
}

void Ledger::carryOver(const BalanceKey &key, std::int64_t rank, const Balance &layer)
{
    m_layers.try_emplace(m_layers.end(), key)->second[rank] = layer; // They come in order.
    auto &movements = m_movementsOf[key.part];
    movements = std::max(movements, rank);
}

void Ledger::countOn(const std::string &part, std::int64_t movements)
{
    m_movementsOf[part] = movements;
}

const Layers &Ledger::layersAt(const BalanceKey &key) const
{
    static const Layers None;
    const auto at = m_layers.find(key);
    return at == m_layers.end() ? None : at->second;
}

void Ledger::carryOver(const BalanceKey &key, const Balance &balance)
{
    if (!balance.isNothing())
        m_balances.try_emplace(m_balances.end(), key, balance); // They come in order.
}

std::optional<Refusal> Ledger::reversalRefusal(const Movement &movement, const Ends &ends) const
{
    if (!movement.reverses)
        return std::nullopt;
    const auto at = m_past.find(*movement.reverses);
    if (at == m_past.end())
        return Refusal::ReversesUnknown;
    const Past &past = at->second;
    if (ends.to != past.source || ends.from != past.target || movement.quantity != past.quantity ||
        (movement.quantity == 0 && movement.value != past.value))
        return Refusal::NotTheReverse;
    if (past.settled) // What is taken back with it settles it anew.
        return Refusal::NotTheReverse;
    if (past.reversed)
        return Refusal::AlreadyReversed;
    return std::nullopt;
}

std::optional<Refusal> Ledger::stockRefusal(const Movement &movement, const Ends &ends) const
{
    const Balance held = balance(ends.from);
    if (isStock(place(movement.from)->kind)) {
        if (movement.quantity > held.quantity)
            return Refusal::NotEnough;
        if (movement.value > held.value ||
            (movement.quantity == held.quantity && movement.value != held.value))
            return Refusal::WrongValue;
        if (m_costing == Costing::FirstInFirstOut && movement.quantity > 0 &&
            sumOf(layersOf(movement)).value != movement.value)
            return Refusal::WrongValue;
    }
    const Balance there = balance(ends.to);
    if (movement.quantity == 0 && isStock(place(movement.to)->kind) && there.quantity <= 0)
        return Refusal::WrongValue; // Value without pieces.
    return overflows(movement, ends) ? std::optional(Refusal::Overflow) : std::nullopt;
}

bool Ledger::overflows(const Movement &movement, const Ends &ends) const
{
    const Balance held = balance(ends.from);
    const Balance there = balance(ends.to);
    return !fitsDifference(held.quantity, movement.quantity) ||
           !fitsDifference(held.value, movement.value) ||
           !fitsSum(there.quantity, movement.quantity) || !fitsSum(there.value, movement.value) ||
           !fitsSum(m_benchValue, movement.value) || !fitsDifference(m_benchValue, movement.value);
}

std::optional<Refusal> Ledger::refusal(const Movement &movement) const
{
    return refusal(movement, {source(movement), target(movement)});
}

std::optional<Refusal> Ledger::refusal(const Movement &movement, const Ends &ends) const
{
    if (movement.deed == Deed::Settle)
        return settleRefusal(movement, ends);
    if (const auto refused = formRefusal(movement, ends))
        return refused;
    if (const auto refused = stockRefusal(movement, ends))
        return refused;
    const bool ofBuild = movement.deed == Deed::Issue || movement.deed == Deed::Return;
    if (ofBuild && movement.document.empty())
        return Refusal::NoBuild;
    return std::nullopt;
}

std::optional<Refusal> Ledger::formRefusal(const Movement &movement, const Ends &ends) const
{
    if (movement.part.empty())
        return Refusal::UnknownPart;
    const Place *from = place(movement.from);
    if (!from || !place(movement.to))
        return Refusal::UnknownPlace;
    if (ends.from == ends.to)
        return Refusal::SamePlace;
    const bool onlyValue = movement.quantity == 0 && movement.value > 0 &&
                           (bringsValue(from->kind) || movement.reverses);
    if ((movement.quantity <= 0 && !onlyValue) || movement.value < 0)
        return Refusal::NotMoreThanZero;
    return reversalRefusal(movement, ends);
}

void Ledger::post(const BalanceKey &key, std::int64_t quantity, std::int64_t value)
{
    const auto at = m_balances.try_emplace(key).first;
    at->second.quantity += quantity;
    at->second.value += value;
    if (at->second.isNothing())
        m_balances.erase(at);
    if (place(key.place)->kind == PlaceKind::Bench)
        m_benchValue += value;
}

std::optional<Refusal> Ledger::apply(const Movement &movement)
{
    const Ends ends{source(movement), target(movement)};
    if (const auto refused = refusal(movement, ends))
        return refused;
    postAll(movement, ends, m_costing == Costing::FirstInFirstOut ? layersOf(movement) : Layers());
    return std::nullopt;
}

void Ledger::postAll(const Movement &movement, const Ends &ends, const Layers &layers)
{
    postLayers(movement, layers);
    post(ends.from, -movement.quantity, -movement.value);
    post(ends.to, movement.quantity, movement.value);
    claimIssued(movement);
    if (movement.reverses)
        m_past[*movement.reverses].reversed = true;
    if (!m_remembered || m_remembered->contains(movement.id))
        know(movement, false, layers);
}

} // namespace flarestock
