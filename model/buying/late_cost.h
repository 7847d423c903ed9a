// SPDX-License-Identifier: MIT
//
// Late cost: freight, duty or a credit that comes after the pieces of an order. What of it falls on
// pieces that still lie in stock makes them dearer (or cheaper); what falls on those that left is a
// difference: a piece that was built in keeps the cost that it was built in with.
//
//   10 came for 100.00 and 4 are gone; 5.00 of duty: 3.00 into stock, 2.00 a difference
//
// The oldest pieces are taken to have left first, also where the shop costs by a moving average.

#pragma once

#include "model/journal/ledger.h"

namespace flarestock {

enum class LateKind : std::uint8_t { Freight, Duty, Tax, Credit, Other };
[[nodiscard]] std::string_view text(LateKind kind) noexcept; ///< "freight", "duty" …
[[nodiscard]] Result<LateKind> parseLateKind(std::string_view text);

/// What one receipt has to bear of it.
struct LateShare {
    std::string part;
    std::string lot;
    std::int64_t quantity = 0; ///< That came. Smallest units.
    std::int64_t here = 0;     ///< Of them in stock at that moment.
    std::int64_t value = 0;    ///< 10^-6 of the shop's currency; of a credit not above zero.
    std::int64_t inStock = 0;  ///< Of `value`: the rest is the difference.
    friend bool operator==(const LateShare &, const LateShare &) = default;
};

struct LateCost {
    MovementId id;
    std::string order; ///< Its number.
    LateKind kind = LateKind::Freight;
    std::int64_t amount = 0; ///< 10^-6 of the shop's currency; below zero for a credit.
    std::string sharedBy;    ///< "value", "weight", "quantity"
    std::vector<LateShare> shares;
    std::string claim;    ///< The id of the claim that it settles; empty where of none.
    std::string document; ///< The carrier's or customs' paper.
    std::string action;   ///< The id of the first movement of its action.
    std::string who;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC.

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<LateCost> read(const Record &record); ///< Problem: not one.
    friend bool operator==(const LateCost &, const LateCost &) = default;
};

/// What of a share falls on `here` of `came` pieces: in proportion, half-even to 10^-6.
/// 0 <= here <= came, came > 0 (asserted).
[[nodiscard]] std::int64_t stockPart(std::int64_t share, std::int64_t here, std::int64_t came);

} // namespace flarestock
