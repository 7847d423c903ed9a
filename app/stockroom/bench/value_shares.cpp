// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/value_shares.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string moneyText(std::int64_t micros)
{
    return Decimal::scaled(micros, 6).stripped().text();
}

/// What is left of the whole when the stated is taken off.
Result<std::int64_t> restOf(std::int64_t whole, const std::vector<Sharing> &sharing)
{
    std::int64_t rest = whole;
    bool isLeft = false;
    for (const Sharing &one : sharing) {
        isLeft = isLeft || !one.stated;
        if (__builtin_sub_overflow(rest, one.stated.value_or(0), &rest) || rest < 0)
            return problem(moneyText(whole), "is all that it is worth, and more is stated",
                           "State less.");
    }
    if (rest > 0 && !isLeft)
        return problem(moneyText(rest), "of its value is left when all that is stated has its own",
                       "State it so that nothing is left, or leave one piece unstated.");
    return rest;
}

} // namespace

Result<std::vector<std::int64_t>> valueShares(std::int64_t whole, std::vector<Sharing> sharing)
{
    const auto rest = restOf(whole, sharing);
    if (!rest)
        return tl::unexpected(rest.error());
    Decimal weights;
    for (const Sharing &one : sharing)
        weights = weights + (one.stated ? Decimal() : one.weight);
    const bool alike = weights.isZero();
    std::vector<std::int64_t> shares;
    std::int64_t left = *rest;
    std::size_t last = sharing.size();
    for (Sharing &one : sharing) {
        if (alike && !one.stated) {
            one.weight = 1;
            weights = weights + Decimal(1);
        }
    }
    for (std::size_t i = 0; i < sharing.size(); ++i) {
        const Sharing &one = sharing[i];
        shares.push_back(one.stated.value_or(0));
        if (one.stated)
            continue;
        shares.back() = Rational(one.weight, weights)
                            .times(Decimal(*rest))
                            .toDecimal(0, Rounding::Floor)
                            .toInt64()
                            .value_or(0);
        left -= shares.back();
        last = i;
    }
    if (last < shares.size())
        shares[last] += left;
    return shares;
}

Result<std::vector<std::int64_t>> valuesOf(std::vector<Movement> movements,
                                           const Workshop &workshop)
{
    Ledger trial = workshop.ledger;
    std::vector<std::int64_t> values;
    for (Movement &movement : movements) {
        movement.id = idWithin(MovementId(), values.size() + 1);
        movement.value = trial.valueOf(movement);
        if (const auto refused = trial.apply(movement))
            return problem("movement of " + movement.part + " from " + movement.from,
                           std::string(text(*refused)), "Look at the stock of it.");
        values.push_back(movement.value);
    }
    return values;
}

std::optional<Decimal> offeredCost(const Part &part, const Decimal &count, const Workshop &workshop)
{
    const Offer *offer = workshop.catalogue.bestOffer(part, count, workshop.settings.currency);
    if (!offer)
        return std::nullopt;
    return offer->priceEach(count) * count;
}

} // namespace flarestock
