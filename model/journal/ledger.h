// SPDX-License-Identifier: MIT
//
// Ledger: the fold of the journal. What lies where and what it cost, computed from movements alone.
//
// Every movement is one posting out of a place and one into another, of the same quantity and
// value, so that over all places the sums are always zero. Cost is the moving average: a place
// carries quantity and value, never a rounded price; the last piece out takes all the value that is
// left.
//
//   Ledger ledger({{"opening", "before us", PlaceKind::Opening}, {"C4", "bin C4",
//                 PlaceKind::Bin}});
//   if (const auto refused = ledger.apply(movement))
//       return text(*refused);

#pragma once

#include "model/journal/movement.h"
#include "model/parts/catalogue.h"
#include "model/parts/free_stock.h"

#include <map>
#include <span>

namespace flarestock {

/// What is at a place of one part, lot and condition.
struct BalanceKey {
    std::string part;
    std::string place;
    std::string lot;
    PieceCondition condition = PieceCondition::New;
    friend auto operator<=>(const BalanceKey &, const BalanceKey &) = default;
};
struct Balance {
    std::int64_t quantity = 0; ///< Smallest units.
    std::int64_t value = 0;    ///< 10^-6 of the shop's currency.
    friend bool operator==(const Balance &, const Balance &) = default;
    [[nodiscard]] bool isNothing() const noexcept { return quantity == 0 && value == 0; }
};
/// Never holds a balance that is nothing, so that two ledgers of equal stock are equal.
using Balances = std::map<BalanceKey, Balance>;

/// Where a movement takes from, and where it puts to.
[[nodiscard]] BalanceKey source(const Movement &movement);
[[nodiscard]] BalanceKey target(const Movement &movement);

/// Why a movement is refused, in order of precedence.
enum class Refusal : std::uint8_t {
    UnknownPart, ///< It names no part. (Catalogues change and the journal stays: what the catalogue
                 ///< knows is not asked here.)
    UnknownPlace,
    SamePlace,
    NotMoreThanZero, ///< Quantity zero or less, or value less than zero.
    ReversesUnknown, ///< The movement that it reverses is not in the journal.
    NotTheReverse,   ///< Other part, lot, condition or quantity, or not back the same way.
    AlreadyReversed,
    NotEnough,  ///< The place (that is stock) holds less.
    WrongValue, ///< It would leave value without pieces, or take more than the place carries.
    Overflow,   ///< Beyond what 64 bits hold.
};
[[nodiscard]] std::string_view text(Refusal refusal) noexcept; ///< As the end of a sentence.

class Ledger {
public:
    explicit Ledger(std::vector<Place> places);
    /// A part of the fold, to judge further movements by: the balances that they touch.
    Ledger(std::vector<Place> places, Balances balances);

    /// Applies a movement; nothing changes where it is refused. Places that are not stock
    /// (supplier, scrap, used up …) may go below zero: they are the other leg of what the shop has.
    [[nodiscard]] std::optional<Refusal> apply(const Movement &movement);
    /// Whether it would be refused.
    [[nodiscard]] std::optional<Refusal> refusal(const Movement &movement) const;
    /// Lets a movement of before be known, so that it can be reversed, without applying it.
    void know(const Movement &past, bool reversed);
    /// What balances of before say about a key that this ledger does not know yet.
    void carryOver(const BalanceKey &key, const Balance &balance);

    /// The value that goes along with so much of what lies somewhere: carried value in proportion,
    /// half-even to 10^-6, all of it with the last unit. Nothing where nothing lies there.
    /// quantity is more than zero (asserted).
    [[nodiscard]] std::int64_t valueOf(const BalanceKey &key, std::int64_t quantity) const;
    /// The value of a movement: as given out of a supplier or the opening; what was moved before,
    /// where it takes that back and it is still there; else valueOf() its source.
    [[nodiscard]] std::int64_t valueOf(const Movement &movement) const;

    [[nodiscard]] const Balances &balances() const noexcept { return m_balances; }
    [[nodiscard]] Balance balance(const BalanceKey &key) const; ///< Zero where nothing lies.
    [[nodiscard]] std::span<const Place> places() const noexcept { return m_places; }
    [[nodiscard]] const Place *place(std::string_view id) const noexcept;

    /// What builds may use, by part of the catalogue: on hand is all that lies in stock places,
    /// free what of it is new, or used and good. Places are the nearer the earlier they stand in
    /// places(). Parts that the catalogue does not have are left out. Nothing is promised yet.
    [[nodiscard]] Shelf shelf(const Catalogue &catalogue) const;

private:
    struct Past { ///< What a reversal has to match.
        BalanceKey source;
        std::string to;
        std::int64_t quantity = 0;
        std::int64_t value = 0;
        bool reversed = false;
    };
    /// Whether the place still has the very value that was moved there.
    [[nodiscard]] bool canGiveBack(const Movement &movement, const Past &past) const;
    [[nodiscard]] std::optional<Refusal> reversalRefusal(const Movement &movement) const;
    [[nodiscard]] std::optional<Refusal> stockRefusal(const Movement &movement) const;

    std::vector<Place> m_places;
    std::map<std::string, std::size_t, std::less<>> m_placeOf;
    Balances m_balances;
    std::map<MovementId, Past> m_past;
};

} // namespace flarestock
