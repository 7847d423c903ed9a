// SPDX-License-Identifier: MIT
//
// Asked: what a hand names, in its words, looked up in the shop: part, place, quantity, pieces,
// build. What is not there is refused with what is probably meant.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

/// "A1, A2, A3"
[[nodiscard]] std::string listed(const std::vector<std::string_view> &words);
/// Of the catalogue, or a made-up hose by its tag.
[[nodiscard]] Result<const Part *> partAsked(const std::string &typed, const Workshop &workshop);
/// Of the catalogue only: what can be bought.
[[nodiscard]] Result<const Part *> partAsked(const std::string &typed, const Catalogue &catalogue);
[[nodiscard]] Result<const Place *> placeAsked(const std::string &typed, const Ledger &ledger);
/// One where stock lies. Problem: also a car, a supplier …
[[nodiscard]] Result<const Place *> stockPlaceAsked(const std::string &typed, const Ledger &ledger);
[[nodiscard]] Result<const BuildPlan *> buildAsked(const std::string &typed,
                                                   const Workshop &workshop);
/// The first place of a kind; Problem where the shop has none.
[[nodiscard]] Result<const Place *> placeOfKind(PlaceKind kind, const Ledger &ledger);

/// A part, so much of it, and the two places, as they are named and as the shop has them.
struct StockWords {
    const std::string &part;
    const std::string &quantity;
    const std::string &from;
    const std::string &to;
};
struct StockAsked {
    const Part *part = nullptr;
    std::int64_t quantity = 0; ///< Smallest units.
    const Place *from = nullptr;
    const Place *to = nullptr;
};
/// Problem: the first of them that is none, in the order part, from, to, quantity.
[[nodiscard]] Result<StockAsked> stockAsked(const StockWords &words, const Workshop &workshop);

/// What is wrong with what was typed, under the name of its option or field. There is nothing to
/// point into: what was typed stands in the sentence.
[[nodiscard]] Problem wrongIn(const std::string &option, Problem wrong);
/// "2", "66 in", "5 ft 6 in" as smallest units of the part; a bare number counts in its unit,
/// and millimetres of what is kept in inches to the nearest 1/64 in. `option`: where it was typed.
/// Problem: not a quantity, of another kind of unit, not whole.
[[nodiscard]] Result<std::int64_t> quantityAsked(const std::string &typed, const Part &part,
                                                 const std::string &option = "the quantity");
/// So much as people say it: "5 ft 6 in", "3".
[[nodiscard]] std::string spoken(std::int64_t quantity, const Part &part);
/// The amount alone, in the part's unit: "66", for a document.
[[nodiscard]] std::string amountText(std::int64_t quantity, const Part &part);
/// The same by a part's number; in smallest units where the shop has it no more.
[[nodiscard]] std::string amountText(std::int64_t quantity, const std::string &part,
                                     const Workshop &workshop);

/// Which pieces of a part at a place; lot and condition are empty where nobody has said.
struct PiecesAsked {
    std::string place;
    std::string lot;
    std::string condition;
};
/// Those of the lot and condition that were named; where that leaves several, the new ones without
/// a lot; and where even they are not there, Problem: nobody can know which. Where nothing lies
/// there it is what was named.
[[nodiscard]] Result<BalanceKey> piecesAsked(const PiecesAsked &asked, const Ledger &ledger,
                                             const Part &part);

/// "2026-12-12"; the day (UTC) of `now`, milliseconds since 1970, where nothing was typed.
/// Problem: no day.
[[nodiscard]] Result<std::string> dayAsked(const std::string &typed, std::int64_t now);

/// "12.50" in the shop's currency as 10^-6 of it. `option`: where it was typed. Problem: not money,
/// below zero, too fine.
[[nodiscard]] Result<std::int64_t> valueAsked(const std::string &typed, const std::string &option);

} // namespace flarestock
