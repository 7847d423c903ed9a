// SPDX-License-Identifier: MIT

#include "model/journal/ledger.h"

#include <cassert>
#include <limits>

namespace flarestock {

namespace {

__extension__ using Wide = __int128;

/// a × b / c to the nearest whole, a tie to the even one. a ≥ 0, b ≥ 0, c > 0 (asserted).
std::int64_t proportionHalfEven(std::int64_t a, std::int64_t b, std::int64_t c)
{
    assert(a >= 0 && b >= 0 && c > 0 && b <= c);
    const Wide product = Wide{a} * b;
    Wide whole = product / c;
    const Wide rest = product % c;
    if (2 * rest > c || (2 * rest == c && whole % 2 != 0))
        ++whole;
    return static_cast<std::int64_t>(whole);
}

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

BalanceKey source(const Movement &movement)
{
    return {movement.part, movement.from, movement.lot, movement.condition};
}

BalanceKey target(const Movement &movement)
{
    return {movement.part, movement.to, movement.lot, movement.condition};
}

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
    }
    return "";
}

Ledger::Ledger(std::vector<Place> places) : Ledger(std::move(places), {}) {}

Ledger::Ledger(std::vector<Place> places, Balances balances)
    : m_places(std::move(places)), m_balances(std::move(balances))
{
    for (std::size_t i = 0; i < m_places.size(); ++i)
        m_placeOf.emplace(m_places[i].id, i);
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

void Ledger::know(const Movement &past, bool reversed)
{
    m_past.insert_or_assign(past.id,
                            Past{source(past), past.to, past.quantity, past.value, reversed});
}

void Ledger::carryOver(const BalanceKey &key, const Balance &balance)
{
    if (!balance.isNothing())
        m_balances.try_emplace(key, balance);
}

std::int64_t Ledger::valueOf(const BalanceKey &key, std::int64_t quantity) const
{
    assert(quantity > 0);
    const Balance held = balance(key);
    if (held.quantity <= 0 || held.value <= 0)
        return 0;
    if (quantity >= held.quantity)
        return held.value;
    return proportionHalfEven(held.value, quantity, held.quantity);
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
    const Balance held = balance(source(movement));
    return held == Balance{past.quantity, past.value} ||
           (held.quantity > past.quantity && held.value >= past.value);
}

std::optional<Refusal> Ledger::reversalRefusal(const Movement &movement) const
{
    if (!movement.reverses)
        return std::nullopt;
    const auto at = m_past.find(*movement.reverses);
    if (at == m_past.end())
        return Refusal::ReversesUnknown;
    const Past &past = at->second;
    if (target(movement) != past.source || movement.from != past.to ||
        movement.quantity != past.quantity)
        return Refusal::NotTheReverse;
    if (past.reversed)
        return Refusal::AlreadyReversed;
    return std::nullopt;
}

std::optional<Refusal> Ledger::stockRefusal(const Movement &movement) const
{
    const Balance held = balance(source(movement));
    if (isStock(place(movement.from)->kind)) {
        if (movement.quantity > held.quantity)
            return Refusal::NotEnough;
        if (movement.value > held.value ||
            (movement.quantity == held.quantity && movement.value != held.value))
            return Refusal::WrongValue;
    }
    const Balance there = balance(target(movement));
    if (!fitsDifference(held.quantity, movement.quantity) ||
        !fitsDifference(held.value, movement.value) ||
        !fitsSum(there.quantity, movement.quantity) || !fitsSum(there.value, movement.value))
        return Refusal::Overflow;
    return std::nullopt;
}

std::optional<Refusal> Ledger::refusal(const Movement &movement) const
{
    if (movement.part.empty())
        return Refusal::UnknownPart;
    if (!place(movement.from) || !place(movement.to))
        return Refusal::UnknownPlace;
    if (movement.from == movement.to)
        return Refusal::SamePlace;
    if (movement.quantity <= 0 || movement.value < 0)
        return Refusal::NotMoreThanZero;
    if (const auto refused = reversalRefusal(movement))
        return refused;
    return stockRefusal(movement);
}

std::optional<Refusal> Ledger::apply(const Movement &movement)
{
    if (const auto refused = refusal(movement))
        return refused;
    const auto post = [this](BalanceKey key, std::int64_t quantity, std::int64_t value) {
        const auto at = m_balances.try_emplace(std::move(key)).first;
        at->second.quantity += quantity;
        at->second.value += value;
        if (at->second.isNothing())
            m_balances.erase(at);
    };
    post(source(movement), -movement.quantity, -movement.value);
    post(target(movement), movement.quantity, movement.value);
    if (movement.reverses)
        m_past[*movement.reverses].reversed = true;
    know(movement, false);
    return std::nullopt;
}

} // namespace flarestock
