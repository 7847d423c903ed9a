// SPDX-License-Identifier: MIT
//
// Late charge: freight, duty or a credit that came after the pieces, put on them as far as they are
// still here. What falls on those that left goes to the place of differences: value may come and go
// there without pieces, and what was built in keeps the cost that it was built in with.
//
// Value alone comes onto the newest of what lies somewhere. Where it belongs to something older, or
// goes away, all that lies there goes over the bench and comes back in the same order.

#pragma once

#include "app/buyer/books.h"
#include "app/stockroom/deed.h"

namespace flarestock {

struct LateWords {
    std::string order;
    LateKind kind = LateKind::Freight;
    std::int64_t amount = 0; ///< 10^-6 of the shop's currency; below zero for a credit.
    std::map<std::string, Decimal> weights; ///< Of one, by part; empty: shared by value.
    std::string onlyPart;     ///< That alone bears it; empty: all that came of the order.
    std::string onlyLot;      ///< Of that part; empty: any.
    bool onlyDamaged = false; ///< Of that part, what is not to be used; some of it has to be here.
    std::string claim;        ///< The id of the claim that it settles.
    std::string document;
};

/// What was charged, as it is typed, in the shop's currency: below zero for a credit. Problem: no
/// amount, or nothing.
[[nodiscard]] Result<std::int64_t> lateAmountAsked(const std::string &typed, LateKind kind);

/// Whether something of a part that came of an order lies here and is not to be used. Problem: the
/// journal cannot be read.
[[nodiscard]] Result<bool> liesDamaged(const std::string &order, const std::string &part,
                                       const Books &books);

struct LateAction {
    Action action;
    LateCost cost;
};

/// Problem: no such order; nothing came of it; a part without a weight; no place for the supplier,
/// for differences or to work at; the journal cannot be read.
[[nodiscard]] Result<LateAction> chargedLate(const LateWords &asked, const Books &books,
                                             const By &by);

} // namespace flarestock
