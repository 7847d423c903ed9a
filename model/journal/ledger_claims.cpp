// SPDX-License-Identifier: MIT
//
// What builds are promised, and what of it they have got.

#include "model/journal/ledger.h"

#include <algorithm>

namespace flarestock {

namespace {

/// From the first claim of a part to behind its last one.
auto claimsOf(const Claims &claims, std::string_view part)
{
    auto first = claims.lower_bound(ClaimKey{std::string(part), {}});
    auto last = first;
    while (last != claims.end() && last->first.part == part)
        ++last;
    return std::pair(first, last);
}

} // namespace

void Ledger::carryOver(const ClaimKey &key, const Claim &claim)
{
    if (!claim.isNothing())
        m_claims.insert_or_assign(m_claims.end(), key, claim); // They come in order.
}

Claim Ledger::claim(const ClaimKey &key) const
{
    const auto at = m_claims.find(key);
    return at == m_claims.end() ? Claim{} : at->second;
}

void Ledger::keep(const ClaimKey &key, const Claim &claim)
{
    if (claim.isNothing())
        m_claims.erase(key);
    else
        m_claims[key] = claim;
}

std::int64_t Ledger::usable(std::string_view part) const
{
    std::int64_t sum = 0;
    for (const auto &[key, held] : balancesOf(part)) {
        const Place *there = place(key.place);
        if (there && isStock(there->kind) && isFree(key.condition))
            sum += held.quantity;
    }
    return sum;
}

std::int64_t Ledger::outstanding(std::string_view part, std::string_view but) const
{
    std::int64_t sum = 0;
    const auto [first, last] = claimsOf(m_claims, part);
    for (auto at = first; at != last; ++at) {
        if (but.empty() || at->first.build != but)
            sum += at->second.outstanding();
    }
    return sum;
}

void Ledger::claimIssued(const Movement &movement)
{
    const auto issued = issuedBy(movement);
    if (!issued)
        return;
    Claim now = claim(issued->claim);
    now.issued += issued->quantity;
    keep(issued->claim, now);
}

std::optional<Refusal> Ledger::refusal(const Promise &promise) const
{
    if (promise.part.empty())
        return Refusal::UnknownPart;
    if (promise.build.empty())
        return Refusal::NoBuild;
    if (promise.quantity == 0)
        return Refusal::NotMoreThanZero;
    const Claim now = claim({promise.part, promise.build});
    Claim then = now;
    if (__builtin_add_overflow(now.promised, promise.quantity, &then.promised))
        return Refusal::Overflow;
    if (then.promised < 0)
        return Refusal::NotFree;
    const std::int64_t more = then.outstanding() - now.outstanding();
    if (more > 0 && more > usable(promise.part) - outstanding(promise.part))
        return Refusal::NotFree;
    return std::nullopt;
}

std::optional<Refusal> Ledger::apply(const Promise &promise)
{
    if (const auto refused = refusal(promise))
        return refused;
    const ClaimKey key{promise.part, promise.build};
    Claim then = claim(key);
    then.promised += promise.quantity;
    keep(key, then);
    return std::nullopt;
}

} // namespace flarestock
