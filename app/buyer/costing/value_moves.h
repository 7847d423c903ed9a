// SPDX-License-Identifier: MIT
//
// Value moves: the movements that make what lies in stock dearer or cheaper, without a piece more
// or less, and those that put the rest to the place of differences.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// What of a part lies somewhere; first in, first out, one layer of it.
struct LayerAt {
    BalanceKey key;
    std::int64_t rank = 0; ///< 0 by a moving average.
    friend auto operator<=>(const LayerAt &, const LayerAt &) = default;
};

/// By how much each becomes dearer, or cheaper. 10^-6 of the shop's currency.
class ValueChanges {
public:
    /// Adds to it, not further down than to what it carries. Gives what was added.
    std::int64_t add(const LayerAt &at, std::int64_t value, const Ledger &ledger);
    /// By key, those of its layers; none that changes nothing.
    [[nodiscard]] const std::map<BalanceKey, std::map<std::int64_t, std::int64_t>> &
    byKey() const noexcept
    {
        return m_changes;
    }

private:
    std::map<BalanceKey, std::map<std::int64_t, std::int64_t>> m_changes;
};

class ValueMoves {
public:
    /// `document` stands on each movement.
    ValueMoves(const Workshop &workshop, const ShopFile &file, std::string document);

    /// The movements, from and to the place of that supplier. `differences`: by part, what falls on
    /// none of the pieces that are here. Problem: one of the places is not there, or the journal
    /// cannot be read.
    [[nodiscard]] Result<std::vector<Movement>>
    of(const std::string &supplier, const ValueChanges &stock,
       const std::map<std::string, std::int64_t> &differences);

private:
    struct Places {
        std::string supplier;
        std::string bench;
        std::string difference;
    };
    void valueAlone(const BalanceKey &from, const std::string &to, std::int64_t value);
    Result<void> overTheBench(const BalanceKey &key,
                              const std::map<std::int64_t, std::int64_t> &by);

    const Workshop &m_workshop;
    const ShopFile &m_file;
    std::string m_document;
    Places m_places;
    std::vector<Movement> m_movements;
};

} // namespace flarestock
