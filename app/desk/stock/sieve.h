// SPDX-License-Identifier: MIT
//
// Sieve: which lines of the stock book are wanted, and in which order.

#pragma once

#include "app/desk/stock/stock_book.h"
#include "model/ports/port.h"

namespace flarestock {

enum class StockOrder : std::uint8_t { Number, Here, Free, Trailer, Kept, Due };

struct Narrowing {
    std::vector<std::string> words; ///< wordsTyped()
    std::vector<Port> ports;        ///< Any of them has to be on the part; none: any part.
    std::string kind;               ///< Empty: any; likewise below.
    std::string dash;
    std::string thread;
    std::string micron;
    /// Empty: what is ours. Or one of the following, or the id of a place.
    std::string where;
    static constexpr auto Shop = "|shop";       ///< Shelves and bins.
    static constexpr auto Trailer = "|trailer"; ///< Drawers.
    static constexpr auto Away = "|away";       ///< Lent, or out for repair.
    static constexpr auto Cars = "|cars";
    static constexpr auto Catalogue = "|all"; ///< Also what the shop has none of.
    std::optional<PieceCondition> condition;
    bool pastDay = false; ///< Only what is past its day.
    bool below = false;   ///< Only what is below what we keep.

    StockOrder order = StockOrder::Number;
    bool downwards = false;

    friend bool operator==(const Narrowing &, const Narrowing &) = default;
};

/// Whether pieces lie where it is narrowed to.
[[nodiscard]] bool liesAt(const BalanceKey &pieces, const std::string &where, const Ledger &ledger);

/// Places in entries, in the wanted order; of what is equal in the book's.
[[nodiscard]] std::vector<std::uint32_t> sifted(const StockBook &book, const Narrowing &narrowing);

} // namespace flarestock
