// SPDX-License-Identifier: MIT
//
// Ledger: the fold of the journal. What lies where and what it cost, computed from movements alone.

#pragma once

#include "model/journal/movement.h"
#include "model/parts/catalogue.h"
#include "model/parts/free_stock.h"

#include <map>
#include <span>
#include <tuple>

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
    std::int64_t quantity = 0;
    std::int64_t value = 0;
    friend bool operator==(const Balance &, const Balance &) = default;
};

/// Why a movement is refused, in order of precedence.
enum class Refusal : std::uint8_t {
    UnknownPart,
    UnknownPlace,
    SamePlace,
    NotMoreThanZero,
    NotEnough, ///< The place (that is stock) holds less.
    AlreadyReversed,
    Overflow,
};
[[nodiscard]] std::string_view text(Refusal refusal) noexcept;

class Ledger {
public:
    explicit Ledger(std::vector<Place> places);

    /// Applies a movement; nothing changes where it is refused. Places that are not stock
    /// (supplier, scrap, used up …) may go below zero: they are the other leg of what the shop has.
    [[nodiscard]] std::optional<Refusal> apply(const Movement &movement);
    /// Whether it would be refused.
    [[nodiscard]] std::optional<Refusal> refusal(const Movement &movement) const;
    /// The value that goes along with so much out of a place: carried value in proportion,
    /// half-even to 10^-6, the last unit taking what is left.
    [[nodiscard]] std::int64_t valueOf(const BalanceKey &key, std::int64_t quantity) const;

    [[nodiscard]] const std::map<BalanceKey, Balance> &balances() const noexcept
    {
        return m_balances;
    }
    [[nodiscard]] std::span<const Place> places() const noexcept { return m_places; }
    [[nodiscard]] const Place *place(std::string_view id) const noexcept;

    /// What builds may use: new, and used and good, in stock places, by part of the catalogue.
    [[nodiscard]] Shelf shelf(const Catalogue &catalogue) const;

private:
    std::vector<Place> m_places;
    std::map<BalanceKey, Balance> m_balances;
    std::map<MovementId, bool> m_reversed; ///< Movement to whether it is reversed.
};

} // namespace flarestock
